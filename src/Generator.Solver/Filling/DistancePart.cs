using Generator.Domain;
using Generator.Rules.Replaying;
using Google.OrTools.Sat;

namespace Generator.Solver.Filling;

/// <summary>How far away the target is at contact, and where the move leaves them.</summary>
internal static class DistancePart
{
    /// <summary>More than any distance on the floor.</summary>
    public const int Farthest = 3000;

    /// <summary>Half counts from a distance to striking distance, rounded up.</summary>
    public static IntVar WalkTime(MoveModel model, int attacker, IntVar distance, string name)
    {
        var cp = model.Cp;
        var (low, high) = Engine.Cp.Range(distance);
        var earliest = model.Scene.WalkTime(attacker, (int)low);
        var latest = model.Scene.WalkTime(attacker, (int)high);
        if (earliest == latest)
        {
            return cp.Const(earliest);
        }

        var way = cp.Positive(distance - model.Scene.Settle.StrikingDistance.Value, Farthest, name + ".way");
        var perHalfCount = 30L * model.Scene.Brief.Attackers[attacker].Speed;
        var walk = cp.Int(earliest, latest, name);
        var tempo = model.Scene.Brief.Tempo.CountsPerMinute;

        // walk = way * tempo / perHalfCount, rounded up
        cp.Model.Add(LinearExpr.Affine(walk, perHalfCount, 0) >= LinearExpr.Affine(way, tempo, 0));
        cp.Model.Add(LinearExpr.Affine(walk, perHalfCount, 0) <= LinearExpr.Affine(way, tempo, perHalfCount - 1));
        return walk;
    }

    public static void Build(MoveModel model, SlotVars slot)
    {
        var cp = model.Cp;
        var stands = model.OfTarget(slot, a => a.Distance, 0, $"tdistance[{slot.Index}]");
        slot.Follows = Follows(model, slot);
        slot.Distance = cp.Int(0, Farthest, $"distance[{slot.Index}]");
        cp.Model.Add(slot.Distance == stands).OnlyEnforceIf(slot.NoAttack);
        for (var a = 0; a < model.Cast; a++)
        {
            if (ReferenceEquals(slot.Targets[a], cp.False))
            {
                continue;
            }

            var stops = cp.Int(0, Farthest, $"stops[{slot.Index},{a}]");
            cp.Model.Add(stops == model.OverAttacks(slot, k => model.Scene.StopDistance(k, a)) + model.OverUses(slot, u => u.Technique?.Band.Behind.Value ?? 0));
            var meets = cp.Int(0, Farthest, $"meets[{slot.Index},{a}]");
            cp.Model.Add(meets == model.OverUses(slot, u => u.Technique is { Band.MeetsOnTheWay: true } ? model.Scene.TechniqueReach(u.Index, a).Near : 0));
            var contact = cp.Int(0, Farthest, $"contact[{slot.Index},{a}]");
            cp.Model.AddMaxEquality(contact, [stops, meets]);
            cp.Model.Add(slot.Distance == contact).OnlyEnforceIf([slot.Targets[a], slot.HasAttack]);
        }
    }

    /// <summary>How far the hero may have followed the target after the move.</summary>
    public static IntVar Followed(MoveModel model, SlotVars slot)
    {
        var (cp, most) = (model.Cp, model.Scene.Settle.FollowMost.Value);
        var along = cp.Int(-Farthest, most, $"along[{slot.Index}]");
        var gives = model.OverReactions(slot, r => Effects.GivesWay(model.Scene, model.Scene.Book.Reactions[r]));
        cp.Model.AddMinEquality(along, [slot.Follows + gives, LinearExpr.Constant(most)]);
        return cp.Positive(along, most, $"followed[{slot.Index + 1}]");
    }

    /// <summary>How far the hero has followed the target already; nothing at the first move of an exchange, or without a target.</summary>
    private static IntVar Follows(MoveModel model, SlotVars slot)
    {
        var (cp, before) = (model.Cp, slot.Before.Followed);
        var most = Engine.Cp.Range(before).High;
        if (most == 0)
        {
            return before;
        }

        var follows = cp.Int(0, most, $"follows[{slot.Index}]");
        cp.Model.Add(follows == before).OnlyEnforceIf([slot.NoAttack, slot.Same, slot.NoTarget.Not()]);
        cp.Model.Add(follows == 0).OnlyEnforceIf(slot.Opens);
        cp.Model.Add(follows == 0).OnlyEnforceIf(slot.NoTarget);
        return follows;
    }

    /// <summary>Where the target is left: at the old distance or drawn into the band, then carried back, and clear of the hero if let go.</summary>
    public static IntVar After(MoveModel model, SlotVars slot)
    {
        var cp = model.Cp;
        var drawn = cp.Int(0, Farthest, $"drawn[{slot.Index}]");
        for (var a = 0; a < model.Cast; a++)
        {
            if (ReferenceEquals(slot.Targets[a], cp.False))
            {
                continue;
            }

            var near = cp.Int(0, Farthest, $"near[{slot.Index},{a}]");
            cp.Model.Add(near == model.OverUses(slot, u => u.Technique is { Draws: true } ? model.Scene.TechniqueReach(u.Index, a).Draw(0) : 0));
            var far = cp.Int(0, Farthest, $"far[{slot.Index},{a}]");
            cp.Model.Add(far == model.OverUses(slot, u => u.Technique is { Draws: true } ? model.Scene.TechniqueReach(u.Index, a).Draw(Farthest) : Farthest));
            var least = cp.Int(0, Farthest, $"least[{slot.Index},{a}]");
            cp.Model.AddMaxEquality(least, [slot.Distance, near]);
            var clamped = cp.Int(0, Farthest, $"clamped[{slot.Index},{a}]");
            cp.Model.AddMinEquality(clamped, [least, far]);
            cp.Model.Add(drawn == clamped).OnlyEnforceIf(slot.Targets[a]);
        }

        cp.Model.Add(drawn == 0).OnlyEnforceIf(slot.NoTarget);
        var left = cp.Int(0, Farthest, $"leftat[{slot.Index}]");
        var nearest = cp.Int(0, model.Scene.NearestFor(Posture.Ready), $"nearest[{slot.Index}]");
        cp.Model.Add(nearest == 0).OnlyEnforceIf(slot.NoReaction);
        for (var fate = 0; fate <= 2; fate++)
        {
            var frees = fate == 0 ? model.Scene.NearestFor(Posture.Ready) : 0;
            cp.Model.Add(nearest == frees).OnlyEnforceIf([cp.Is(slot.Fate, fate, $"fate[{slot.Index}]={fate}"), slot.NoReaction.Not()]);
        }

        cp.Model.AddMaxEquality(left, [nearest, drawn + model.OverReactions(slot, r => model.Scene.Book.Reactions[r].Back.Value)]);
        return left;
    }
}
