using Generator.Domain;
using Generator.Rules.Bodies;
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
        var hurts = step.Before.Hurts;
        var told = hurts.Count == 0 ? null : new HashSet<int>();
        Judge(scene, scene.Able, step, null, told, tally);
        for (var i = 0; i < hurts.Count; i++)
        {
            if (hurts[i].IsSparedAt(step.Start))
            {
                Judge(scene, scene.AbleWhileHurt(hurts[i].Who, hurts[i].What.Part), step, hurts[i], told, tally);
            }
        }

        if (scene.Mats.Matter && step is { HasTarget: true, Technique: not null, Reaction.Surface: SurfaceNeed.Mat })
        {
            OnAMat(scene, step, step.Row.Attacker, tally);
            if (step.Second >= 0)
            {
                OnAMat(scene, step, step.Second, tally);
            }
        }

        return null;
    }

    /// <summary>Whoever falls lies on a mat; who does not end lying is on it all the way.</summary>
    private void OnAMat(Scene scene, Step step, int attacker, Tally tally)
    {
        var way = step.After.Attackers[attacker].Way;
        var body = way.LastingBody(step.Index);
        IEnumerable<Leg> falls = body is not null ? [body] : step.LegsOf(attacker).Where(l => l.Kind.IsSent()).DefaultIfEmpty(Leg.Always(way.End));
        var room = falls.Min(l => scene.Mats.Room(l.Start, l.End));
        if (room >= scene.Settle.BodyRadius.Value || !tally.Count(Severity.Unsafe))
        {
            return;
        }

        var where = room < 0 ? $"{Words.Metres(-room)} beyond the nearest mat" : $"{Words.Metres(room)} from the edge of the mat";
        tally.Tell(At(scene, step, Severity.Unsafe, $"{Words.Cap(step.Reaction!.Name)} brings {Words.Name(scene, attacker)} down on the hard floor: {(body is null ? "the way" : "the body")} reaches {where}.") with
        {
            Who = Words.Name(scene, attacker),
            Measured = room / 100m,
            Allowed = scene.Settle.BodyRadius.Value / 100m,
            Unit = "m",
            Advice = "Choose a reaction that stays on the feet, let it happen elsewhere, or lay a mat there.",
        });
    }

    /// <summary>What everybody is asked at one move, by the limits of the brief alone or with one part that is hurt besides.</summary>
    private void Judge(Scene scene, Ability able, Step step, HurtLimb? hurt, HashSet<int>? told, Tally tally)
    {
        var own = step.Technique is null ? null : able.WhyNotTechnique(step.Row.Technique) ?? able.WhyNotStance(step.StanceFrom, step.StanceStart);
        Tell(-1, own ?? able.Meanwhile.WhyNotHero(step));

        if (step.HasTarget)
        {
            Tell(step.Row.Attacker, WhyNotTarget(able, step));
        }

        if (step.Second >= 0)
        {
            Tell(step.Second, step.Technique is { TakesTwo: true } ? WhyNotPartner(able, step, step.Second) : able.WhyNotReaction(step.Row.Reaction, step.Second));
        }

        foreach (var (attacker, reason) in able.Meanwhile.WhyNotOthers(step))
        {
            Tell(attacker, reason);
        }

        void Tell(int who, string? reason)
        {
            if (reason is not null && told?.Add(who) != false && tally.Count(Severity.Unsafe))
            {
                tally.Tell(At(scene, step, Severity.Unsafe, $"{reason}{(hurt is null ? string.Empty : $" until count {hurt.What.Until.ToCountText()}")}.") with
                {
                    Who = Words.Name(scene, who),
                    Advice = hurt is null
                        ? "Choose something that this performer may do, or cast somebody else for it."
                        : $"Choose something that spares the {hurt.What.PartInWords}, or let the hurt of move {hurt.Move + 1} be over by then.",
                });
            }
        }
    }

    private static string? WhyNotTarget(Ability able, Step step) =>
        (step.Attack is null ? null : able.WhyNotAttack(step.Row.Attack, step.Row.Attacker)) ?? WhyNotPartner(able, step, step.Row.Attacker);

    private static string? WhyNotPartner(Ability able, Step step, int attacker) =>
        (step.Technique is null ? null : able.WhyNotOn(step.Row.Technique, attacker))
        ?? (step.Technique is null || step.Reaction is null ? null : able.WhyNotReaction(step.Row.Reaction, attacker));
}
