using Generator.Domain;
using Generator.Rules.Replaying;

namespace Generator.Rules.Rules;

/// <summary>Skill, limits, wardrobe and floor allow the technique for the hero, the attack and the reaction for the attacker, and what holds and grips ask meanwhile; the stance in which the hero opens, too. Told once a move and person.</summary>
public sealed class Able : Rule
{
    public override string Id => "able";

    public override string Title => "Skill, limits, wardrobe and floor allow what everybody is asked to do.";

    public override Severity Worst => Severity.Unsafe;

    public override object? Begin(Scene scene, FightState open, Tally tally)
    {
        if (scene.Able.WhyNotStance(open.Stance, open.Stance) is { } reason && tally.Count(Severity.Unsafe))
        {
            tally.Tell(AtEnd(open, Severity.Unsafe, Words.Name(scene, -1), reason + ".") with { Advice = "Open on both feet, or cast somebody else for it." });
        }

        return null;
    }

    public override object? Observe(Scene scene, object? memory, Step step, Tally tally)
    {
        var own = step.Technique is null ? null : scene.Able.WhyNotTechnique(step.Row.Technique) ?? scene.Able.WhyNotStance(step.StanceFrom, step.StanceStart);
        Tell(scene, step, -1, own ?? scene.Able.Meanwhile.WhyNotHero(step), tally);

        if (step.HasTarget)
        {
            Tell(scene, step, step.Row.Attacker, WhyNotTarget(scene, step), tally);
        }

        if (step.Second >= 0)
        {
            Tell(scene, step, step.Second, step.Technique is { TakesTwo: true } ? WhyNotPartner(scene, step, step.Second) : scene.Able.WhyNotReaction(step.Row.Reaction, step.Second), tally);
        }

        foreach (var (attacker, reason) in scene.Able.Meanwhile.WhyNotOthers(step))
        {
            Tell(scene, step, attacker, reason, tally);
        }

        return null;
    }

    private static string? WhyNotTarget(Scene scene, Step step) =>
        (step.Attack is null ? null : scene.Able.WhyNotAttack(step.Row.Attack, step.Row.Attacker)) ?? WhyNotPartner(scene, step, step.Row.Attacker);

    private static string? WhyNotPartner(Scene scene, Step step, int attacker) =>
        (step.Technique is null ? null : scene.Able.WhyNotOn(step.Row.Technique, attacker))
        ?? (step.Technique is null || step.Reaction is null ? null : scene.Able.WhyNotReaction(step.Row.Reaction, attacker));

    private void Tell(Scene scene, Step step, int who, string? reason, Tally tally)
    {
        if (reason is not null && tally.Count(Severity.Unsafe))
        {
            tally.Tell(At(scene, step, Severity.Unsafe, reason + ".") with
            {
                Who = Words.Name(scene, who),
                Advice = "Choose something that this performer may do, or cast somebody else for it.",
            });
        }
    }
}
