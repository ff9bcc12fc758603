using Generator.Cli.Tests.Readme;
using Generator.Library.Files;
using Generator.Library.Loading;
using Generator.Library.Reading;

namespace Generator.Cli.Tests.Allies;

/// <summary>The fight at the harbour gate out of the guide: what is done of a hero and an ally, and what is refused.</summary>
public sealed class AllyCommandTests : IDisposable
{
    private readonly Rig rig = new();
    private readonly string brief;
    private readonly string table;

    public AllyCommandTests() => (brief, table) = (rig.File("gate.brief.json", Block("gate.brief.json")), rig.File("gate.csv", Block("gate.csv")));

    public static TheoryData<string[]> Refused =>
    [
        ["draft", "BRIEF"],
        ["alternatives", "BRIEF"],
        ["alternatives", "TABLE", "--brief", "BRIEF"],
        ["explain", "BRIEF"],
        ["explain", "TABLE", "3", "--brief", "BRIEF"],
        ["repair", "TABLE", "--brief", "BRIEF"],
        ["revise", "ROUTINE", "--brief", "BRIEF"],
        ["complete", "TABLE", "--brief", "BRIEF"],
        ["shape", "TABLE", "--brief", "BRIEF"],
    ];

    public void Dispose() => rig.Dispose();

    [Fact]
    public void The_example_is_clean()
    {
        var answer = rig.Run("audit", table, "--brief", brief);
        Assert.Equal(ExitCode.Good, answer.Code);
        Assert.Contains("13 moves against 3 attackers, by Zora and Mira: nothing to report.", answer.Out, StringComparison.Ordinal);
    }

    [Fact]
    public void Somebody_in_two_moves_at_once_is_found()
    {
        var both = rig.File("both.csv", Block("gate.csv").Replace("5&,Mira,Wanda,,,", "5&,Mira,Bruno,,,", StringComparison.Ordinal));
        var answer = rig.Run("audit", both, "--brief", brief);
        Assert.Equal(ExitCode.Forbidden, answer.Code);
        Assert.Contains("Bruno is in a move of Zora's until count 6", answer.Out.ReplaceLineEndings(" ").Replace("         ", string.Empty, StringComparison.Ordinal), StringComparison.Ordinal);
    }

    [Theory]
    [MemberData(nameof(Refused))]
    public void What_searches_or_shows_one_hero_says_so(string[] args)
    {
        var answer = rig.Run([.. args.Select(a => a == "BRIEF" ? brief : a == "TABLE" ? table : a == "ROUTINE" ? Whole() : a)]);
        Assert.Equal((ExitCode.Input, string.Empty), (answer.Code, answer.Out));
        Assert.Contains("Mira fights beside Zora, and the program ", answer.Err, StringComparison.Ordinal);
        Assert.Contains("\n  Maybe write both parts as a routine", answer.Err, StringComparison.Ordinal);
    }

    [Fact]
    public void Papers_show_both_and_those_that_cannot_are_named()
    {
        var folder = Path.Combine(rig.Folder, "gate");
        var answer = rig.Run("paperwork", table, "--brief", brief, "--out", folder);
        Assert.Equal(ExitCode.Good, answer.Code);
        Assert.Contains("Not made, since they cannot show Mira beside Zora yet: routine.html, part-zora.html", answer.Err, StringComparison.Ordinal);
        Assert.Contains("part-mira.html", answer.Err, StringComparison.Ordinal);
        var papers = Directory.EnumerateFiles(folder).Select(f => Path.GetFileName(f)!).Order(StringComparer.Ordinal).ToList();
        Assert.Equal(["change-log.json", "click.mid", "click.wav", "fight-call.txt", "moves.csv", "risk-assessment.html", "risk-assessment.txt", "routine.xlsx", "tracks.csv", "wall.txt"], papers);
        foreach (var paper in papers.Where(p => p is not ("click.mid" or "click.wav" or "routine.xlsx")))
        {
            Assert.Contains("Mira", File.ReadAllText(Path.Combine(folder, paper)), StringComparison.Ordinal);
        }

        var wall = File.ReadAllText(Path.Combine(folder, "wall.txt"));
        Assert.Contains("Wanda (A2) from 6 o'clock of Mira", wall, StringComparison.Ordinal);
        Assert.Contains("^2 Mira, the ally", wall, StringComparison.Ordinal);
        Assert.Contains("back for move 10, count 8, from", wall, StringComparison.Ordinal);
        Assert.Equal(7, File.ReadLines(Path.Combine(folder, "moves.csv")).Count(l => l.Contains(",Mira,At the", StringComparison.Ordinal)));
        Assert.Equal(7, File.ReadLines(Path.Combine(folder, "tracks.csv")).Count(l => l.StartsWith("Mira,", StringComparison.Ordinal)));
    }

    [Fact]
    public void What_the_ally_takes_is_counted_for_the_ally()
    {
        // Wanda's straight punch knocks Mira down; Zora takes nothing.
        var down = rig.File("down.csv", Block("gate.csv").Replace("2&,Mira,Wanda,,right swing,outside-block-left,limb-stopped", "2&,Mira,Wanda,,right cross,knocked-down,presses-on", StringComparison.Ordinal));
        var folder = Path.Combine(rig.Folder, "down");
        rig.Run("paperwork", down, "--brief", brief, "--out", folder, "--no-pdf");
        var risks = File.ReadAllText(Path.Combine(folder, "risk-assessment.txt"));
        var falls = risks[risks.IndexOf("STEP 2", StringComparison.Ordinal)..risks.IndexOf("STEP 3", StringComparison.Ordinal)].Split('\n').SkipWhile(l => !l.Contains("Landing badly", StringComparison.Ordinal)).First();
        Assert.Contains("Mira", falls, StringComparison.Ordinal);
        Assert.DoesNotContain("Zora", falls, StringComparison.Ordinal);
    }

    [Fact]
    public void Notes_that_say_everything_are_audited_and_others_say_what_is_open()
    {
        const string Notes = "Zora: the hero\nAlly: Mira at 6, back to back\nBruno: 12, 3 m\nWanda: 6, 4 m\n\nBruno: right swing > outside block left (limb stopped) @2\nMira: Wanda: right swing > outside block left (limb stopped) @2\nMira: Wanda: > cross right (head back) @3\n";
        var whole = rig.Run("audit", rig.File("gate.notes.txt", Notes));
        Assert.Equal(string.Empty, whole.Err);
        Assert.Contains("3 moves against 2 attackers, by Zora and Mira: nothing to report.", whole.Out, StringComparison.Ordinal);
        var open = rig.Run("audit", rig.File("open.notes.txt", Notes.Replace(" @3", string.Empty, StringComparison.Ordinal)));
        Assert.Equal(ExitCode.Input, open.Code);
        Assert.Contains("line 8: the count is open, and the program fills in nothing for two yet.\n  Maybe say of every move its count", open.Err, StringComparison.Ordinal);
    }

    private string Whole()
    {
        var book = LibraryLoader.LoadBundled().Value!;
        var read = RoutineReader.Parse(new SourceFile("gate.csv", Block("gate.csv")), book, BriefReader.Parse(new SourceFile("x.brief.json", Block("gate.brief.json")), book).Value);
        return rig.File("gate.routine.json", RoutineWriter.Text(read.Value!));
    }

    private static string Block(string file) =>
        ReadmeBlock.All(Path.Combine("src", "Generator.Cli", "Guides", "routine.md")).Single(b => b.Mark == "file: " + file).Text;
}
