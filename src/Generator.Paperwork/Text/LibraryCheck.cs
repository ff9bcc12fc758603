using Generator.Domain;
using Generator.Library;
using Generator.Rules.Connecting;

namespace Generator.Paperwork.Text;

/// <summary>Whether the library hangs together, for people.</summary>
public static class LibraryCheck
{
    /// <summary>Dead ends that are listed one by one.</summary>
    private const int MostListed = 40;

    public static string Of(Book book, Connections connections)
    {
        var lines = new List<string>([$"Library {book.Version}", .. Page.Wrap(LibraryList.Size(book), Page.Width), Page.Line('=')]);
        lines.AddRange(Page.Wrap(
            $"A move can leave the hero in {Words.Number(connections.FreeForms)} forms in which nobody is tied to them, and in {Words.Number(connections.TiedForms)} in which they hold somebody or are gripped "
            + "(stance, both hands, bound, who is held where). Within two half counts, for a trained hero:", Page.Width));
        lines.AddRange(Page.Hang("  - ", "from every free form every attack that suits the level has an answer, from every side that it comes from, and every posture has a follow-up;"));
        lines.AddRange(Page.Hang("  - ", $"from every tied form there is a move that leads to being free; from {Words.Number(connections.AnsweredTied)} of them every attack of a third is answered without letting go first."));
        lines.Add(string.Empty);
        lines.AddRange(Lines(book));
        lines.Add(string.Empty);
        if (connections.DeadEnds.Count == 0)
        {
            lines.Add("DEAD ENDS  none");
        }
        else
        {
            lines.AddRange(Ends(connections.DeadEnds));
        }

        return string.Concat(lines.Select(l => l + "\n"));
    }

    /// <summary>Dead ends, the first of them one by one.</summary>
    internal static IEnumerable<string> Ends(IReadOnlyList<DeadEnd> ends) =>
        [$"DEAD ENDS  {Words.Number(ends.Count)}{(ends.Count > MostListed ? $", of which {Words.Number(MostListed)}" : string.Empty)}", .. ends.Take(MostListed).SelectMany(End)];

    /// <summary>For every line and side that an attack has: how many techniques of each family answer it.</summary>
    private static IEnumerable<string> Lines(Book book)
    {
        yield return "ANSWERS  " + Page.Pad("defences", 10) + Page.Pad("escapes", 10) + Page.Pad("others", 10) + "setbacks";
        foreach (var line in book.Attacks.Where(a => !a.IsWalkIn).Select(a => a.Line).Distinct().OrderBy(l => l.Index))
        {
            var techniques = book.Techniques.Where(t => t.Answers.Contains(line)).ToList();
            int Count(Func<Family, bool> family) => techniques.Count(t => family(t.Family));
            yield return "  " + Page.Pad($"{Words.Of(line.Kind)} {Words.Of(line.Side)}", 30)
                + Page.Pad(Words.Number(Count(f => f == Family.Defence)), 10)
                + Page.Pad(Words.Number(Count(f => f == Family.Escape)), 10)
                + Page.Pad(Words.Number(Count(f => f is not (Family.Defence or Family.Escape or Family.Setback))), 10)
                + Words.Number(Count(f => f == Family.Setback));
        }
    }

    private static IEnumerable<string> End(DeadEnd end) =>
        [.. Page.Hang("  - ", FormWords.Of(end.Form)), .. Page.Hang("    lacks ", end.Lacks), .. Page.Hang("    comes from ", string.Join(", ", end.WaysIn))];
}
