using Generator.Solver.Questions;

namespace Generator.Solver;

/// <summary>How to search for a draft.</summary>
public sealed record DraftOptions
{
    /// <summary>Other seeds give other routines; the same seed gives the same routine again where the result says that it is reproducible. Default 1.</summary>
    public int Seed { get; init; } = 1;

    /// <summary>How long to go on improving, 0.1 to 3600 s. Default 10 s.</summary>
    public TimeSpan Time { get; init; } = TimeSpan.FromSeconds(10);

    /// <summary>
    /// The constructive pass alone, for so many rounds unless it cannot better its routine sooner: the same seed and brief give the same routine whatever the machine
    /// and whatever else it does, as long as <see cref="Time"/> suffices. Null for no such end.
    /// </summary>
    public int? Rounds { get; init; }

    /// <summary>CP-SAT alone: no constructive pass and no hint from it.</summary>
    public bool Cold { get; init; }
}
