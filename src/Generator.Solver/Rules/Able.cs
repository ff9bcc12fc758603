using Generator.Rules;
using Generator.Rules.Replaying;
using Generator.Solver.Filling;
using Google.OrTools.Sat;

namespace Generator.Solver.Rules;

/// <summary>Skill, limits, wardrobe and floor allow what everybody is asked to do.</summary>
public sealed class Able : RuleModule
{
    public override string Id => "able";

    public override void Post(MoveModel model)
    {
        var able = model.Scene.Able;
        if (model.Options.From is null && able.WhyNotStance(model.Scene.Brief.Hero.OpeningStance, model.Scene.Brief.Hero.OpeningStance) is not null)
        {
            model.Cp.Model.AddBoolOr([]);
        }

        foreach (var slot in model.Slots)
        {
            new AbleInRow(model, slot, able, null, []).Post();
            foreach (var (hurting, when) in Hurting(model, slot))
            {
                new AbleInRow(model, slot, hurting, able, when).Post();
            }
        }
    }

    /// <summary>On a hard floor a fall lands on a mat: looked at in answers.</summary>
    public override IEnumerable<IReadOnlyList<ILiteral>> Refute(ModelAnswer answer) => new FloorClashes(answer).BesideTheMats();

    /// <summary>Whatever may be hurt at a row: what may then be asked, and the literals that are true where it is.</summary>
    private static IEnumerable<(Ability Able, ILiteral[] When)> Hurting(MoveModel model, SlotVars slot)
    {
        if (model.Options.LeavesHurtsOut)
        {
            yield break;
        }

        foreach (var hurt in model.Options.From?.Hurts ?? HurtLimb.None)
        {
            yield return (model.Scene.AbleWhileHurt(hurt.Who, hurt.What.Part), [model.Cp.UpTo(slot.Start, hurt.What.Until.Value - 1)]);
        }

        foreach (var earlier in model.Slots.Take(slot.Index))
        {
            foreach (var hurt in model.Hurts[earlier.Index])
            {
                var lasts = model.Cp.UpTo(slot.Start, hurt.What.Until.Value - 1);
                if (hurt.OfHero)
                {
                    yield return (model.Scene.AbleWhileHurt(-1, hurt.What.Part), [hurt.When, lasts]);
                    continue;
                }

                for (var a = 0; a < model.Cast; a++)
                {
                    yield return (model.Scene.AbleWhileHurt(a, hurt.What.Part), [hurt.When, earlier.Targets[a], lasts]);
                }
            }
        }
    }
}
