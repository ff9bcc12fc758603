using Generator.Domain;
using Generator.Library.Reading;

namespace Generator.Library.Files;

/// <summary>
/// Reads <c>boss</c>, the attacker whom the others lead up to: out last, and of a manner that answers blows. It says in one word what a brief could say at length, so that what is read holds no boss but these.
/// </summary>
internal static class BossReader
{
    /// <summary>How a boss fights whose brief does not say it.</summary>
    private const string Manner = "master";

    public static Brief Of(ObjectReader root, Brief brief, Cast cast, Book book)
    {
        if (root.Text("boss") is not { } name)
        {
            return brief;
        }

        var boss = cast.Find(name);
        if (boss < 0)
        {
            root.Refuse("boss", Cast.Unknown(name), cast.Advice(name));
            return brief;
        }

        var own = cast.Names[boss];
        var ending = brief.Ending ?? new Ending(cast.Names, null);
        if (ending.Last is { } last && !string.Equals(last, own, StringComparison.Ordinal))
        {
            root.Refuse("boss", $"{own} is the boss, and {last} goes out last.", "Maybe leave \"last\" out of the ending.");
        }
        else if (!ending.Out.Contains(own, StringComparer.Ordinal))
        {
            root.Refuse("boss", $"{own} is the boss, but is not among those who go out.", "Maybe add the name to \"out\".");
        }

        var knows = book.Manners.Any(m => string.Equals(m.Id, Manner, StringComparison.Ordinal));
        return brief with
        {
            Ending = ending with { Last = own },
            Attackers = [.. brief.Attackers.Select((a, i) => i == boss && a.Manner is null && knows ? a with { Manner = Manner } : a)],
        };
    }
}
