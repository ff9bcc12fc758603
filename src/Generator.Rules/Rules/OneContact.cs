using Generator.Domain;
using Generator.Rules.Memories;
using Generator.Rules.Replaying;

namespace Generator.Rules.Rules;

/// <summary>The contacts of two attackers on the hero are at least one count apart.</summary>
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
}
