using System.Runtime.CompilerServices;
using Generator.Library.Files.Notes;
using Generator.Library.Reading;
using Generator.Library.Tests.Bundled;

namespace Generator.Library.Tests.Notes;

/// <summary>Notes as novices write them, each beside what is said of it: everything that is wrong, or else how every piece was taken.</summary>
public class MalformedNotesTests
{
    private const string End = ".notes.txt";

    public static TheoryData<string> Names => [.. All];

    private static string[] All => [.. Directory.GetFiles(Folder(), "*" + End).Select(f => Path.GetFileName(f)[..^End.Length]).Order(StringComparer.Ordinal)];

    [Theory]
    [MemberData(nameof(Names))]
    public void Each_is_told_as_written_beside_it(string name)
    {
        var problems = new ProblemList();
        var source = SourceFile.Load(Path.Combine(Folder(), name + End), problems)!;
        var actual = Told(SketchReader.Parse(source with { Name = name + End }, BundledLibrary.Book));
        var golden = Path.Combine(Folder(), name + ".txt");
        var expected = File.Exists(golden) ? File.ReadAllText(golden).ReplaceLineEndings("\n") : string.Empty;
        if (!string.Equals(expected, actual, StringComparison.Ordinal))
        {
            File.WriteAllText(golden + ".actual", actual);
        }

        Assert.Equal(expected, actual);
    }

    [Fact]
    public void There_are_sixty_and_every_advice_begins_with_maybe()
    {
        Assert.True(All.Length >= 60);
        var texts = Directory.GetFiles(Folder(), "*.txt").Where(f => !f.EndsWith(End, StringComparison.Ordinal)).Select(File.ReadAllLines).ToList();
        Assert.Equal(All.Length, texts.Count);
        Assert.All(texts.SelectMany(t => t).Where(l => l.StartsWith("  ", StringComparison.Ordinal)), l => Assert.StartsWith("  Maybe ", l, StringComparison.Ordinal));
    }

    private static string Told(Read<ReadSketch> read) => (read.IsGood ? string.Join('\n', read.Value.Understood.Select(Told)) : read.ToText()) + "\n";

    private static string Told(Understood understood) =>
        $"line {understood.Line}, move {understood.Move}: \"{understood.Text}\" as {string.Join(", ", understood.As)}{(understood.IsGuess ? " (best fits)" : string.Empty)}"
        + string.Concat(understood.Also.Select(a => "; " + a)) + string.Concat(understood.Unread.Select(u => "; nothing of " + u));

    private static string Folder([CallerFilePath] string caller = "") => Path.Combine(Path.GetDirectoryName(caller)!, "..", "Malformed", "Notes");
}
