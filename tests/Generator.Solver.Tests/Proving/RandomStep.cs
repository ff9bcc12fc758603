using Generator.Domain;
using Generator.Rules;
using Generator.Rules.Judging;
using Generator.Rules.Replaying;
using Generator.Solver.Constructing;
using Generator.Solver.Repertoires;
using Generator.Testing;

namespace Generator.Solver.Tests.Proving;

/// <summary>One move out of the blue: a state that suits it in what a draft cares for, drawn by chance in all else.</summary>
internal static class RandomStep
{
    /// <summary>Half count at which the move starts.</summary>
    private const int Start = 20;

    /// <summary>Null where the rules forbid the move.</summary>
    public static Step? Of(Scene scene, Choice choice, int attacker, Posture posture, Chance chance)
    {
        var technique = scene.Book.Techniques[choice.Technique];
        var reach = scene.TechniqueReach(choice.Technique, attacker);
        var gap = chance.Whole(0, 4);
        var attackers = Enumerable.Range(0, scene.Cast).Select(a => Standing(chance, a == attacker ? posture : chance.One([Posture.Ready, Posture.OffBalance]))).ToArray();
        var target = attackers[attacker];
        attackers[attacker] = target with
        {
            Distance = choice.Attack >= 0 ? target.Distance : Math.Max(0, chance.Whole(reach.Least, reach.Most + scene.Settle.FollowMost.Value)),
            Grip = posture != Posture.Gripping ? null : technique.Answers.IsEmpty ? scene.Book.Attacks.First(a => a.IsGrab).Line : chance.One([.. technique.Answers.Members]),
            ReadyAt = posture == Posture.Ready || choice.Attack >= 0 ? -Start : target.ReadyAt,
        };
        var tie = posture.IsControlled() ? new Hand(HandKind.Holding, attacker) : posture == Posture.Gripping ? new Hand(HandKind.Held, attacker) : Hand.Guard;
        var bound = posture == Posture.Gripping ? chance.Any<Bound>() : Bound.Free;
        var hands = chance.Whole(bound == Bound.Free ? 1 : 0, 3);
        var state = new FightState
        {
            Time = Start - gap,
            LastStart = Start - gap - 2,
            Moves = chance.Whole(1, 9),
            Stance = technique.Starts.Members.Any() && chance.Percent(85) ? chance.One([.. technique.Starts.Members]) : chance.Any<Stance>(),
            Facing = chance.Whole(0, 23),
            Left = (hands & 1) != 0 ? tie : Hand.Guard,
            Right = (hands & 2) != 0 ? tie : Hand.Guard,
            Bound = bound,
            BoundBy = bound == Bound.Free ? -1 : attacker,
            LastTarget = chance.Whole(-1, scene.Cast - 1),
            Followed = chance.Whole(0, scene.Settle.FollowMost.Value),
            Attackers = [.. attackers],
        };
        var reaction = choice.Reactions.Length == 0 ? -1 : chance.One(choice.Reactions);
        var step = Replay.Step(scene, state, new Row(Start, attacker, -1, default, choice.Attack, choice.Technique, reaction, 0));
        return Score.Begin(scene, state).Allowed(scene, step) is null ? null : step;
    }

    private static AttackerState Standing(Chance chance, Posture posture) => new()
    {
        Bearing = chance.Whole(0, 23),
        Distance = chance.Whole(60, 220),
        Posture = posture,
        OpenUntil = chance.Whole(Start - 2, Start + 6),
        ReadyAt = chance.Whole(Start - 4, Start + 4),
        OutAt = -1,
    };
}
