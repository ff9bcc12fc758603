using System.Text;
using Generator.Testing;

namespace Generator.Cli.Tests.Commands;

/// <summary>Whatever is wrong with a line is told in two lines, with exit code 2 and nothing on standard output.</summary>
public class BadLineTests
{
    private static readonly string[] Lines =
    [
        "drat", "frobnicate", "explain", "draft --sede 4", "draft --foo", "draft --seed x", "draft --seed", "draft --seed -1", "draft --seed 1 --seed 2",
        "draft --time 0,5", "draft --time 0", "draft --time 4000", "draft --attackers 9 --counts 3 --moves 0", "draft a b", "draft nowhere.json",
        "draft nowhere.json --attackers 3", "draft --scenario in", "draft --scenario inn --attackers 3", "draft --out nowhere/r.json", "draft --out .", "draft --library nowhere.json",
        "audit", "audit nowhere.json", "audit --jsno nowhere.json", "audit --explain", "audit --explain reset-windo", "audit --explain no-waiting r.json",
        "paperwork", "paperwork r.json", "paperwork r.json --out", "paperwork nowhere.json --out .", "paperwork nowhere.json --out nowhere/papers", "paperwork - --brief - --out .",
        "paperwork r.json --out . --from 2027-13-01", "paperwork r.json --out . --from tomorrow", "paperwork r.json --out . --frames 23.976", "paperwork r.json --out . --guidance mars",
        "audit - --brief -", "audit nowhere.csv --seed 4", "audit r.json --brief nowhere.json", "library lst", "library list thro", "library list --all", "library show", "library show kick",
        "library show swnig", "repair", "repair nowhere.json", "repair - --brief -", "repair r.csv --keep x", "repair r.csv --keep 5@9", "repair r.csv --time 0",
        "library list --limb tail", "library list --needs foldde", "library list --skill expert", "library list --weight 6", "library list --for nowhere.brief.json",
        "library search", "library search qqqqqq", "library add", "library add nowhere.json",
        "alternatives", "alternatives nowhere.json", "alternatives b.json --number 1", "alternatives r.csv --keep 5@+", "revise", "revise nowhere.csv", "revise nowhere.csv --brief nowhere.json", "revise r.csv --order-cost x",
        "explain nowhere.json", "shape", "shape nowhere.json", "shape - --brief -", "shape r.csv --picture nowhere/s.svg",
    ];

    [Fact]
    public void Every_fault_is_told_in_the_form_of_the_house()
    {
        using var rig = new Rig();
        var text = new StringBuilder();
        foreach (var line in Lines)
        {
            var answer = rig.Run(line.Split(' '));
            Assert.Equal((ExitCode.Input, string.Empty), (answer.Code, answer.Out));
            Assert.Matches("^(.+\n  Maybe .+\n)+$", answer.Err);
            text.Append("$ generator ").Append(line).Append('\n').Append(answer.Err).Append('\n');
        }

        Golden.Matches("bad-lines", text.ToString().Replace(Path.GetFullPath("nowhere"), "HERE/nowhere", StringComparison.Ordinal));
    }

    [Fact]
    public void A_fault_of_the_program_is_told_without_a_stack_trace()
    {
        using var rig = new Rig { Draft = (_, _, _, _, _) => throw new InvalidOperationException("two counts differ") };
        var answer = rig.Run("draft");
        Assert.Equal((ExitCode.Fault, string.Empty), (answer.Code, answer.Out));
        Assert.StartsWith("Generator stopped: two counts differ\n  Maybe ", answer.Err, StringComparison.Ordinal);
        Assert.DoesNotContain("   at ", answer.Err, StringComparison.Ordinal);
    }
}
