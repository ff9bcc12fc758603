using Generator.Solver;
using Generator.Solver.Questions;
using Newtonsoft.Json.Linq;

namespace Generator.Cli.Tests.Commands;

public class ChangeCommandTests
{
    private const string OneMove = """{ "length": { "counts": 12, "tolerance": 6 }, "attackers": [ { "name": "Bruno" } ] }""";

    [Fact]
    public void Alternatives_are_shown_side_by_side_and_written_into_a_folder()
    {
        using var rig = new Rig();
        var folder = Path.Combine(rig.Folder, "ways");
        var answer = rig.Run("alternatives", rig.File("b.json", OneMove), "--number", "2", "--time", "1200", "--out", folder);
        Assert.Equal(ExitCode.Good, answer.Code);
        Assert.Contains("comes first", answer.Out, StringComparison.Ordinal);
        Assert.Equal(2, Directory.GetFiles(folder).Length);
        Assert.All(Directory.GetFiles(folder), f => Assert.Equal(ExitCode.Good, rig.Run("audit", f).Code));
    }

    [Fact]
    public void Stopped_alternatives_are_exit_code_4()
    {
        using var stop = new CancellationTokenSource();
        stop.Cancel();
        using var rig = new Rig { Stop = stop.Token };
        Assert.Equal(ExitCode.OutOfTime, rig.Run("alternatives", rig.File("b.json", OneMove)).Code);
    }

    [Fact]
    public void A_routine_that_answers_the_new_brief_is_not_revised()
    {
        using var rig = new Rig();
        var routine = rig.File("r.csv", Samples.CleanCsv);
        var brief = rig.File("b.json", """{ "length": { "moves": 1 }, "attackers": [ { "name": "Bruno" } ] }""");
        var answer = rig.Run("revise", routine, "--brief", brief);
        Assert.Equal(ExitCode.Good, answer.Code);
        Assert.Contains("Bruno learns nothing anew", answer.Out, StringComparison.Ordinal);
        Assert.Contains("The routine answers the new brief as it is.", answer.Err, StringComparison.Ordinal);
        var root = JObject.Parse(rig.Run("revise", routine, "--brief", brief, "--json").Out);
        Assert.Equal(0, (int)root["changed"]!);
        Assert.Equal(2, root["teaching"]!.Count());
    }

    /// <summary>A brief that leaves the story open asks for that of the routine in hand, which is an answer to it already, and not for none.</summary>
    [Fact]
    public void Alternatives_of_a_routine_have_as_many_setbacks_as_it_has_where_the_brief_says_nothing()
    {
        using var rig = new Rig { Draft = Drafting.Draft };
        string Brief(string setbacks) => $$"""{ "length": { "counts": 20 }, {{setbacks}} "attackers": [ { "name": "Bruno", "skill": "stunt" }, { "name": "Wanda", "skill": "stunt" } ] }""";
        var routine = Path.Combine(rig.Folder, "r.routine.json");
        Assert.Equal(ExitCode.Good, rig.Run("draft", rig.File("b.json", Brief("\"setbacks\": 1,")), "--rounds", "1", "--out", routine).Code);
        var answer = rig.Run("alternatives", routine, "--brief", rig.File("open.json", Brief(string.Empty)), "--keep", "1-2", "--number", "2", "--time", "1200", "--json");
        Assert.True(answer.Code == ExitCode.Good, answer.Err);
        Assert.All(JObject.Parse(answer.Out)["alternatives"]!, a => Assert.Equal(1, (int)a["routine"]!["brief"]!["setbacks"]!));
    }

    [Fact]
    public void A_clash_is_explained_with_exit_code_3()
    {
        using var rig = new Rig();
        var brief = """{ "length": { "moves": 2, "tolerance": 0 }, "setbacks": 5, "attackers": [ { "name": "Bruno" } ] }""";
        var answer = Explained(rig, rig.File("b.json", brief));
        Assert.Equal(ExitCode.Impossible, answer.Code);
        Assert.Contains("THESE CLASH\n", answer.Out, StringComparison.Ordinal);
        Assert.Contains("  - 5 setbacks", answer.Out, StringComparison.Ordinal);
    }

    /// <summary>What explain says of a brief that cannot be; a machine that is busy with other work is asked again with ten times as long, so that the clock decides nothing.</summary>
    private static Answer Explained(Rig rig, string brief, params string[] more) =>
        new[] { "3", "30", "300", "1200" }.Select(time => rig.Run(["explain", brief, "--time", time, .. more])).First(a => a.Code == ExitCode.Impossible && (more.Length == 0 || JObject.Parse(a.Out)["giveUps"]!.Any()));

    /// <summary>Thrown by a novice who may not: giving up the throw alone comes first, and each way out is a brief that the program drafts.</summary>
    [Fact]
    public void A_way_out_stands_there_as_a_brief_that_can_be_drafted()
    {
        using var rig = new Rig { Draft = Drafting.Draft };
        var brief = """{ "tempo": 120, "length": { "counts": 16 }, "hero": { "skill": "novice" }, "moments": [ { "technique": "outside-reap" } ], "attackers": [ { "name": "Bruno" } ] }""";
        var answer = Explained(rig, rig.File("b.json", brief), "--json");
        Assert.Equal(ExitCode.Impossible, answer.Code);
        var ways = JObject.Parse(answer.Out)["giveUps"]!;
        Assert.Equal("without: the hero moment outside-reap", Assert.Single((JArray)ways[0]!["words"]!));
        Assert.All(ways, w =>
        {
            var drafted = rig.Run("draft", rig.File("way.json", w["brief"]!.ToString()), "--rounds", "6");
            Assert.True(drafted.Code == ExitCode.Good, $"{w["words"]}: {drafted.Err}");
        });
    }

    /// <summary>Arithmetic sees the last two, the others take a proof.</summary>
    [Theory]
    [InlineData("not in yet", """ "counts": 20, "tolerance": 2 """, """ "moments": [ { "technique": "outside-reap", "attacker": "Bruno", "counts": [3, 6] } ], """, """ "entrance": 12 """, "", "Bruno not in play before count 12")]
    [InlineData("out, and back", """ "counts": 24, "tolerance": 2 """, """ "moments": [ { "technique": "finishing-hook", "attacker": "Bruno", "counts": [4, 6] }, { "technique": "side-kick", "attacker": "Bruno", "counts": [14, 16] } ], """, """ "speed": 2 """, "", "the hero moment side-kick on Bruno starting between counts 14 and 16")]
    [InlineData("too many moves", """ "counts": 10, "moves": 24, "tolerance": 1 """, "", """ "speed": 2 """, "", "a length of 10 counts, give or take 1\n  - 24 moves")]
    [InlineData("a fall too many", """ "counts": 20, "tolerance": 2 """, """ "moments": [ { "technique": "outside-reap", "attacker": "Bruno" } ], """, """ "fallsPerRun": 0 """, "", "Bruno never falling")]
    [InlineData("a limit", """ "counts": 20, "tolerance": 2 """, """ "moments": [ { "technique": "outside-reap", "attacker": "Bruno" } ], """, """ "limits": [ "no-back-fall" ] """, "", "Bruno with the limit no-back-fall")]
    [InlineData("too close", """ "counts": 20, "tolerance": 2 """, "", """ "bearing": "3", "distance": 2 """, """, "bearing": "3:30", "distance": 2 """, "Bruno opening at 3 o'clock, 2.00 m out")]
    public void What_cannot_be_ends_with_3_and_says_what_clashes(string title, string length, string moments, string bruno, string wanda, string clash)
    {
        using var rig = new Rig { Draft = Drafting.Draft };
        var text = $$"""{ "title": "{{title}}", "length": { {{length}} }, {{moments}} "hero": { "skill": "stunt" }, "attackers": [ { "name": "Bruno", "skill": "stunt", {{bruno}} }, { "name": "Wanda", "skill": "stunt" {{wanda}} } ] }""";
        var brief = rig.File("b.json", text);
        var explained = Explained(rig, brief);
        Assert.Equal(ExitCode.Impossible, explained.Code);
        Assert.Contains("THESE CLASH\n", explained.Out, StringComparison.Ordinal);
        Assert.Contains("  - " + clash, explained.Out, StringComparison.Ordinal);
        var drafted = rig.Run("draft", brief, "--time", "1200");
        Assert.Equal((ExitCode.Impossible, string.Empty), (drafted.Code, drafted.Out));
        Assert.Contains("No routine can satisfy", drafted.Err, StringComparison.Ordinal);
        Assert.Contains("\n  - ", drafted.Err, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("explain")]
    [InlineData("draft")]
    public void Running_out_of_time_ends_with_4_and_claims_nothing(string command)
    {
        using var rig = new Rig { Draft = Drafting.Draft };
        var names = string.Join(", ", Enumerable.Range(1, 8).Select(i => $$"""{ "name": "Attacker {{i}}", "skill": "stunt" }"""));
        var brief = rig.File("b.json", $$"""{ "length": { "moves": 500, "tolerance": 0 }, "setbacks": 8, "floor": { "width": 16, "depth": 16 }, "hero": { "skill": "stunt" }, "attackers": [ {{names}} ] }""");
        var answer = rig.Run(command, brief, "--time", "0.1");
        Assert.Equal(ExitCode.OutOfTime, answer.Code);
        Assert.DoesNotContain("No routine can satisfy", answer.Out + answer.Err, StringComparison.Ordinal);
    }

    [Fact]
    public void A_move_is_explained_by_the_rules_that_exclude_the_others()
    {
        using var rig = new Rig();
        var answer = rig.Run("explain", rig.File("r.csv", Samples.CleanCsv), "1");
        Assert.Equal((ExitCode.Good, string.Empty), (answer.Code, answer.Told));
        Assert.Contains("WOULD DO AS WELL", answer.Out, StringComparison.Ordinal);
        Assert.Contains("EXCLUDED BY answers-attack", answer.Out, StringComparison.Ordinal);
    }
}
