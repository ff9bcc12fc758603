using Generator.Domain;

namespace Generator.Solver.Proving;

/// <summary>What a proof tells moves apart by: moves with equal traits belong to one class.</summary>
internal sealed record MoveTraits
{
    /// <summary>The target; −1 for none.</summary>
    public required int Attacker { get; init; }

    public ComesBy By { get; init; }

    /// <summary>The posture that the move leaves; null when nothing changes for the target.</summary>
    public Posture? To { get; init; }

    /// <summary>Puts out by a finish.</summary>
    public bool Finishes { get; init; }

    public bool Setback { get; init; }

    public bool Pause { get; init; }

    public bool HeroFalls { get; init; }

    public bool HeroHeadHit { get; init; }

    public bool Falls { get; init; }

    public bool HeadHit { get; init; }

    public SecondRole Second { get; init; }

    /// <summary>Postures in which a technique for two finds the second; where somebody ready will do, any from which one recovers.</summary>
    public PostureSet SecondFrom { get; init; }

    /// <summary>The posture in which the second attacker is left: bumped into off balance, taken along like the target, but never held.</summary>
    public Posture SecondLeaves => Second == SecondRole.Bumped ? Posture.OffBalance : To is { } to && !to.IsControlled() ? to : Posture.Ready;

    /// <summary>Attackers able to be taken along, as bits.</summary>
    public int AbleSeconds { get; init; }

    /// <summary>Moves of hero moments that it can be, as bits (<see cref="WantedMoves"/>).</summary>
    public ulong Wanted { get; init; }
}
