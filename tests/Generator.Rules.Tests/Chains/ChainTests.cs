using Generator.Domain;
using Generator.Rules.Tests.Fights;

namespace Generator.Rules.Tests.Chains;

/// <summary>Whole sequences under all rules at once, as written and in the mirror.</summary>
public sealed class ChainTests
{
    public static TheoryData<string, string> Flowing => FlowingChains.All;

    public static TheoryData<string, int, string, string> Broken => BrokenChains.All;

    [Theory]
    [MemberData(nameof(Flowing))]
    public void A_sequence_that_flows_has_no_finding(string start, string moves) =>
        Assert.Empty(Findings(Fight.Of(start, Open(moves)), moves));

    [Theory]
    [MemberData(nameof(Flowing))]
    public void A_sequence_that_flows_does_so_in_the_mirror(string start, string moves) =>
        Assert.Empty(Findings(FightMirror.Of(Fight.Of(start, Open(moves))), moves));

    [Theory]
    [MemberData(nameof(Broken))]
    public void A_planted_fault_is_found_where_it_is_and_by_its_rule_alone(string rule, int move, string start, string moves) =>
        Assert.Equal([$"{rule} at move {move}"], Places(Fight.Of(start, Open(moves)), moves));

    [Theory]
    [MemberData(nameof(Broken))]
    public void A_planted_fault_is_found_in_the_mirror(string rule, int move, string start, string moves) =>
        Assert.Equal([$"{rule} at move {move}"], Places(FightMirror.Of(Fight.Of(start, Open(moves))), moves));

    private const string Ends = "; END";

    private static string Open(string moves) => moves.Replace(Ends, string.Empty, StringComparison.Ordinal);

    /// <summary>A sequence may stop in the middle of a hold: only one marked END must have let go.</summary>
    private static IReadOnlyList<string> Findings(Fight fight, string moves) => [.. Found(fight, moves).Select(f => $"{f.Rule}: {f.Severity} move {f.Move} {f.Message}")];

    private static IReadOnlyList<string> Places(Fight fight, string moves) => [.. Found(fight, moves).Select(f => $"{f.Rule} at move {f.Move}").Distinct(StringComparer.Ordinal)];

    private static IEnumerable<Finding> Found(Fight fight, string moves) =>
        fight.Audit().Findings.Where(f => moves.EndsWith(Ends, StringComparison.Ordinal) || f is not { Rule: "grip", Move: 0 });
}
