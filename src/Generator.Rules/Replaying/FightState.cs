using Generator.Domain;
using Generator.Rules.Bodies;

namespace Generator.Rules.Replaying;

/// <summary>What is true between two moves: the hero, every attacker, and the moment at which the last move ended. Immutable.</summary>
public sealed record FightState
{
    /// <summary>End of the last move.</summary>
    public int Time { get; init; }

    /// <summary>Start of the last move; below every count before the first.</summary>
    public int LastStart { get; init; } = int.MinValue;

    /// <summary>Moves done so far.</summary>
    public int Moves { get; init; }

    public Stance Stance { get; init; }

    /// <summary>0 to 23 half hours from 12.</summary>
    public int Facing { get; init; }

    public Hand Left { get; init; } = Hand.Guard;

    public Hand Right { get; init; } = Hand.Guard;

    public Bound Bound { get; init; }

    /// <summary>Who binds the hero; −1 when free.</summary>
    public int BoundBy { get; init; } = -1;

    /// <summary>Attacker of the last move that had one; −1 before the first.</summary>
    public int LastTarget { get; init; } = -1;

    /// <summary>How far the hero may have followed <see cref="LastTarget"/> off the mark, in centimetres up to <see cref="Settle.FollowMost"/>.</summary>
    public int Followed { get; init; }

    /// <summary>Number of the hero's mark of the moment, from which bearings and distances are seen.</summary>
    public int Mark { get; init; }

    /// <summary>The legs of the hero's way between marks, the last first; null before the first travel.</summary>
    public Leg? HeroWay { get; init; }

    public required FixedList<AttackerState> Attackers { get; init; }

    /// <summary>Where every prop of the brief is, in its order; none without props.</summary>
    public FixedList<PropState> Props { get; init; } = PropState.None;

    /// <summary>Parts of the body that moves have hurt and that are not over by <see cref="Time"/>; mostly none.</summary>
    public FixedList<HurtLimb> Hurts { get; init; } = HurtLimb.None;

    /// <summary>Number of the prop in a hand of the hero's (−1) or of an attacker's; −1 for none.</summary>
    public int PropIn(int who, Side hand)
    {
        for (var p = 0; p < Props.Count; p++)
        {
            if (Props[p].IsIn(who, hand))
            {
                return p;
            }
        }

        return -1;
    }

    /// <summary>The hero is held or bound by this attacker.</summary>
    public bool GrippedBy(int attacker) => Left.HeldBy(attacker) || Right.HeldBy(attacker) || BoundBy == attacker;

    /// <summary>The hero holds this attacker.</summary>
    public bool Holds(int attacker) => Left.Holds(attacker) || Right.Holds(attacker);
}
