using Generator.Domain;
using Generator.Rules.Bodies;

namespace Generator.Rules.Replaying;

/// <summary>What a step does with everybody's place in time.</summary>
internal static class Moving
{
    /// <summary>Gives the attackers after a step their legs.</summary>
    public static void Lay(Scene scene, Step step, AttackerState[] attackers)
    {
        var before = step.Before.Attackers;
        for (var a = 0; a < attackers.Length; a++)
        {
            if (step.Concerns(a))
            {
                var motion = Of(scene, step, a, attackers[a]).Motion(scene);
                attackers[a] = ReferenceEquals(attackers[a], before[a]) ? attackers[a] with { } : attackers[a];
                attackers[a].Lay(motion.Laid(before[a].Way), motion.Staying);
                attackers[a] = scene.Other is null ? attackers[a] : attackers[a] with { BusyUntil = step.Over, BusyWithAlly = step.IsByAlly };
            }
            else if (attackers[a].Bearing != before[a].Bearing || attackers[a].Distance != before[a].Distance || attackers[a].Origin != before[a].Origin)
            {
                attackers[a] = attackers[a] with { Leg = Led(scene, step, before[a], attackers[a]).Laid(before[a].Way), Stays = null };
            }
        }
    }

    private static Treatment Of(Scene scene, Step step, int attacker, AttackerState after)
    {
        var before = step.Before.Attackers[attacker];
        return new Treatment
        {
            Move = step.Index,
            Attacker = attacker,
            IsTarget = attacker == step.Row.Attacker,
            Technique = step.Technique,
            Attack = step.Attack,
            Reaction = step.Row.Reaction,
            Start = step.Start,
            End = step.End,
            Origin = before.Origin,
            EndsFrom = after.Origin,
            Exactly = before.Stays,
            Stands = (before.Bearing, before.Distance),
            Meets = (step.TargetBearing, step.Distance),
            Ends = (after.Bearing, after.Distance),
            Soonest = before.SetsOffAt,
            Posture = after.Posture,
            Gone = after.Gone,
            Lay = before.LiesAt(step.Attack is null ? step.Start : step.Contact),
        };
    }

    private static Motion Led(Scene scene, Step step, AttackerState before, AttackerState after) =>
        Motion.Led(scene, step.Index, step.Start, step.End, (before.Bearing, before.Distance), (after.Bearing, after.Distance), before.LiesAt(step.Start), (before.Origin, after.Origin), before.Stays);
}
