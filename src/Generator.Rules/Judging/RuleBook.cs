using Generator.Rules.Rules;

namespace Generator.Rules.Judging;

/// <summary>All rules, in the order in which the help lists them.</summary>
public static class RuleBook
{
    public static readonly IReadOnlyList<Rule> All =
    [
        new FlowStance(),
        new NoWaiting(),
    ];

    private static readonly Dictionary<string, int> Positions = All.Select((rule, i) => (rule.Id, i)).ToDictionary(p => p.Id, p => p.i, StringComparer.Ordinal);

    /// <summary>Position of a rule in <see cref="All"/>; throws for an unknown id.</summary>
    public static int IndexOf(string id) => Positions[id];

    public static bool Knows(string id) => Positions.ContainsKey(id);
}
