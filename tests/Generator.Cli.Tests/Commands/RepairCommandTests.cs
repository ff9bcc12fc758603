using Newtonsoft.Json.Linq;

namespace Generator.Cli.Tests.Commands;

public class RepairCommandTests
{
    private const string Late = "count,attacker,attack,technique,reaction\r\n1,Bruno,swing-right,parry-down-right,head-drops\r\n";

    [Fact]
    public void The_move_that_was_wrong_changes_and_the_answer_can_be_audited()
    {
        using var stop = new CancellationTokenSource();
        using var rig = new Rig { Patience = TimeSpan.FromMinutes(20), Stop = stop.Token, Keep = (_, _) => stop.Cancel() };
        var answer = rig.Run("repair", rig.File("r.csv", Late), "--out", Path.Combine(rig.Folder, "fixed.json"));
        Assert.Equal(ExitCode.Good, answer.Code);
        Assert.Contains("This 1 of 1 moves changes", answer.Out, StringComparison.Ordinal);
        Assert.Contains("WRONG BEFORE", answer.Out, StringComparison.Ordinal);
        Assert.Equal(ExitCode.Good, rig.Run("audit", Path.Combine(rig.Folder, "fixed.json")).Code);
        Assert.Contains("The routine is in FOLDER/fixed.json.", answer.Err, StringComparison.Ordinal);
    }

    [Fact]
    public void A_clean_routine_comes_back_as_it_is()
    {
        using var rig = new Rig();
        var answer = rig.Run("repair", rig.File("r.csv", Samples.CleanCsv));
        Assert.Equal(ExitCode.Good, answer.Code);
        Assert.Contains("Nothing is unsafe or broken.", answer.Out, StringComparison.Ordinal);
        Assert.DoesNotContain("CHANGES", answer.Out, StringComparison.Ordinal);
    }

    [Fact]
    public void Json_tells_what_became_of_every_move()
    {
        using var stop = new CancellationTokenSource();
        using var rig = new Rig { Stop = stop.Token, Keep = (_, _) => stop.Cancel() };
        var root = JObject.Parse(rig.Run("repair", "--json", rig.File("r.csv", Late)).Out);
        Assert.Equal(["routine", "findings", "points", "standing", "changed", "shiftedCounts", "changes"], root.Properties().Select(p => p.Name));
        Assert.Equal(1, (int)root["changed"]!);
        Assert.Equal("changed", (string?)root["changes"]![0]!["kind"]);
    }

    [Fact]
    public void A_brief_that_cannot_be_is_exit_code_3()
    {
        using var rig = new Rig();
        var brief = """{ "length": { "moves": 1, "tolerance": 0 }, "setbacks": 5, "attackers": [ { "name": "Bruno" } ] }""";
        var answer = rig.Run("repair", rig.File("r.csv", Late), "--brief", rig.File("b.json", brief));
        Assert.Equal((ExitCode.Impossible, string.Empty), (answer.Code, answer.Out));
        Assert.Contains("This cannot be:", answer.Err, StringComparison.Ordinal);
    }

    [Fact]
    public void A_stop_before_there_was_anything_is_exit_code_4_and_says_that_nothing_is_known()
    {
        using var stop = new CancellationTokenSource();
        stop.Cancel();
        using var rig = new Rig { Stop = stop.Token };
        var answer = rig.Run("repair", rig.File("r.csv", Late));
        Assert.Equal((ExitCode.OutOfTime, string.Empty), (answer.Code, answer.Out));
        Assert.Contains("not known", answer.Err, StringComparison.Ordinal);
    }
}
