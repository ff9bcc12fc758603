using Generator.Domain;

namespace Generator.Rules.Judging;

/// <summary>A finding, and those that vanish with it.</summary>
/// <param name="Finding">The finding.</param>
/// <param name="Folded">Findings that vanished with it when it was mended, in the order of the audit.</param>
/// <param name="Mend">What was changed to mend it, such as "move 7 as jab left, head turns"; empty where it stays.</param>
public sealed record Fold(Finding Finding, IReadOnlyList<Finding> Folded, string Mend)
{
    /// <summary>Every finding by itself, in the order of the counts.</summary>
    public static IReadOnlyList<Fold> None(Verdict verdict) => [.. verdict.Findings.OrderBy(f => f.Count).ThenBy(f => f.Move).Select(f => new Fold(f, [], string.Empty))];
}
