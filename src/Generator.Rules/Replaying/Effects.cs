using Generator.Domain;

namespace Generator.Rules.Replaying;

/// <summary>The second half of a step: what the move makes of hero and attackers. Applied whether or not the move was possible.</summary>
public static class Effects
{
    /// <summary>Bearing at which a reaction leaves an attacker who stood at <paramref name="bearing"/>.</summary>
    public static int Landing(Technique technique, Reaction reaction, int bearing, Attack? attack) =>
        new Bearing(bearing + CarriedRound(technique.Carry, reaction.Round, attack is { Line.Side: LineSide.Right })).HalfHours;

    /// <summary>Distance at which a reaction leaves its target, in centimetres: drawn into the band where the technique draws, carried back, and clear of the hero if let go.</summary>
    /// <param name="scene">Bodies and library.</param>
    /// <param name="technique">What is done to the target.</param>
    /// <param name="attacker">The target.</param>
    /// <param name="reaction">How they take it.</param>
    /// <param name="posture">The posture in which it leaves them.</param>
    /// <param name="distance">Where it finds them; the farther, the farther are they left.</param>
    public static int CarriedTo(Scene scene, int technique, int attacker, Reaction reaction, Posture posture, int distance)
    {
        var drawn = scene.Book.Techniques[technique].Draws ? scene.TechniqueReach(technique, attacker).Draw(distance) : distance;
        return SentBack(scene, reaction, posture, drawn);
    }

    /// <summary>The same for the second whom a technique takes, who is not drawn.</summary>
    public static int SentBack(Scene scene, Reaction reaction, Posture posture, int distance) => Math.Max(scene.NearestFor(posture), distance + reaction.Back.Value);

    /// <summary>Half hours round the clock, signed: which way the carry of a technique sends a reaction's way round.</summary>
    public static int CarriedRound(Carry carry, int round, bool attackAtTheRight)
    {
        if (round == Turn.About.HalfHours)
        {
            return round;
        }

        return carry switch
        {
            Carry.Clockwise => round,
            Carry.CounterClockwise => -round,
            Carry.WithAttack => attackAtTheRight ? -round : round,
            _ => 0,
        };
    }

    /// <summary>Centimetres that a reaction lets the hero follow; negative where the partner comes nearer, or goes round so far that the step is lost.</summary>
    public static int GivesWay(Scene scene, Reaction? reaction) => reaction switch
    {
        null => 0,
        { Round: >= 2 } => -scene.Settle.FollowMost.Value,
        _ => reaction.Back.Value,
    };

    public static FightState Of(Scene scene, Step step)
    {
        var before = step.Before;
        var technique = step.Technique;
        if (technique is null)
        {
            var others = Unanswered(scene, step);
            return before with { LastStart = step.Start, Moves = before.Moves + 1, Followed = 0, Attackers = new FixedList<AttackerState>(others), Props = Handling.After(scene, step, others) };
        }

        var attackers = before.Attackers.ToArray();
        var target = step.Target;
        if (target >= 0)
        {
            attackers[target] = Reacts(scene, step, attackers[target], target, step.TargetBearing, step.Distance, true);
            if (step.Second >= 0)
            {
                attackers[step.Second] = Second(scene, step, attackers[step.Second], attackers[target]);
            }
        }

        var left = HandAfter(step.LeftStart, technique.LeftEnd, target);
        var right = HandAfter(step.RightStart, technique.RightEnd, target);
        var bound = technique.EndBound ?? step.BoundStart;
        var boundBy = BoundBy(technique, step, target);
        if (target >= 0 && step.Reaction is not null)
        {
            var now = attackers[target].Posture;
            (left, right) = (Freed(left, target, now), Freed(right, target, now));
            if (boundBy == target && now != Posture.Gripping)
            {
                (bound, boundBy) = (Bound.Free, -1);
            }
        }

        MoveOthers(technique, step, attackers, target);
        LoseForgottenHolds(attackers, before, left, right, step.End);
        Travelling.GoAlong(step, attackers, target);
        Moving.Lay(scene, step, attackers);
        Travelling.Look(step, attackers);
        return new FightState
        {
            Mark = step.Travels < 0 ? before.Mark : step.Travels,
            HeroWay = step.Travels < 0 ? before.HeroWay : Travelling.Way(step),
            Time = step.End,
            LastStart = step.Start,
            Moves = before.Moves + 1,
            Stance = technique.EndStance ?? step.StanceStart,
            Facing = new Bearing(step.FacingStart + technique.Turn.HalfHours).HalfHours,
            Left = left,
            Right = right,
            Bound = bound,
            BoundBy = bound == Bound.Free ? -1 : boundBy,
            LastTarget = target >= 0 ? target : before.LastTarget,
            Followed = target >= 0 && step.Travels < 0 ? Math.Clamp(step.Follows + GivesWay(scene, step.Reaction), 0, scene.Settle.FollowMost.Value) : 0,
            Attackers = new FixedList<AttackerState>(attackers),
            Props = Handling.After(scene, step, attackers),
            Hurts = HurtLimb.After(scene, step),
            IsAllys = before.IsAllys,
            Other = before.Other,
            Steps = before.Other is null ? default : step.StepsTo,
        };
    }

    private static AttackerState[] Unanswered(Scene scene, Step step)
    {
        var attackers = step.Before.Attackers.ToArray();
        if (step.Row.Attacker >= 0 && step.Attack is not null)
        {
            attackers[step.Row.Attacker] = attackers[step.Row.Attacker] with { Bearing = step.TargetBearing, Distance = step.Distance, ReadyAt = step.Contact };
            Moving.Lay(scene, step, attackers);
        }

        return attackers;
    }

    private static AttackerState Reacts(Scene scene, Step step, AttackerState was, int attacker, int bearing, int distance, bool sent)
    {
        var technique = step.Technique!;
        if (step.Reaction is not { } reaction)
        {
            return was with { Bearing = bearing, Distance = distance };
        }

        var index = step.Row.Reaction;
        var posture = reaction.Posture ?? step.TargetPosture ?? was.Posture;
        var isOut = posture == Posture.Out;
        var keeps = reaction.Posture is null && was.PostureAt(step.Start) is { } p && !p.IsControlled();
        return was with
        {
            Bearing = sent ? Landing(technique, reaction, bearing, step.Attack) : was.Bearing,
            Distance = sent ? CarriedTo(scene, step.Row.Technique, attacker, reaction, posture, distance) : SentBack(scene, reaction, posture, distance),
            Posture = posture,
            Grip = posture == Posture.Gripping ? GripOf(step, was) : null,
            OpenUntil = step.End + scene.OpenFor(index),
            ReadyAt = keeps ? was.ReadyAt : step.End + scene.ReadyAfter(index, attacker) + step.Row.Linger,
            Falls = was.Falls + (reaction.Fall == FallClass.None ? 0 : 1),
            OutAt = isOut && was.OutAt < 0 ? step.End : was.OutAt,
            Gone = was.Gone || reaction.RunsOff,
        };
    }

    private static AttackLine? GripOf(Step step, AttackerState was) => step.Attack is { IsGrab: true } grab ? grab.Line : was.Grip ?? step.Attack?.Line;

    /// <summary>Whoever is taken together with the target reacts along their own bearing; whoever is bumped into is carried on along theirs, so that the two end apart.</summary>
    private static AttackerState Second(Scene scene, Step step, AttackerState was, AttackerState target) =>
        step.Technique!.TakesTwo
            ? Reacts(scene, step, was, step.Second, was.Bearing, was.Distance, false)
            : was with
            {
                Distance = Math.Max(was.Distance, target.Distance + scene.Settle.LaneBeside.Value),
                Posture = Posture.OffBalance,
                OpenUntil = step.End + scene.OpenFor(step.Row.Reaction),
                ReadyAt = Math.Max(was.ReadyAt, step.End + scene.ReadyAfter(step.Row.Reaction, step.Second)),
            };

    /// <summary>An out hand that the technique leaves alone is back by the time it ends.</summary>
    public static Hand HandAfter(Hand start, HandEnd end, int target) => end switch
    {
        HandEnd.Guard => Hand.Guard,
        HandEnd.Out => Hand.Out,
        HandEnd.Holding => new Hand(HandKind.Holding, target),
        HandEnd.Held => new Hand(HandKind.Held, target),
        _ => start.Kind == HandKind.Out ? Hand.Guard : start,
    };

    private static int BoundBy(Technique technique, Step step, int target) => technique.EndBound switch
    {
        null => step.BoundByStart,
        Bound.Free => -1,
        _ => target,
    };

    /// <summary>Any posture but a held one frees the hands that held the target; any but gripping ends the target's grip.</summary>
    public static Hand Freed(Hand hand, int target, Posture now)
    {
        var frees = (hand.Holds(target) && !now.IsControlled()) || (hand.HeldBy(target) && now != Posture.Gripping);
        return frees ? Hand.Guard : hand;
    }

    private static void MoveOthers(Technique technique, Step step, AttackerState[] attackers, int target)
    {
        for (var a = 0; a < attackers.Length; a++)
        {
            if (a == target || step.Before.IsWithOther(a))
            {
                continue;
            }

            if (technique.CarriesHeld && attackers[a].Posture.IsControlled())
            {
                attackers[a] = attackers[a] with { Bearing = step.TargetBearing };
            }
            else if (attackers[a].Posture == Posture.Gripping && technique.Turn.HalfHours != 0)
            {
                attackers[a] = attackers[a] with { Bearing = new Bearing(attackers[a].Bearing + technique.Turn.HalfHours).HalfHours };
            }
        }
    }

    /// <summary>A held attacker whom no hand holds any more is free at once (only a faulty routine lets go like that).</summary>
    private static void LoseForgottenHolds(AttackerState[] attackers, FightState before, Hand left, Hand right, int end)
    {
        for (var a = 0; a < attackers.Length; a++)
        {
            if (attackers[a].Posture.IsControlled() && !left.Holds(a) && !right.Holds(a) && !before.IsWithOther(a))
            {
                attackers[a] = attackers[a] with { Posture = Posture.Ready, OpenUntil = end, ReadyAt = end };
            }
        }
    }
}
