using Generator.Paperwork.Teaching;
using Generator.Paperwork.Text;
using Generator.Rules.Replaying;

namespace Generator.Paperwork.HandOffs;

/// <summary>A named moment in the click.</summary>
/// <param name="Moment">Half counts from count 1.</param>
/// <param name="Name">ASCII text: "Phrase 2, count 10&amp;".</param>
public readonly record struct Marker(int Moment, string Name)
{
    /// <summary>The first counts of the phrases, in order.</summary>
    public static IReadOnlyList<Marker> Of(IReadOnlyList<Step> steps, IReadOnlyList<Phrase> phrases) =>
        [.. phrases.Select(p => (p.Number, steps[p.First - 1].Start)).Select(p => new Marker(p.Start, $"Phrase {Words.Number(p.Number)}, {Words.AtCount(p.Start)}"))];
}
