using Generator.Domain;

namespace Generator.Rules.Judging;

/// <summary>What an audit says of a routine.</summary>
/// <param name="Findings">Sorted by count, then move, then gravest first.</param>
/// <param name="Points">Points of all rough findings; 0 is perfect.</param>
/// <param name="PointsByRule">Points of each rule of <see cref="RuleBook.All"/>.</param>
public sealed record Verdict(IReadOnlyList<Finding> Findings, int Points, IReadOnlyList<int> PointsByRule)
{
    /// <summary>The unsafe and the broken ones.</summary>
    public IReadOnlyList<Finding> Grave => [.. Findings.Where(f => f.Severity >= Severity.Broken)];

    /// <summary>No unsafe and no broken finding.</summary>
    public bool IsClean => Findings.All(f => f.Severity < Severity.Broken);
}
