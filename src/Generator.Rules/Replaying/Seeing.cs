using Generator.Domain;

namespace Generator.Rules.Replaying;

/// <summary>The first half of a step: what the hero and the target are at the moment the technique starts.</summary>
internal static class Seeing
{
    public static Step Look(Scene scene, FightState state, Row row)
    {
        var technique = row.Technique < 0 ? null : scene.Book.Techniques[row.Technique];
        var attack = row.Attack < 0 ? null : scene.Book.Attacks[row.Attack];
        var mode = ModeOf(technique, attack);
        var gap = row.Start - state.Time;
        var hasTarget = row.Attacker >= 0 && technique is not { HasNoTarget: true };
        var assumed = row.Reaction < 0 && hasTarget && technique is { Reactions.Count: > 0 };
        row = assumed ? row with { Reaction = LikelyReaction(scene, technique!, row.Attacker) } : row;
        var reaction = row.Reaction < 0 ? null : scene.Book.Reactions[row.Reaction];
        var target = hasTarget ? state.Attackers[row.Attacker] : null;
        var bearing = target is null ? 0 : attack is not null && row.From >= 0 ? row.From : target.Bearing;
        var seenFrom = hasTarget ? new Bearing(state.Facing).To(new Bearing(bearing)).HalfHours : 0;
        var travels = technique is { Travel: not null } && row.To >= 0 ? row.To : -1;
        var heading = travels < 0 ? 0 : scene.Marks.Heading(state.Mark, travels);
        var turn = technique is null ? Turn.None
            : hasTarget ? technique.Window.TurnFor(new Turn(seenFrom))
            : travels >= 0 ? technique.Travel!.Heads.TurnFor(new Bearing(state.Facing).To(new Bearing(heading)))
            : Turn.None;
        var from = mode == MoveMode.EscapesGrab ? StanceChoice.Pulled(state.Stance, attack!) : state.Stance;
        var (stance, stanceTime) = StanceOf(scene, state, from, row.Stance, technique, mode);
        var (left, right, bound, boundBy) = HandsOf(scene, state, gap, row.Attacker, attack, mode);
        return new Step
        {
            Scene = scene,
            Index = state.Moves,
            Row = row,
            Mode = mode,
            Technique = technique,
            Attack = attack,
            Reaction = reaction,
            ReactionAssumed = assumed,
            Before = state,
            Gap = gap,
            Travels = travels,
            Heading = heading,
            End = technique is null ? Math.Max(state.Time, row.Start)
                : row.Start + (travels < 0 ? technique.Length.Value : scene.Lasts(technique, scene.Marks.Way(state.Mark, travels), attack is not null)),
            Contact = row.Start + scene.Settle.ContactAfter.Value,
            Opens = hasTarget && (attack is not null || row.Attacker != state.LastTarget),
            WalkRound = target is not null && attack is not null ? new Bearing(target.Bearing).Apart(new Bearing(bearing)) : 0,
            TargetBearing = bearing,
            SeenFrom = seenFrom,
            StanceFrom = from,
            StanceStart = stance,
            StanceTime = stanceTime,
            TurnMade = turn.HalfHours,
            TurnAllowed = TurnAllowed(scene, state, gap),
            FacingStart = new Bearing(state.Facing + turn.HalfHours).HalfHours,
            LeftStart = left,
            RightStart = right,
            BoundStart = bound,
            BoundByStart = boundBy,
            TargetPosture = target?.PostureAt(row.Start),
            Distance = target is null ? 0 : row.Attack < 0 ? target.Distance : scene.ContactDistance(row.Attack, row.Technique, row.Attacker),
            Reach = hasTarget && row.Technique >= 0 ? scene.TechniqueReach(row.Technique, row.Attacker) : default,
            Second = hasTarget ? SecondOf(scene, state, row, technique, reaction, bearing, attack) : -1,
        };
    }

    private static MoveMode ModeOf(Technique? technique, Attack? attack)
    {
        if (technique is null)
        {
            return MoveMode.Unanswered;
        }

        if (technique.HasNoTarget)
        {
            return MoveMode.NoTarget;
        }

        return attack switch
        {
            null => MoveMode.FollowUp,
            { IsWalkIn: true } => MoveMode.OpensOnWalkIn,
            { IsGrab: true } when technique.Family == Family.Escape => MoveMode.EscapesGrab,
            _ => MoveMode.Answer,
        };
    }

    private static int LikelyReaction(Scene scene, Technique technique, int attacker)
    {
        var listed = technique.Reactions.Select(scene.Book.ReactionIndex).ToList();
        return listed.FirstOrDefault(r => scene.Able.WhyNotReaction(r, attacker) is null, listed[0]);
    }

    private static int TurnAllowed(Scene scene, FightState state, int gap)
    {
        if (state.Bound != Bound.Free)
        {
            return 0;
        }

        var allowed = scene.Settle.TurnFor(gap);
        var held = state.Left.Kind == HandKind.Held || state.Right.Kind == HandKind.Held;
        return held ? Math.Min(allowed, scene.Settle.TurnWhileHeld) : allowed;
    }

    private static (Stance Stance, int Time) StanceOf(Scene scene, FightState state, Stance stance, Stance? said, Technique? technique, MoveMode mode)
    {
        var fixedFeet = state.Bound != Bound.Free || mode == MoveMode.EscapesGrab;
        if (technique is null)
        {
            return (stance, 0);
        }

        var (to, time) = StanceChoice.For(scene, stance, technique.Starts);
        if (said is { } wanted)
        {
            (to, time) = technique.Starts.Contains(wanted) ? (wanted, scene.Book.Stances.Time(stance, wanted, scene.Brief.Hero.Skill)) : (to, StanceTable.Never);
        }

        return (to, time > 0 && fixedFeet ? StanceTable.Never : time);
    }

    private static (Hand Left, Hand Right, Bound Bound, int BoundBy) HandsOf(Scene scene, FightState state, int gap, int attacker, Attack? attack, MoveMode mode)
    {
        var longEnough = gap >= scene.Settle.HandBack.Value;
        var left = HandStates.Settled(state.Left, longEnough);
        var right = HandStates.Settled(state.Right, longEnough);
        if (mode != MoveMode.EscapesGrab)
        {
            return (left, right, state.Bound, state.BoundBy);
        }

        return (
            HandStates.Seized(left, attack!.GripsLeft, attacker),
            HandStates.Seized(right, attack.GripsRight, attacker),
            attack.GripsBound is { } b && b != Bound.Free && state.Bound == Bound.Free ? b : state.Bound,
            attack.GripsBound is { } c && c != Bound.Free && state.Bound == Bound.Free ? attacker : state.BoundBy);
    }

    private static int SecondOf(Scene scene, FightState state, Row row, Technique? technique, Reaction? reaction, int bearing, Attack? attack)
    {
        if (technique is null || reaction is null || !(reaction.HitsSecond || technique.TakesTwo))
        {
            return -1;
        }

        var lands = technique.TakesTwo ? bearing : Effects.Landing(technique, reaction, bearing, attack);
        var second = -1;
        var nearest = Bearing.Circle;
        for (var a = 0; a < scene.Cast; a++)
        {
            var other = state.Attackers[a];
            var apart = new Bearing(other.Bearing).Apart(new Bearing(lands));
            var fits = technique.Two is { } two
                ? two.IsThere(apart, other.Distance) && other.PostureAt(row.Start) is { } posture && two.Needs.Contains(posture)
                : apart <= scene.Settle.SecondWithin && other.IsActive && other.IsOnFeetAt(row.Start);
            if (a != row.Attacker && fits && other.Entrance <= row.Start && apart < nearest)
            {
                (second, nearest) = (a, apart);
            }
        }

        return second;
    }
}
