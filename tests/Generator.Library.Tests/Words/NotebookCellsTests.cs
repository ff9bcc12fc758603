using System.Runtime.CompilerServices;
using System.Security.Cryptography;
using System.Text;
using Generator.Library.Tests.Bundled;
using Generator.Library.Words;
using Newtonsoft.Json.Linq;

namespace Generator.Library.Tests.Words;

/// <summary>The cells of rough notes by which the benchmarks measure the word finder (<c>benchmarks/notebook-cells.json</c>).</summary>
public class NotebookCellsTests
{
    private static readonly List<(string Text, bool IsAttack, string[] Means)> Cells =
        [.. JArray.Parse(File.ReadAllText(Stored())).Select(c => ((string)c["text"]!, (string?)c["kind"] == "attack", c["means"]!.Select(m => (string)m!).ToArray()))];

    [Fact]
    public void What_is_held_out_is_written_nowhere()
    {
        var book = BundledLibrary.Book;
        var written = book.Notebook.Techniques.Concat(book.Notebook.Attacks).SelectMany(e => e.Value).Select(PlainWord.Of).ToHashSet(StringComparer.Ordinal);
        var held = Cells.Where(c => (SHA256.HashData(Encoding.UTF8.GetBytes(c.Text))[^1] & 1) == 1).ToList();
        Assert.All(held, c => Assert.DoesNotContain(PlainWord.Of(c.Text), written));
        Assert.True(held.Count > 70);
    }

    [Fact]
    public void Five_of_six_are_found_first_and_nearly_all_within_three()
    {
        var finder = new WordFinder(BundledLibrary.Book);
        var ranks = Cells.Select(c => (c.IsAttack ? Answers(finder.Attack(c.Text), a => a.BaseId) : Answers(finder.Technique(c.Text), t => t.BaseId)).FindIndex(id => c.Means.Contains(id, StringComparer.Ordinal))).ToList();
        Assert.InRange(ranks.Count(r => r == 0), Cells.Count * 85 / 100, Cells.Count);
        Assert.InRange(ranks.Count(r => r is 0 or 1 or 2), Cells.Count * 97 / 100, Cells.Count);
    }

    private static List<string> Answers<T>(Lookup<T> lookup, Func<T, string> idOf) =>
        [.. lookup.Found.Select(idOf).Concat(lookup.Suggestions).Select(id => id.EndsWith("-left", StringComparison.Ordinal) ? id[..^5] : id.EndsWith("-right", StringComparison.Ordinal) ? id[..^6] : id).Distinct(StringComparer.Ordinal)];

    private static string Stored([CallerFilePath] string caller = "") =>
        Path.GetFullPath(Path.Combine(Path.GetDirectoryName(caller)!, "..", "..", "..", "benchmarks", "notebook-cells.json"));
}
