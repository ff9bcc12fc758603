using Generator.Domain;
using Generator.Rules.Connecting;

namespace Generator.Paperwork.Text;

/// <summary>What may come before and after a technique, for people: the end of its card.</summary>
public static class LibraryNeighbours
{
    private const int Label = 18;

    public static string Of(Technique technique, Neighbours neighbours)
    {
        if (technique.HasNoTarget)
        {
            return string.Empty;
        }

        var lines = Lines("comes after", neighbours.Before(technique.BaseId)).Concat(Lines("goes on with", neighbours.After(technique.BaseId)));
        return string.Concat(lines.Select(l => l + "\n"));
    }

    private static IEnumerable<string> Lines(string label, IReadOnlyList<Technique> techniques)
    {
        if (techniques.Count == 0)
        {
            return ["  " + Page.Pad(label, Label - 2) + "nothing on the same attacker"];
        }

        return techniques.GroupBy(t => t.Family).OrderBy(g => g.Key)
            .SelectMany((g, i) => Page.Hang("  " + Page.Pad(i == 0 ? label : string.Empty, Label - 2), $"{Words.Of(g.Key)} ({Words.Number(g.Count())}): {string.Join(", ", g.Select(LibraryCard.Plain))}"));
    }
}
