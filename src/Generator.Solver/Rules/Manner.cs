using Generator.Domain;
using Generator.Rules.Memories;
using Generator.Solver.Filling;
using Google.OrTools.Sat;
using Figures = Generator.Rules.Rules.Manner;

namespace Generator.Solver.Rules;

/// <summary>Charges for what is out of manner (1), for what the brief avoids (3) and, at the end, for what it favours and never comes (2) and for who should throw a combination and throws none (2).</summary>
public sealed class Manner : RuleModule
{
    public override string Id => "manner";

    public override void Post(MoveModel model)
    {
        if (!model.Scene.Judges(FightRule.Manner))
        {
            return;
        }

        var (book, likings) = (model.Scene.Book, model.Scene.Likings);
        foreach (var slot in model.Slots)
        {
            model.Charge(Id, model.UseIs(slot, u => likings.IsOffTechnique(u.Index), $"offtechnique[{slot.Index}]"));
            model.Charge(Id, model.UseIs(slot, u => likings.IsAvoidedTechnique(u.Index), $"avoided[{slot.Index}]") * Figures.Avoided);
            model.Charge(Id, model.AttackIs(slot, k => likings.IsAvoidedAttack(book.AttackIndex(k.Id)), $"avoidedattack[{slot.Index}]") * Figures.Avoided);
            for (var a = 0; a < model.Cast; a++)
            {
                var off = model.AttackIs(slot, k => likings.IsOffAttack(book.AttackIndex(k.Id), a), $"offattack[{slot.Index},{a}]");
                model.Charge(Id, model.Cp.And($"outofmanner[{slot.Index},{a}]", slot.Targets[a], off));
            }
        }

        if (model.Options.Ends)
        {
            Favours(model);
            Combining(model);
        }
    }

    private void Combining(MoveModel model)
    {
        var was = model.Options.Memory?.MemoryOf(Id) as MannerMemory ?? MannerMemory.None;
        for (var a = 0; a < model.Cast; a++)
        {
            if (model.Scene.Combinations.Wants(a) && (was.Combined & (1 << a)) == 0)
            {
                model.Charge(Id, (1 - (LinearExpr)model.Cp.Or($"combines[{a}]", [.. Combinations.Of(model, a, was.Run)])) * Figures.Single);
            }
        }
    }

    private void Favours(MoveModel model)
    {
        var (book, likings) = (model.Scene.Book, model.Scene.Likings);
        var seen = (model.Options.Memory?.MemoryOf(Id) as MannerMemory ?? MannerMemory.None).Seen;
        for (var f = 0; f < likings.Favours; f++)
        {
            if ((seen & (1UL << f)) != 0)
            {
                continue;
            }

            var comes = model.Slots.SelectMany(s => new ILiteral[]
            {
                model.UseIs(s, u => likings.IsFavouredTechnique(f, u.Index), $"favoured[{f},{s.Index}]"),
                model.AttackIs(s, k => likings.IsFavouredAttack(f, book.AttackIndex(k.Id)), $"favouredattack[{f},{s.Index}]"),
            });
            model.Charge(Id, (1 - (LinearExpr)model.Cp.Or($"favourcomes[{f}]", [.. comes])) * Figures.Missing);
        }
    }
}
