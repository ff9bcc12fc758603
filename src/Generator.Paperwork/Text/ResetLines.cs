using Generator.Domain;
using Generator.Rules;
using Generator.Rules.Replaying;

namespace Generator.Paperwork.Text;

/// <summary>What becomes of the attacker when an exchange is over.</summary>
internal static class ResetLines
{
    /// <summary>Lines that follow the last move of an exchange; none after a pause without a target.</summary>
    public static IEnumerable<string> After(Scene scene, IReadOnlyList<Step> steps, int last)
    {
        var step = steps[last];
        if (!step.HasTarget)
        {
            yield break;
        }

        yield return Fate(scene, steps, last, step.Row.Attacker);
        if (step.Second >= 0 && step.After.Attackers[step.Second].Posture == Posture.Out)
        {
            yield return $"{StepDetails.Name(scene, step.Second)} is out";
        }
    }

    private static string Fate(Scene scene, IReadOnlyList<Step> steps, int last, int attacker)
    {
        var name = StepDetails.Name(scene, attacker);
        var hero = StepDetails.Name(steps[last].Scene, -1);
        var now = steps[last].After.Attackers[attacker];
        if (now.Posture == Posture.Out)
        {
            return now.Gone ? $"{name} is out, and leaves the floor at {Words.Clock(now.Bearing)}" : $"{name} is out, at {Words.Clock(now.Bearing)}";
        }

        var next = steps.Skip(last + 1).FirstOrDefault(s => s.Target == attacker);
        if (now.Posture.IsControlled())
        {
            return $"{hero} keeps hold of {name}" + Until(next);
        }

        if (now.Posture == Posture.Gripping)
        {
            return $"{name} keeps hold of {hero}" + Until(next);
        }

        if (next is null)
        {
            return $"{name} does not come again";
        }

        if (next.Attack is null)
        {
            return $"{StepDetails.Name(next.Scene, -1)} takes {name} on again at {At(next)}";
        }

        return $"{name} is back for {At(next)}, from {Words.Clock(next.TargetBearing)}{(scene.Brief.Ally is null ? string.Empty : " of " + StepDetails.Name(next.Scene, -1))}: contact at {Words.AtCount(next.Contact)} ({Words.AtCount(next.SoonestContact ?? next.Contact)} at the soonest)";
    }

    private static string Until(Step? next) => next is null ? string.Empty : $" until {At(next)}";

    private static string At(Step step) => $"move {Words.Number(step.Index + 1)}, {Words.AtCount(step.Start)}";
}
