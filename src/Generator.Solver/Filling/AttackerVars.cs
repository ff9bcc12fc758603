using Google.OrTools.Sat;

namespace Generator.Solver.Filling;

/// <summary>The solver's counterpart of an attacker's state between two moves; same meaning and units.</summary>
public sealed record AttackerVars
{
    public required IntVar Bearing { get; init; }

    public required IntVar Distance { get; init; }

    /// <summary>Position in the order of the posture enum.</summary>
    public required IntVar Posture { get; init; }

    public required IntVar OpenUntil { get; init; }

    public required IntVar ReadyAt { get; init; }

    /// <summary>Threat time as it would be when active.</summary>
    public required IntVar Threat { get; init; }

    /// <summary>Line of the grip; 0 when none was ever taken.</summary>
    public required IntVar Grip { get; init; }

    /// <summary>Neither out, nor held, nor gripping.</summary>
    public required BoolVar Active { get; init; }

    public required BoolVar Out { get; init; }

    /// <summary>Held by the hero.</summary>
    public required BoolVar Controlled { get; init; }

    public required BoolVar Gripping { get; init; }

    /// <summary>Ran off by the agreed exit: no longer on the floor.</summary>
    public required BoolVar Gone { get; init; }
}
