namespace Generator.Solver.Explaining;

/// <summary>How to look for a clash.</summary>
public sealed record ExplainOptions
{
    /// <summary>For the drafts. Default 1, as for a draft.</summary>
    public int Seed { get; init; } = 1;

    /// <summary>How long to search at most. Default 20 s.</summary>
    public TimeSpan Time { get; init; } = TimeSpan.FromSeconds(20);

    /// <summary>How long a draft is tried for each subset of the statements; all together get half of the time. Default 1.2 s.</summary>
    public TimeSpan Patience { get; init; } = TimeSpan.FromSeconds(1.2);
}
