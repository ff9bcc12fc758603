using System.Globalization;
using System.Security.Cryptography;
using System.Text;
using Generator.Benchmarks.Measuring;
using Generator.Library.Words;
using Newtonsoft.Json;

namespace Generator.Benchmarks.Notebooks;

/// <summary>
/// How often the word finder puts the technique or attack that is meant first, and within three, over the cells of <c>notebook-cells.json</c>: what
/// people write in rough notes, each with the records that it may mean. Half of the cells, by a fixed split, are held out: nothing that the notebook
/// or the library says of a record repeats them.
/// </summary>
internal static class WordRun
{
    /// <summary>One cell of rough notes.</summary>
    /// <param name="Text">As written.</param>
    /// <param name="Kind">Technique or attack.</param>
    /// <param name="Means">Ids without side, any of which is right.</param>
    private sealed record Cell(string Text, string Kind, IReadOnlyList<string> Means);

    public static int All(string[] args)
    {
        var shows = args is ["--misses"];
        var book = LongRoutine.Book();
        var finder = new WordFinder(book);
        var cells = JsonConvert.DeserializeObject<List<Cell>>(File.ReadAllText(Path.Combine(Places.Benchmarks, "notebook-cells.json")))!;
        var table = new MarkdownTable("cells", "split", "number", "first", "within three");
        foreach (var (kind, heldOut, group) in cells.GroupBy(c => (c.Kind, HeldOut: IsHeldOut(c.Text))).OrderBy(g => g.Key).Select(g => (g.Key.Kind, g.Key.HeldOut, g.ToList())))
        {
            var ranks = group.Select(c => Rank(finder, c)).ToList();
            table.Row(kind, heldOut ? "held out" : "seen", Number(group.Count), Share(ranks.Count(r => r == 0), group.Count), Share(ranks.Count(r => r is >= 0 and < 3), group.Count));
            foreach (var (cell, _) in group.Zip(ranks).Where(p => shows && p.Second != 0))
            {
                Console.Error.WriteLine($"{cell.Kind} \"{cell.Text}\": {string.Join(", ", Answers(finder, cell))}; meant: {string.Join(", ", cell.Means)}");
            }
        }

        Console.WriteLine(table);
        return 0;
    }

    /// <summary>The last bit of the digest of its text: the same for ever, and nobody's choice.</summary>
    public static bool IsHeldOut(string text) => (SHA256.HashData(Encoding.UTF8.GetBytes(text))[^1] & 1) == 1;

    private static int Rank(WordFinder finder, Cell cell)
    {
        var answers = Answers(finder, cell);
        return Enumerable.Range(0, answers.Count).Where(i => cell.Means.Contains(answers[i], StringComparer.Ordinal)).DefaultIfEmpty(-1).First();
    }

    private static List<string> Answers(WordFinder finder, Cell cell) => cell.Kind == "attack"
        ? Answers(finder.Attack(cell.Text), a => a.BaseId)
        : Answers(finder.Technique(cell.Text), t => t.BaseId);

    private static List<string> Answers<T>(Lookup<T> lookup, Func<T, string> idOf) => [.. lookup.Found.Select(idOf).Concat(lookup.Suggestions).Select(Side).Distinct(StringComparer.Ordinal)];

    private static string Side(string id) => id.EndsWith("-left", StringComparison.Ordinal) ? id[..^5] : id.EndsWith("-right", StringComparison.Ordinal) ? id[..^6] : id;

    private static string Number(int number) => number.ToString(CultureInfo.InvariantCulture);

    private static string Share(int part, int of) => string.Create(CultureInfo.InvariantCulture, $"{100d * part / of:0} %");
}
