using Generator.Library.Files;
using Generator.Library.Reading;
using Generator.Testing;

namespace Generator.Library.Tests.Files;

/// <summary>Each file under Malformed lies beside the text of what is wrong with it. A text that differs is kept under Received.</summary>
public class MalformedTests
{
    private static readonly string Folder = Path.Combine(AppContext.BaseDirectory, "Files", "Malformed");

    public static TheoryData<string> Names => [.. Inputs()];

    [Theory]
    [MemberData(nameof(Names))]
    public void Every_problem_is_told_with_its_place_and_advice(string name)
    {
        var file = new SourceFile(name, File.ReadAllText(Path.Combine(Folder, name)));
        var (told, problems) = name.Contains(".brief.", StringComparison.Ordinal)
            ? Told(BriefReader.Parse(file, TinyBook.Book))
            : Told(RoutineReader.Parse(file, TinyBook.Book));
        Assert.NotEmpty(problems);
        Assert.All(problems, p => Assert.StartsWith("Maybe ", p.Maybe, StringComparison.Ordinal));

        var golden = Path.Combine(Folder, name + ".txt");
        var expected = File.Exists(golden) ? File.ReadAllText(golden) : string.Empty;
        if (!string.Equals(expected, told + "\n", StringComparison.Ordinal))
        {
            var received = Directory.CreateDirectory(Path.Combine(AppContext.BaseDirectory, "Received"));
            File.WriteAllText(Path.Combine(received.FullName, name + ".txt"), told + "\n");
        }

        Assert.Equal(expected, told + "\n");
    }

    [Fact]
    public void No_text_is_left_over_and_there_are_enough_of_them()
    {
        var texts = Directory.GetFiles(Folder, "*.txt").Select(f => Path.GetFileName(f)![..^4]).Order(StringComparer.Ordinal);
        Assert.Equal(Inputs(), texts);
        Assert.True(Inputs().Count >= 45);
    }

    private static List<string> Inputs() =>
        [.. Directory.GetFiles(Folder).Select(f => Path.GetFileName(f)!).Where(f => !f.EndsWith(".txt", StringComparison.Ordinal)).Order(StringComparer.Ordinal)];

    private static (string Text, IReadOnlyList<Problem> Problems) Told<T>(Read<T> read)
        where T : class => (read.ToText(), read.Problems);
}
