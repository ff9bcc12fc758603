using System.Globalization;
using System.Security.Cryptography;
using System.Text;
using Generator.Benchmarks.Measuring;
using Generator.Library.Words;
using Newtonsoft.Json;

namespace Generator.Benchmarks.Notebooks;

/// <summary>
/// How often the word finder puts the technique or attack that is meant first, and within three, over the cells of <c>notebook-cells.json</c>: what
/// people write in rough notes (of published forms, of fights, of terms of the trade, of published syllabuses and, later, of published forms with their sources), each with the records that it may mean; and how often what is meant is among what a
/// sketch takes the words for, with how many records that is. Half of the cells, by a fixed split, are held out: nothing that the notebook or the library says of a record repeats them.
/// </summary>
internal static class WordRun
{
    /// <summary>One cell of rough notes.</summary>
    /// <param name="Text">As written.</param>
    /// <param name="Kind">Technique or attack.</param>
    /// <param name="Means">Ids without side, any of which is right.</param>
    /// <param name="From">Published forms, fights, terms of the trade, published syllabuses or published forms.</param>
    private sealed record Cell(string Text, string Kind, IReadOnlyList<string> Means, string From);

    public static int All(string[] args)
    {
        var shows = args is ["--misses"];
        var book = LongRoutine.Book();
        var finder = new WordFinder(book);
        var cells = JsonConvert.DeserializeObject<List<Cell>>(File.ReadAllText(Path.Combine(Places.Benchmarks, "notebook-cells.json")))!;
        var meanings = new MeaningFinder(book);
        var table = new MarkdownTable("cells", "of", "split", "number", "first", "within three", "among what is read", "records read");
        foreach (var group in cells.GroupBy(c => (c.Kind, c.From, HeldOut: IsHeldOut(c.Text))).OrderBy(g => (g.Key.From, g.Key.Kind, g.Key.HeldOut)))
        {
            var ranks = group.Select(c => Rank(finder, c)).ToList();
            var read = group.Select(c => Read(meanings, c)).ToList();
            table.Row(
                group.Key.Kind,
                group.Key.From,
                group.Key.HeldOut ? "held out" : "seen",
                Number(ranks.Count),
                Share(ranks.Count(r => r == 0), ranks.Count),
                Share(ranks.Count(r => r is >= 0 and < 3), ranks.Count),
                Share(group.Zip(read).Count(p => p.First.Means.Intersect(p.Second, StringComparer.Ordinal).Any()), ranks.Count),
                read.Average(r => r.Count).ToString("0.0", CultureInfo.InvariantCulture));
            foreach (var ((cell, rank), taken) in group.Zip(ranks).Zip(read).Where(p => shows && p.First.Second != 0))
            {
                Console.Error.WriteLine($"{cell.Kind} \"{cell.Text}\" ({cell.From}{(group.Key.HeldOut ? ", held out" : string.Empty)}): {string.Join(", ", Answers(finder, cell))}; meant: {string.Join(", ", cell.Means)}; read: {string.Join(", ", taken.Take(8))}{(rank is 1 or 2 ? string.Empty : " (not within three)")}");
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

    private static List<string> Read(MeaningFinder meanings, Cell cell) =>
        [.. (cell.Kind == "attack" ? meanings.Attack(cell.Text) : meanings.Technique(cell.Text)).Ids.Select(Side).Distinct(StringComparer.Ordinal)];

    private static List<string> Answers<T>(Lookup<T> lookup, Func<T, string> idOf) => [.. lookup.Found.Select(idOf).Concat(lookup.Suggestions).Select(Side).Distinct(StringComparer.Ordinal)];

    private static string Side(string id) => id.EndsWith("-left", StringComparison.Ordinal) ? id[..^5] : id.EndsWith("-right", StringComparison.Ordinal) ? id[..^6] : id;

    private static string Number(int number) => number.ToString(CultureInfo.InvariantCulture);

    private static string Share(int part, int of) => string.Create(CultureInfo.InvariantCulture, $"{part} ({100d * part / of:0.0} %)");
}
