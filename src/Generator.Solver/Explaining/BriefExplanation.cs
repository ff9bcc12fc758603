namespace Generator.Solver.Explaining;

/// <summary>Why there is no routine for a brief, as far as is known.</summary>
public sealed record BriefExplanation
{
    /// <summary>What is known of the brief as it stands.</summary>
    public required Answer Brief { get; init; }

    /// <summary>Sets of statements that cannot hold together, of which none can be left out; in the brief's words. None where the brief is not proven impossible.</summary>
    public IReadOnlyList<IReadOnlyList<string>> Clashes { get; init; } = [];

    /// <summary>What would help, the fewest statements first, and of those what is nearest to hand (<see cref="Nearness"/>).</summary>
    public IReadOnlyList<WayOut> GiveUps { get; init; } = [];

    /// <summary>What arithmetic says, in words; empty when it says nothing.</summary>
    public IReadOnlyList<string> Reasons { get; init; } = [];

    /// <summary>The clashes are proven impossible one by one.</summary>
    public bool Proven { get; init; }

    /// <summary>Each clash was shown to be solvable without any one of its statements, by a draft that passed the audit.</summary>
    public bool Minimal { get; init; }

    /// <summary>Time did not end the search.</summary>
    public bool Complete { get; init; }

    public TimeSpan Elapsed { get; init; }
}
