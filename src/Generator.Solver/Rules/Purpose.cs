using Generator.Domain;
using Generator.Rules.Memories;
using Generator.Solver.Filling;
using Google.OrTools.Sat;

namespace Generator.Solver.Rules;

/// <summary>
/// Charges for holds let go that led to nothing (2 each), exchanges that open with a hit on somebody ready, and attacks from out of sight beyond two in five of those so far (1 each).
/// </summary>
public sealed class Purpose : RuleModule
{
    private const int IdleHold = 2;

    public override string Id => "purpose";

    public override void Post(MoveModel model)
    {
        if (!model.Scene.Judges(FightRule.Purpose))
        {
            return;
        }

        var was = model.Options.Memory?.MemoryOf(Id) as PurposeMemory ?? PurposeMemory.None;
        Unseen(model, was);
        PunchBags(model);
        for (var a = 0; a < model.Cast; a++)
        {
            Holds(model, a, (was.Used & (1 << a)) != 0);
        }
    }

    private void Unseen(MoveModel model, PurposeMemory was)
    {
        var cp = model.Cp;
        var behind = Google.OrTools.Util.Domain.FromValues([.. Enumerable.Range(0, Bearing.Circle).Where(b => default(Bearing).Apart(new Bearing(b)) > model.Scene.Settle.SightHalfAngle).Select(b => (long)b)]);
        var (attacks, unseen) = (new List<LinearExpr> { LinearExpr.Constant(was.Attacks) }, new List<LinearExpr> { LinearExpr.Constant(was.Unseen) });
        foreach (var slot in model.Slots)
        {
            var isBehind = cp.Bool($"behind[{slot.Index}]");
            cp.Model.AddLinearExpressionInDomain(slot.SeenFrom, behind).OnlyEnforceIf(isBehind);
            cp.Model.AddLinearExpressionInDomain(slot.SeenFrom, behind.Complement()).OnlyEnforceIf(isBehind.Not());
            var comes = cp.And($"unseen[{slot.Index}]", slot.HasAttack, isBehind);
            attacks.Add(slot.HasAttack);
            unseen.Add(comes);
            var tooMany = cp.AtMost((LinearExpr.Sum(attacks) * 2) + 1, LinearExpr.Sum(unseen) * 5, $"toomanyunseen[{slot.Index}]");
            model.Charge(Id, cp.And($"beyond[{slot.Index}]", comes, tooMany));
        }
    }

    private void PunchBags(MoveModel model)
    {
        foreach (var slot in model.Slots)
        {
            var hits = model.UseIs(slot, u => u is { HasTarget: true, Kind: UseKind.FollowUp or UseKind.OpensOnWalkIn, Technique.IsHit: true }, $"unprovoked[{slot.Index}]");
            var opens = model.Cp.And($"punchbag[{slot.Index}]", slot.Opens, hits, slot.EffectiveIs[(int)Posture.Ready]);
            model.Charge(Id, model.Unanswered(slot, opens, $"punchbaghit[{slot.Index}]"));
        }
    }

    private void Holds(MoveModel model, int a, bool usedBefore)
    {
        var cp = model.Cp;
        var used = usedBefore ? cp.True : cp.False;
        foreach (var slot in model.Slots)
        {
            var (before, after) = (slot.Before.Attackers[a].Controlled, slot.After.Attackers[a].Controlled);
            if (cp.IsFalse(before))
            {
                used = cp.False;
                continue;
            }

            var leads = cp.Or(
                $"leadson[{slot.Index},{a}]",
                model.UseIs(slot, u => u.Technique is { } t && (t.IsHit || t.Family is Family.Throw or Family.Finish), $"leadsby[{slot.Index}]"),
                model.ReactionIs(slot, r => r.Fall != FallClass.None || r.HitsSecond, $"leadsto[{slot.Index}]"));
            var others = cp.And($"fightsothers[{slot.Index},{a}]", slot.NoTarget.Not(), slot.Targets[a].Not());
            var uses = cp.Or($"usesnow[{slot.Index},{a}]", others, cp.And($"usesthem[{slot.Index},{a}]", slot.Targets[a], leads), used);
            used = cp.And($"usedhold[{slot.Index},{a}]", before, uses);
            model.Charge(Id, cp.And($"idlehold[{slot.Index},{a}]", before, after.Not(), used.Not()) * IdleHold);
        }
    }
}
