namespace Generator.Solver.Explaining;

/// <summary>Which statements cannot hold together, and what would help. Sets are bits, statement 0 the lowest.</summary>
public sealed record ClashReport
{
    /// <summary>What is known of all statements together.</summary>
    public required Answer All { get; init; }

    /// <summary>Clashes: statements that cannot hold together, of which none can be left out. The first was found by leaving out one after the other.</summary>
    public IReadOnlyList<ulong> Clashes { get; init; } = [];

    /// <summary>Give-ups: statements that have to go so that the others hold together, of which none can stay.</summary>
    public IReadOnlyList<ulong> GiveUps { get; init; } = [];

    /// <summary>Each clash was shown to hold together without any one of its statements.</summary>
    public bool Minimal { get; init; }

    /// <summary>Every answer that the clashes and give-ups rest on was proven; else some rest on no routine having been found in the time given.</summary>
    public bool Proven { get; init; }

    /// <summary>All give-ups, and so all clashes, are listed.</summary>
    public bool Complete { get; init; }
}
