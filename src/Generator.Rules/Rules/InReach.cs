using Generator.Domain;
using Generator.Rules.Replaying;

namespace Generator.Rules.Rules;

/// <summary>The distance at contact lies in the band for these two bodies: nearer than that is unsafe, farther does not work.</summary>
public sealed class InReach : Rule
{
    public override string Id => "in-reach";

    public override string Title => "The distance at contact lies in the technique's band for these two bodies.";

    public override Severity Worst => Severity.Unsafe;

    public override object? Observe(Scene scene, object? memory, Step step, Tally tally)
    {
        if (step.Travels >= 0 && step.Technique is { Travel: { } travel } && (step.Way < travel.Least.Value || step.Way > travel.Most.Value) && tally.Count(Severity.Broken))
        {
            tally.Tell(WrongWay(scene, step, travel));
        }

        if (!step.HasTarget || step.Technique is not { } technique)
        {
            return null;
        }

        if (step.Distance < step.Reach.Least)
        {
            if (tally.Count(Severity.Unsafe))
            {
                tally.Tell(Told(scene, step, Severity.Unsafe, "too near", technique, step.Reach.Least));
            }
        }
        else if (step.Distance > step.Farthest && tally.Count(Severity.Broken))
        {
            tally.Tell(Told(scene, step, Severity.Broken, "too far", technique, step.Farthest));
        }

        return null;
    }

    private Finding WrongWay(Scene scene, Step step, Travel travel)
    {
        var near = step.Way < travel.Least.Value;
        var (from, to) = (scene.Brief.Marks[step.Before.Mark].Name, scene.Brief.Marks[step.Travels].Name);
        var allowed = near ? travel.Least : travel.Most;
        var message = step.Way == 0
            ? $"{scene.Brief.Hero.Name} is on {to} already, so {Words.Low(step.Technique!.Name)} leads nowhere."
            : $"From {from} to {to} it is {Words.Metres(step.Way)}, too {(near ? "near" : "far")} for {Words.Low(step.Technique!.Name)} (at {(near ? "least" : "most")} {allowed}).";
        return At(scene, step, Severity.Broken, message) with
        {
            Who = scene.Brief.Hero.Name,
            Measured = step.Way / 100m,
            Allowed = allowed.Metres,
            Unit = "m",
            Advice = step.Way == 0 ? "Go to another mark, or choose a technique that stays." : "Choose another travel move, or a mark between.",
        };
    }

    private Finding Told(Scene scene, Step step, Severity severity, string how, Technique technique, int allowed)
    {
        var near = severity == Severity.Unsafe;
        return At(scene, step, severity, $"{Words.Name(scene, step.Row.Attacker)} is {Words.Metres(step.Distance)} from the mark, {how} for {Words.Low(technique.Name)} ({(near ? "at least" : "at most")} {Words.Metres(allowed)}).") with
        {
            Measured = step.Distance / 100m,
            Allowed = allowed / 100m,
            Unit = "m",
            Advice = near
                ? "Choose a technique for a shorter distance, or a reaction before it that carries the attacker back."
                : "Choose a technique with a longer reach, or a reaction before it that leaves the attacker nearer.",
        };
    }
}
