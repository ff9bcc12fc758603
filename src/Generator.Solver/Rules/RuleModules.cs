namespace Generator.Solver.Rules;

/// <summary>All rules on the solver's side.</summary>
public static class RuleModules
{
    public static readonly IReadOnlyList<RuleModule> All =
    [
        new FlowStance(),
    ];
}
