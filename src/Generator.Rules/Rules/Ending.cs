using Generator.Domain;
using Generator.Rules.Memories;
using Generator.Rules.Replaying;

namespace Generator.Rules.Rules;

/// <summary>The attackers who must be out are out, by a finish; the one who must go out last does.</summary>
public sealed class Ending : Rule
{
    public override string Id => "ending";

    public override string Title => "The attackers who must be out are out, by a finish; the last is as the brief asks.";

    public override Severity Worst => Severity.Broken;

    public override Whose Looks => Whose.Both;

    public override object? Begin(Scene scene, FightState open, Tally tally) => EndingMemory.Nobody;

    public override object? Observe(Scene scene, object? memory, Step step, Tally tally)
    {
        var was = (EndingMemory)memory!;
        if (step.Technique is not { Family: Family.Finish } || !step.HasTarget)
        {
            return was;
        }

        var finished = was.Finished | PutOut(step, step.Row.Attacker) | (step.Second >= 0 ? PutOut(step, step.Second) : 0);
        return finished == was.Finished ? was : new EndingMemory(finished);
    }

    public override void Close(Scene scene, object? memory, FightState end, Tally tally)
    {
        if (scene.Brief.Ending is not { } ending)
        {
            return;
        }

        var was = (EndingMemory)memory!;
        foreach (var name in ending.Out)
        {
            var a = IndexOf(scene, name);
            if (a < 0 || end.Attackers[a].Posture != Posture.Out)
            {
                Tell(end, name, $"{name} must be out at the end, and is not.", $"End with a finish of {name}.", tally);
            }
            else if (!was.Contains(a))
            {
                Tell(end, name, $"{name} is out, but not by a finish.", $"Let a finish put {name} out.", tally);
            }
        }

        if (ending.Last is { } last)
        {
            JudgeLast(scene, end, last, ending.Out.Contains(last), tally);
        }
    }

    private static int PutOut(Step step, int attacker) =>
        step.After.Attackers[attacker].Posture == Posture.Out && step.Before.Attackers[attacker].Posture != Posture.Out ? 1 << attacker : 0;

    private static int IndexOf(Scene scene, string name)
    {
        for (var a = 0; a < scene.Cast; a++)
        {
            if (string.Equals(scene.Brief.Attackers[a].Name, name, StringComparison.Ordinal))
            {
                return a;
            }
        }

        return -1;
    }

    private void JudgeLast(Scene scene, FightState end, string last, bool toldAlready, Tally tally)
    {
        var a = IndexOf(scene, last);
        if (a < 0 || end.Attackers[a].OutAt < 0)
        {
            if (!toldAlready)
            {
                Tell(end, last, $"{last} must go out last, and is not out.", $"End with a finish of {last}.", tally);
            }

            return;
        }

        for (var other = 0; other < scene.Cast; other++)
        {
            if (other != a && end.Attackers[other].OutAt >= end.Attackers[a].OutAt)
            {
                var name = Words.Name(scene, other);
                Tell(end, $"{last}, {name}", $"{last} must go out last, but {name} goes out no sooner.", $"Put {name} out before {last}.", tally);
                return;
            }
        }
    }

    private void Tell(FightState end, string who, string message, string advice, Tally tally)
    {
        if (tally.Count(Severity.Broken))
        {
            tally.Tell(AtEnd(end, Severity.Broken, who, message) with { Advice = advice });
        }
    }
}
