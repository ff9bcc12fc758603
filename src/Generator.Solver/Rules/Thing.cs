using Generator.Domain;
using Generator.Solver.Filling;
using Google.OrTools.Sat;

namespace Generator.Solver.Rules;

/// <summary>What a technique, an attack or a reaction uses stands where it must: a table of bearings, and of distances where it must be behind the attacker.</summary>
public sealed class Thing : RuleModule
{
    public override string Id => "thing";

    public override void Post(MoveModel model)
    {
        var book = model.Scene.Book;
        var techniques = Served(model, model.Vocabulary.Uses.Select(u => u.Technique?.Uses));
        var reactions = Served(model, model.Vocabulary.Reactions.Select(r => book.Reactions[r].Uses));
        var attacks = Served(model, model.Vocabulary.Attacks.Select(k => book.Attacks[k].Uses));
        if (techniques.Count + reactions.Count + attacks.Count == 0)
        {
            return;
        }

        foreach (var slot in model.Slots)
        {
            foreach (var need in techniques)
            {
                Needs(model, slot, need, model.UseIs(slot, u => u.Technique?.Uses == need, $"usesthing[{slot.Index}]"), slot.TargetAfter.Bearing, slot.TargetAfter.Distance);
            }

            foreach (var need in reactions)
            {
                Needs(model, slot, need, model.ReactionIs(slot, r => r.Uses == need, $"atthing[{slot.Index}]"), slot.TargetAfter.Bearing, slot.TargetAfter.Distance);
            }

            foreach (var need in attacks)
            {
                var bearing = model.OfTarget(slot, a => a.Bearing, 0, $"fromthing[{slot.Index}]");
                var distance = model.OfTarget(slot, a => a.Distance, 0, $"tothing[{slot.Index}]");
                Needs(model, slot, need, model.AttackIs(slot, k => k.Uses == need, $"offthing[{slot.Index}]"), bearing, distance);
            }
        }
    }

    /// <summary>Needs that something on the floor serves; the others nobody is able to use at all.</summary>
    private static List<ThingNeed> Served(MoveModel model, IEnumerable<ThingNeed?> needs) =>
        [.. needs.OfType<ThingNeed>().Distinct().Where(model.Scene.Things.Serves)];

    private static void Needs(MoveModel model, SlotVars slot, ThingNeed need, BoolVar used, IntVar bearing, IntVar distance)
    {
        // Beside the hero it is so with anybody anywhere, and with nobody at all.
        if (model.Cp.IsFalse(used) || need.Where == ThingPlace.BesideHero)
        {
            return;
        }

        var fits = Enumerable.Range(0, Bearing.Circle).Select(b => model.Scene.Things.At(need, 0, b)).ToArray();
        if (need.Where != ThingPlace.BehindAttacker)
        {
            var at = Google.OrTools.Util.Domain.FromValues([.. Enumerable.Range(0, Bearing.Circle).Where(b => fits[b].Thing is not null).Select(b => (long)b)]);
            model.Cp.Model.AddLinearExpressionInDomain(slot.TargetBearing, at).OnlyEnforceIf(used);
            return;
        }

        var least = model.Cp.Int(0, DistancePart.Farthest + 1, $"thingfrom[{slot.Index}]");
        var most = model.Cp.Int(-1, DistancePart.Farthest, $"thingto[{slot.Index}]");
        model.Cp.Model.AddElement(bearing, fits.Select(f => f.Thing is null ? DistancePart.Farthest + 1L : Math.Clamp(f.Least, 0, DistancePart.Farthest + 1)).ToArray(), least);
        model.Cp.Model.AddElement(bearing, fits.Select(f => f.Thing is null ? -1L : Math.Clamp(f.Most, -1, DistancePart.Farthest)).ToArray(), most);
        model.Cp.Model.Add(distance >= least).OnlyEnforceIf(used);
        model.Cp.Model.Add(distance <= most).OnlyEnforceIf(used);
    }
}
