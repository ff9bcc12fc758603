using Generator.Domain;
using Generator.Rules.Bodies;

namespace Generator.Rules.Replaying;

/// <summary>
/// Everything that Replay saw at one move: the facts on which the rules speak. Times are half counts from count 1, bearings and turns
/// half hours, distances centimetres. A wrong move is carried on with as if it had worked, so that one fault is found once.
/// </summary>
public sealed class Step
{
    private IReadOnlyList<Meeting>? meetings;
    private int[]? threats;

    /// <summary>Brief and library.</summary>
    public required Scene Scene { get; init; }

    /// <summary>Number of the row, from 0.</summary>
    public required int Index { get; init; }

    public required Row Row { get; init; }

    public required MoveMode Mode { get; init; }

    public Technique? Technique { get; init; }

    public Attack? Attack { get; init; }

    /// <summary>As the row says or, where it says nothing and the technique lists some, as <see cref="ReactionAssumed"/> has it.</summary>
    public Reaction? Reaction { get; init; }

    /// <summary>
    /// The row gives no reaction, though its technique needs one: what follows is seen as if it were the first listed one that the attacker can
    /// perform. <see cref="Row"/> then holds it, too.
    /// </summary>
    public bool ReactionAssumed { get; init; }

    public required FightState Before { get; init; }

    /// <summary>Set by Replay once the effects are worked out.</summary>
    public FightState After { get; set; } = null!;

    /// <summary>Number of the mark to which the hero travels; −1 where they stay.</summary>
    public int Travels { get; init; } = -1;

    /// <summary>Bearing of that mark from the one on which the move begins.</summary>
    public int Heading { get; init; }

    /// <summary>Centimetres to it.</summary>
    public int Way => Travels < 0 ? 0 : Scene.Marks.Way(Before.Mark, Travels);

    /// <summary>Moment from which the hero is on the way: the start, or the contact of the attack that makes them go.</summary>
    public int SetsOff => Attack is null ? Start : Math.Min(Contact, End);

    /// <summary>The floor round the mark on which the move begins.</summary>
    public FloorReach Floor => Scene.Marks.FloorOf(Before.Mark);

    /// <summary>The floor round the mark on which it ends.</summary>
    public FloorReach FloorAfter => Scene.Marks.FloorOf(After.Mark);

    /// <summary>The mark on which the move begins, as a place on the floor.</summary>
    public Place Mark => Scene.Marks[Before.Mark];

    /// <summary>The ally does it; <see cref="Scene"/> is then theirs, so that what it says of the hero is said of them.</summary>
    public bool IsByAlly => Before.IsAllys;

    /// <summary>From the end of the last move of anybody to this one; the same as <see cref="Gap"/> where there is no ally.</summary>
    public int Quiet => Start - Before.Latest;

    /// <summary>From the end of the move before to this one; negative when they overlap.</summary>
    public int Gap { get; init; }

    public int Start => Row.Start;

    public int End { get; init; }

    /// <summary>Moment at which the attack lands, or would.</summary>
    public int Contact { get; init; }

    /// <summary>Moment at which both technique and attack are over.</summary>
    public int Over => Attack is null ? End : Math.Max(End, Contact);

    /// <summary>First move of an exchange: another attacker than the move before, or a new attack.</summary>
    public bool Opens { get; init; }

    /// <summary>Threat time of every attacker before the move; <see cref="int.MaxValue"/> for those who are out, held or gripping.</summary>
    public IReadOnlyList<int> Threats => threats ??= Replay.ThreatTimes(Scene, Before);

    /// <summary>
    /// Soonest moment at which the attack can land: its attacker's threat time and the way round. Somebody who is met while still under way goes on from there, so that they may be ready before they have
    /// arrived; they set off for the blow when they have. Null without an attack, and for who is out, held or gripping.
    /// </summary>
    public int? SoonestContact
    {
        get
        {
            if (Attack is null || !HasTarget || Threats[Row.Attacker] is var threat && threat == int.MaxValue)
            {
                return null;
            }

            var (attacker, stands) = (Row.Attacker, Before.Attackers[Row.Attacker]);
            var ready = threat + (WalkRound * Scene.Settle.WalkRoundPerHalfHour.Value);
            return stands.ArrivesAt <= stands.SetsOffAt ? ready : Math.Max(ready, stands.ArrivesAt + Scene.ComingIn(attacker, Attack, stands.Distance, WalkRound, Distance));
        }
    }

    /// <summary>Half hours that the attacker walks round before the attack.</summary>
    public int WalkRound { get; init; }

    /// <summary>Bearing of the target at the move.</summary>
    public int TargetBearing { get; init; }

    /// <summary>Bearing of the target relative to the facing before any turn, −11 to 12.</summary>
    public int SeenFrom { get; init; }

    /// <summary>Stance from which the hero goes to it: that before the move, or the one into which a grab that they escape from pulls them.</summary>
    public Stance StanceFrom { get; init; }

    /// <summary>Stance in which the technique starts.</summary>
    public Stance StanceStart { get; init; }

    /// <summary>Half counts that the change to it takes; <see cref="StanceTable.Never"/> when there is no way.</summary>
    public int StanceTime { get; init; }

    /// <summary>Turn made in the gap.</summary>
    public int TurnMade { get; init; }

    /// <summary>Largest turn that the gap, a grip or a bound allows.</summary>
    public int TurnAllowed { get; init; }

    /// <summary>Facing when the technique starts.</summary>
    public int FacingStart { get; init; }

    /// <summary>Hands when the technique starts, after the gap and, where the grab closes first, in its grip.</summary>
    public Hand LeftStart { get; init; }

    public Hand RightStart { get; init; }

    public Bound BoundStart { get; init; }

    public int BoundByStart { get; init; } = -1;

    /// <summary>Posture of the target when the move starts; null while recovering or without a target.</summary>
    public Posture? TargetPosture { get; init; }

    /// <summary>Distance at contact before the hero steps.</summary>
    public int Distance { get; init; }

    /// <summary>How far the hero may have followed the target off the mark in this exchange; the step of the technique comes on top.</summary>
    public int Follows => Opens ? 0 : Before.Followed;

    /// <summary>Farthest distance at which the technique still reaches.</summary>
    public int Farthest => Reach.Most + Follows;

    /// <summary>Where the hero steps for the technique: from the mark and, before a move on somebody else, back.</summary>
    public Place StepsTo => HasTarget && Technique is not null ? Place.At(TargetBearing, Reach.Step(Distance, Follows)) : default;

    /// <summary>Band of the technique for these two bodies.</summary>
    public Reach Reach { get; init; }

    /// <summary>The second attacker whom the move concerns: the one bumped into, or taken along; −1 for none.</summary>
    public int Second { get; init; } = -1;

    /// <summary>Somebody comes too near to somebody because of the move: quicker than <see cref="Meetings"/>, each of which one rule forbids.</summary>
    internal bool IsTooNear(Scene scene)
    {
        if (meetings is null && !Meeting.Any(scene, this))
        {
            meetings = [];
        }

        return meetings is not { Count: 0 };
    }

    /// <summary>Those who come too near to one another because of the move.</summary>
    public IReadOnlyList<Meeting> Meetings(Scene scene) => meetings ??= Meeting.Of(scene, this);

    /// <summary>Who falls at the end of the move and how: the hero as −1, then attackers by their number.</summary>
    public IEnumerable<(int Who, FallClass Kind)> Falls
    {
        get
        {
            if (Technique is not { } technique)
            {
                yield break;
            }

            if (technique.HeroFall != FallClass.None)
            {
                yield return (-1, technique.HeroFall);
            }

            if (!HasTarget || Reaction is not { Fall: not FallClass.None } reaction)
            {
                yield break;
            }

            yield return (Row.Attacker, reaction.Fall);
            if (Second >= 0 && technique.TakesTwo)
            {
                yield return (Second, reaction.Fall);
            }
        }
    }

    /// <summary>The move is on this attacker, or takes them along.</summary>
    public bool Concerns(int attacker) => HasTarget && (attacker == Row.Attacker || attacker == Second);

    /// <summary>A blow of the hero, whether it hits or is answered.</summary>
    public bool Throws => HasTarget && Technique is { IsHit: true };

    /// <summary>The attacker blocks, slips or catches the hero's blow.</summary>
    public bool IsAnswered => Reaction is { AnswersBlow: true };

    /// <summary>A blow of the hero that is not answered: what exposure, wear, lingering and the shape of a fight count.</summary>
    public bool Hits => Throws && !IsAnswered;

    /// <summary>What the move has added to somebody's way, the last first.</summary>
    public IEnumerable<Leg> LegsOf(int attacker)
    {
        for (var leg = After.Attackers[attacker].Leg; leg is not null && leg.Move == Index; leg = leg.Before)
        {
            yield return leg;
        }
    }

    /// <summary>Number of the attacker that the move is on; -1 without a target.</summary>
    public int Target => HasTarget ? Row.Attacker : -1;

    /// <summary>The move has a target.</summary>
    public bool HasTarget => Row.Attacker >= 0 && Technique is not { HasNoTarget: true };
}
