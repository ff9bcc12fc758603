namespace Generator.Solver.Completing;

/// <summary>How to complete a sketch.</summary>
public sealed record CompleteOptions
{
    public int Seed { get; init; } = 1;

    /// <summary>How long to search at most.</summary>
    public TimeSpan Time { get; init; } = TimeSpan.FromSeconds(10);

    /// <summary>Some answer is wanted soon, whatever gives in it: what gives nothing is tried as little as may be.</summary>
    public bool GivesFirst { get; init; }
}
