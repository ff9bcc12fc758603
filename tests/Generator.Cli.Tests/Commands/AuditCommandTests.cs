using Generator.Paperwork.Text;
using Generator.Rules.Judging;
using Generator.Testing;
using Newtonsoft.Json.Linq;

namespace Generator.Cli.Tests.Commands;

public class AuditCommandTests
{
    [Fact]
    public void Nothing_wrong_is_exit_code_0()
    {
        using var rig = new Rig();
        var answer = rig.Run("audit", rig.File("r.csv", Samples.CleanCsv));
        Assert.Equal(ExitCode.Good, answer.Code);
        Assert.StartsWith("FOLDER/r.csv holds no brief: ", answer.Err, StringComparison.Ordinal);
        Assert.Contains("Untitled fight", answer.Out, StringComparison.Ordinal);
    }

    [Fact]
    public void Something_broken_is_exit_code_1()
    {
        using var rig = new Rig();
        var answer = rig.Run("audit", rig.File("r.csv", Samples.BrokenCsv));
        Assert.Equal(ExitCode.Forbidden, answer.Code);
        Assert.Contains("broken", answer.Out, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("1,Bruno,swing-right,parry-down-left,\r\n", "opening", "leaves open how Bruno reacts")]
    [InlineData("1,Bruno,swing-right,parry-down-left,folds\r\n", "opening", "does not suit")]
    [InlineData("5,Bruno,swing-right,parry-down-left,head-drops\r\n3,Bruno,,knee-to-head-right,staggers-back\r\n", "tempo-floor", "Count 3 stands below count 5")]
    public void What_is_wrong_with_the_fight_is_found_and_not_refused(string rows, string rule, string message)
    {
        using var rig = new Rig { Input = "count,attacker,attack,technique,reaction\r\n" + rows };
        var answer = rig.Run("audit", "-", "--json");
        Assert.Equal(ExitCode.Forbidden, answer.Code);
        var finding = Assert.Single(JObject.Parse(answer.Out)["findings"]!, f => (string?)f["rule"] == rule);
        Assert.Contains(message, (string?)finding["message"], StringComparison.Ordinal);
    }

    [Fact]
    public void Json_has_exactly_the_members_that_are_promised()
    {
        using var rig = new Rig();
        var answer = rig.Run("audit", "--json", rig.File("r.csv", Samples.BrokenCsv));
        var root = JObject.Parse(answer.Out);
        Assert.Equal(["findings", "points"], root.Properties().Select(p => p.Name));
        Assert.NotEmpty(root["findings"]!);
        Assert.All(root["findings"]!, f => Assert.Equal(
            ["rule", "severity", "move", "count", "who", "measured", "allowed", "unit", "points", "message"], ((JObject)f).Properties().Select(p => p.Name).Except(["under", "mended"])));
        Assert.Equal(ExitCode.Forbidden, answer.Code);
    }

    [Theory]
    [InlineData(Samples.CleanCsv, ExitCode.Good)]
    [InlineData(Samples.BrokenCsv, ExitCode.Forbidden)]
    [InlineData("{ \"moves\": [ { \"count\": 1, \"attacker\": \"Bruno\", \"attack\": \"right swing\", \"technique\": \"low parry\", \"reaction\": \"head drops\" } ] }", ExitCode.Good)]
    public void Standard_input_gives_the_same_as_a_file(string text, int code)
    {
        using var rig = new Rig { Input = text };
        var piped = rig.Run("audit", "-");
        Assert.Equal(code, piped.Code);
        var filed = rig.Run("audit", rig.File("routine.txt", text));
        Assert.Equal(filed with { Err = filed.Err.Replace("FOLDER/routine.txt", "standard input", StringComparison.Ordinal) }, piped);
    }

    /// <summary>A routine in JSON lends its brief to the same moves in CSV.</summary>
    [Fact]
    public void The_brief_of_a_routine_serves_its_csv()
    {
        using var rig = new Rig();
        var json = rig.File("r.json", $$"""{ "brief": {{Samples.Brief}}, "moves": [ { "count": 1, "attacker": "Bruno", "attack": "swing-right", "technique": "parry-down-left", "reaction": "head-drops" } ] }""");
        var answer = rig.Run("audit", rig.File("r.csv", Samples.CleanCsv), "--brief", json);
        Assert.Equal(rig.Run("audit", json), answer);
        Assert.Contains("Two in the yard", answer.Out, StringComparison.Ordinal);
    }

    [Fact]
    public void A_brief_beside_the_routine_is_used()
    {
        using var rig = new Rig();
        var routine = rig.File("r.csv", Samples.CleanCsv);
        var answer = rig.Run("audit", routine, "--brief", rig.File("b.json", Samples.Brief));
        Assert.Equal(ExitCode.Forbidden, answer.Code);
        Assert.Contains("Two in the yard", answer.Out, StringComparison.Ordinal);
        Assert.Contains("length", answer.Out, StringComparison.Ordinal);
    }

    [Fact]
    public void A_wrong_brief_is_told_with_all_its_problems()
    {
        using var rig = new Rig();
        var answer = rig.Run("audit", rig.File("r.csv", Samples.CleanCsv), "--brief", rig.File("b.json", Samples.BadBrief));
        Assert.Equal((ExitCode.Input, string.Empty), (answer.Code, answer.Out));
        Golden.Matches("bad-brief", answer.Err);
    }

    [Fact]
    public void Out_replaces_the_old_file_and_leaves_nothing_else()
    {
        using var rig = new Rig();
        var routine = rig.File("r.csv", Samples.BrokenCsv);
        var report = rig.File("report.txt", "old");
        var printed = rig.Run("audit", routine).Out;
        var answer = rig.Run("audit", routine, "--out", report);
        Assert.Equal((ExitCode.Forbidden, string.Empty, "The report is in FOLDER/report.txt.\n"), (answer.Code, answer.Out, answer.Told));
        Assert.Equal(printed, File.ReadAllText(report));
        Assert.Equal(["r.csv", "report.txt"], Directory.GetFiles(rig.Folder).Select(Path.GetFileName).Order(StringComparer.Ordinal));
    }

    [Fact]
    public void Another_library_is_remarked_upon()
    {
        using var rig = new Rig { Input = "{ \"library\": \"1999-x\", \"moves\": [ { \"count\": 1, \"attacker\": \"Bruno\", \"attack\": \"swing-right\", \"technique\": \"parry-down-left\", \"reaction\": \"head-drops\" } ] }" };
        Assert.StartsWith("The routine was made with library 1999-x; this audit uses ", rig.Run("audit", "-").Err, StringComparison.Ordinal);
    }

    [Fact]
    public void Every_rule_explains_itself()
    {
        using var rig = new Rig();
        Assert.NotEmpty(RuleBook.All);
        foreach (var rule in RuleBook.All)
        {
            var answer = rig.Run("audit", "--explain", rule.Id);
            Assert.Equal((ExitCode.Good, string.Empty), (answer.Code, answer.Err));
            Assert.StartsWith($"{rule.Id}\n{Page.Line('=')}\n", answer.Out, StringComparison.Ordinal);
        }
    }
}
