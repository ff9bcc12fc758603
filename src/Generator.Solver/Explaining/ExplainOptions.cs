namespace Generator.Solver.Explaining;

/// <summary>How to look for a clash.</summary>
public sealed record ExplainOptions
{
    /// <summary>For the quick drafts. Default 1.</summary>
    public int Seed { get; init; } = 1;

    /// <summary>How long to search at most. Default 20 s.</summary>
    public TimeSpan Time { get; init; } = TimeSpan.FromSeconds(20);

    /// <summary>How long a quick draft is tried for each subset of the statements; four times as long for all together. Default 1.2 s.</summary>
    public TimeSpan Patience { get; init; } = TimeSpan.FromSeconds(1.2);
}
