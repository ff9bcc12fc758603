using Generator.Domain;
using Generator.Rules.Memories;
using Generator.Rules.Replaying;

namespace Generator.Rules.Rules;

/// <summary>The contacts of two attackers on the hero are at least one count apart; where there is an ally, nobody is in a move of the one and of the other at once.</summary>
public sealed class OneContact : Rule
{
    public override string Id => "one-contact";

    public override string Title => "Two attackers' contacts on the hero never overlap.";

    public override Severity Worst => Severity.Unsafe;

    public override object? Begin(Scene scene, FightState open, Tally tally) =>
        new ContactsMemory([.. Enumerable.Repeat(AnswersMemory.Never, scene.Cast)]);

    public override object? Observe(Scene scene, object? memory, Step step, Tally tally)
    {
        var was = (ContactsMemory)memory!;
        for (var a = 0; a < scene.Cast && step.Before.Other is not null; a++)
        {
            if (step.Concerns(a) && IsInAnother(step, step.Before.Attackers[a]) && tally.Count(Severity.Unsafe))
            {
                tally.Tell(Twice(scene, step, a));
            }
        }

        if (step.Attack is null || !step.HasTarget)
        {
            return was;
        }

        var own = step.Row.Attacker;
        for (var a = 0; a < was.Last.Count; a++)
        {
            var apart = Math.Abs(step.Contact - was.Last[a]);
            if (a != own && apart < HalfCounts.PerCount && tally.Count(Severity.Unsafe))
            {
                var (who, other) = (Words.Name(scene, own), Words.Name(scene, a));
                tally.Tell(At(scene, step, Severity.Unsafe, $"The attacks of {other} and {who} reach {scene.Brief.Hero.Name} {(apart == 0 ? "at the same moment" : "half a count apart")}.") with
                {
                    Who = $"{other}, {who}",
                    Measured = apart / 2m,
                    Allowed = 1,
                    Unit = "counts",
                    Advice = "Let one of them come at least a count later.",
                });
            }
        }

        var last = was.Last.ToArray();
        last[own] = step.Contact;
        return new ContactsMemory(last);
    }

    /// <summary>A move of the other of hero and ally on this attacker is not over when the step begins.</summary>
    private static bool IsInAnother(Step step, AttackerState attacker) =>
        attacker is { HasNotActed: false } && attacker.BusyWithAlly != step.IsByAlly && step.Start < attacker.BusyUntil;

    private Finding Twice(Scene scene, Step step, int attacker)
    {
        var (who, until) = (Words.Name(scene, attacker), step.Before.Attackers[attacker].BusyUntil);
        return At(scene, step, Severity.Unsafe, $"{who} is in a move of {Words.Name(scene, Words.Other)}'s until count {new HalfCounts(until).ToCountText()}, and in one of {scene.Brief.Hero.Name}'s from count {new HalfCounts(step.Start).ToCountText()}.") with
        {
            Who = who,
            Measured = (until - step.Start) / 2m,
            Allowed = 0,
            Unit = "counts",
            Advice = $"Let this move start {Words.Counts(until - step.Start)} later, or take on somebody else.",
        };
    }
}
