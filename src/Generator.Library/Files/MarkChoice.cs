using Generator.Domain;
using Generator.Library.Reading;

namespace Generator.Library.Files;

/// <summary>By what the marks of a brief are chosen that says how many, or a way, and not which.</summary>
/// <param name="Seed">The same seed chooses the same marks.</param>
/// <param name="Kept">Marks of the fight as it stands, which are kept where they are what the brief asks for; empty for none.</param>
public sealed record MarkChoice(int Seed, IReadOnlyList<HeroMark> Kept)
{
    /// <summary>Where nobody says anything else.</summary>
    public static readonly MarkChoice Usual = new(1, []);

    /// <summary>In what was read marks were chosen: a remark says which.</summary>
    public static bool IsIn(Read<Brief> read) => read.Remarks.Any(r => r.Field == ChosenMarks.Field || r.Field.EndsWith("." + ChosenMarks.Field, StringComparison.Ordinal));
}
