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
        var answer = rig.Run("alternatives", rig.File("b.json", OneMove), "--number", "2", "--time", "60", "--out", folder);
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

    [Fact]
    public void A_clash_is_explained_with_exit_code_3()
    {
        using var rig = new Rig();
        var brief = """{ "length": { "moves": 2, "tolerance": 0 }, "setbacks": 5, "attackers": [ { "name": "Bruno" } ] }""";
        var answer = rig.Run("explain", rig.File("b.json", brief), "--time", "6");
        Assert.Equal(ExitCode.Impossible, answer.Code);
        Assert.Contains("THESE CLASH\n", answer.Out, StringComparison.Ordinal);
        Assert.Contains("  - 5 setbacks", answer.Out, StringComparison.Ordinal);
    }

    [Fact]
    public void A_move_is_explained_by_the_rules_that_exclude_the_others()
    {
        using var rig = new Rig();
        var answer = rig.Run("explain", rig.File("r.csv", Samples.CleanCsv), "1");
        Assert.Equal((ExitCode.Good, string.Empty), (answer.Code, answer.Err));
        Assert.Contains("WOULD DO AS WELL", answer.Out, StringComparison.Ordinal);
        Assert.Contains("EXCLUDED BY answers-attack", answer.Out, StringComparison.Ordinal);
    }
}
