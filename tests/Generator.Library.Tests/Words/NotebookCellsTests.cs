using System.Runtime.CompilerServices;
using System.Security.Cryptography;
using System.Text;
using Generator.Library;
using Generator.Library.Tests.Bundled;
using Generator.Library.Words;
using Newtonsoft.Json.Linq;

namespace Generator.Library.Tests.Words;

/// <summary>The cells of rough notes by which the benchmarks measure the word finder (<c>benchmarks/notebook-cells.json</c>).</summary>
public class NotebookCellsTests
{
    private static readonly List<(string Text, bool IsAttack, string[] Means, string From)> Cells =
        [.. JArray.Parse(File.ReadAllText(Stored())).Select(c => ((string)c["text"]!, (string?)c["kind"] == "attack", c["means"]!.Select(m => (string)m!).ToArray(), (string)c["from"]!))];

    [Fact]
    public void What_is_held_out_is_written_nowhere()
    {
        var book = BundledLibrary.Book;
        var written = book.Notebook.Techniques.Concat(book.Notebook.Attacks).SelectMany(e => e.Value).Select(PlainWord.Of).ToHashSet(StringComparer.Ordinal);
        var held = Cells.Where(c => IsHeldOut(c.Text)).ToList();
        Assert.All(held, c => Assert.DoesNotContain(PlainWord.Of(c.Text), written));
        Assert.True(held.Count > 70);
    }

    /// <summary>Shares in a hundred. Phrases of fights are looser than those of printed forms; those of the trade are terms of several schools, those of syllabuses, and of published forms, were quoted or kept close to what is printed.</summary>
    [Theory]
    [InlineData("forms", true, true, 85, 97)]
    [InlineData("forms", true, false, 85, 97)]
    [InlineData("forms", false, true, 85, 97)]
    [InlineData("forms", false, false, 85, 97)]
    [InlineData("fights", true, true, 85, 97)]
    [InlineData("fights", true, false, 85, 97)]
    [InlineData("fights", false, true, 80, 95)]
    [InlineData("fights", false, false, 85, 97)]
    [InlineData("trade", true, true, 85, 97)]
    [InlineData("trade", true, false, 85, 97)]
    [InlineData("trade", false, true, 85, 96)]
    [InlineData("trade", false, false, 85, 97)]
    [InlineData("syllabus", false, true, 75, 90)]
    [InlineData("syllabus", false, false, 75, 95)]
    [InlineData("published", true, true, 75, 97)]
    [InlineData("published", true, false, 80, 97)]
    [InlineData("published", false, true, 70, 80)]
    [InlineData("published", false, false, 80, 90)]
    public void What_is_meant_is_found_first_or_within_three(string from, bool attacks, bool heldOut, int first, int withinThree)
    {
        var finder = new WordFinder(BundledLibrary.Book);
        var cells = Cells.Where(c => string.Equals(c.From, from, StringComparison.Ordinal) && c.IsAttack == attacks && IsHeldOut(c.Text) == heldOut).ToList();
        var ranks = cells.Select(c => (c.IsAttack ? Answers(finder.Attack(c.Text), a => a.BaseId) : Answers(finder.Technique(c.Text), t => t.BaseId)).FindIndex(id => c.Means.Contains(id, StringComparer.Ordinal))).ToList();
        Assert.True(cells.Count > 20);
        Assert.True(100 * ranks.Count(r => r == 0) >= first * cells.Count, $"{ranks.Count(r => r == 0)} of {cells.Count}");
        Assert.True(100 * ranks.Count(r => r is 0 or 1 or 2) >= withinThree * cells.Count, $"{ranks.Count(r => r is 0 or 1 or 2)} of {cells.Count}");
    }

    private static bool IsHeldOut(string text) => (SHA256.HashData(Encoding.UTF8.GetBytes(text))[^1] & 1) == 1;

    private static List<string> Answers<T>(Lookup<T> lookup, Func<T, string> idOf) =>
        [.. lookup.Found.Select(idOf).Concat(lookup.Suggestions).Select(id => id.EndsWith("-left", StringComparison.Ordinal) ? id[..^5] : id.EndsWith("-right", StringComparison.Ordinal) ? id[..^6] : id).Distinct(StringComparer.Ordinal)];

    private static string Stored([CallerFilePath] string caller = "") =>
        Path.GetFullPath(Path.Combine(Path.GetDirectoryName(caller)!, "..", "..", "..", "benchmarks", "notebook-cells.json"));
}
