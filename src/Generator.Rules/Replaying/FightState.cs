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

    /// <summary>This is the fight as the ally is in it: stance, hands, mark and the rest of what is said of a hero are theirs.</summary>
    public bool IsAllys { get; init; }

    /// <summary>The other of hero and ally as their own last move left them; null where there is no ally. What it says of the attackers is of no meaning.</summary>
    public FightState? Other { get; init; }

    /// <summary>How far the last move stepped off the mark; kept only where there is an ally.</summary>
    public Place Steps { get; init; }

    /// <summary>Moment at which the last move of either is over.</summary>
    public int Latest => Other is { } other ? Math.Max(Time, other.Time) : Time;

    /// <summary>The other holds this attacker, or is held by them.</summary>
    public bool IsWithOther(int attacker) => Other is { } other && (other.Holds(attacker) || other.GrippedBy(attacker));

    /// <summary>The same moment as it is for the other of hero and ally: everybody is seen from their mark, and whom they held or who held them may have been freed since.</summary>
    public FightState ForOther(Marks marks)
    {
        var (turned, mark) = (Other!, marks[Other!.Mark]);
        var attackers = new AttackerState[Attackers.Count];
        for (var a = 0; a < attackers.Length; a++)
        {
            var now = Attackers[a];
            attackers[a] = now.Origin == mark ? now : now.SeenFrom(mark);
            turned = turned with { Left = Effects.Freed(turned.Left, a, now.Posture), Right = Effects.Freed(turned.Right, a, now.Posture) };
            turned = turned.BoundBy == a && now.Posture != Posture.Gripping ? turned with { Bound = Bound.Free, BoundBy = -1 } : turned;
        }

        // Whoever has been in a move of the other since is taken on anew.
        var taken = turned.LastTarget >= 0 && attackers[turned.LastTarget] is { HasNotActed: false } last && last.BusyWithAlly != turned.IsAllys;
        return turned with
        {
            Moves = Moves,
            LastTarget = taken ? -1 : turned.LastTarget,
            Followed = taken ? 0 : turned.Followed,
            Attackers = new FixedList<AttackerState>(attackers),
            Hurts = turned.Hurts.Count == 0 && Hurts.Count == 0 ? Hurts : [.. turned.Hurts.Where(h => h.Who < 0), .. Hurts.Where(h => h.Who >= 0)],
            Props = Props,
            Other = this with { Other = null },
        };
    }

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
