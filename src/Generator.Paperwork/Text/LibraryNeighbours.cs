using System.Runtime.CompilerServices;
using Generator.Domain;
using Generator.Library;
using Generator.Rules.Connecting;

namespace Generator.Paperwork.Text;

/// <summary>What may come before and after a technique, for people: the end of its card.</summary>
public static class LibraryNeighbours
{
    private const int Label = 18;

    /// <summary>Working them out takes a second or two, so it is done once for a library, however many of its cards are printed.</summary>
    private static readonly ConditionalWeakTable<Book, Neighbours> Known = [];

    /// <summary>The two lines, or none for a technique without a target.</summary>
    /// <param name="technique">A technique of the library.</param>
    /// <param name="book">The library.</param>
    public static string Of(Technique technique, Book book)
    {
        if (technique.HasNoTarget)
        {
            return string.Empty;
        }

        var neighbours = In(book);
        var lines = Lines("comes after", neighbours.Before(technique.BaseId)).Concat(Lines("goes on with", neighbours.After(technique.BaseId)));
        return string.Concat(lines.Select(l => l + "\n"));
    }

    /// <summary>What may come before and after each technique of a library.</summary>
    internal static Neighbours In(Book book) => Known.GetValue(book, b => new Neighbours(b));

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
