using Generator.Domain;
using Generator.Rules;
using Generator.Rules.Memories;
using Generator.Solver.Filling;
using Google.OrTools.Sat;

namespace Generator.Solver.Rules;

/// <summary>
/// Charges for a first out after 45 of a hundred of the length asked for (1 for each tenth begun), for blows beyond eight, or twelve for who is to be last (1 each), for attacks of who has taken four that come too soon after the last or with nothing since that beat them (1 each), and at the end for moves that somebody lacks of four (1 each).
/// </summary>
public sealed class Thinning : RuleModule
{
    private const int FirstOut = 45;
    private const int FewestMoves = 4;
    private const int MovesForEach = 6;
    private const int Blows = 8;
    private const int BlowsOfLast = 12;
    private const int WornFrom = 4;
    private const int Rest = 4;

    public override string Id => "thinning";

    public override void Post(MoveModel model)
    {
        if (!model.Scene.Judges(FightRule.Thinning))
        {
            return;
        }

        var was = model.Options.Memory?.MemoryOf(Id) as ThinningMemory ?? ThinningMemory.Fresh(model.Cast);
        var length = model.Scene.Brief.Length;
        if (model.Cast > 1)
        {
            TooMany(model, was);
            if (!was.IsAnybodyOut && length is not null)
            {
                First(model, length);
            }
        }

        if (model.Options.Ends && length is { } asked && (asked.Moves ?? asked.Counts / 2 ?? 0) >= MovesForEach * model.Cast)
        {
            Parts(model, was);
        }
    }

    private void First(MoveModel model, Domain.Length length)
    {
        var cp = model.Cp;
        var before = cp.False;
        foreach (var slot in model.Slots)
        {
            var outs = Enumerable.Range(0, model.Cast).Select(a => cp.Or($"thinout[{slot.Index},{a}]", cp.And($"thintarget[{slot.Index},{a}]", slot.Targets[a], slot.TargetAfter.Out), slot.SecondsOut[a]));
            var goes = cp.Or($"thinouts[{slot.Index}]", [.. outs]);
            var first = cp.And($"firstout[{slot.Index}]", goes, before.Not());
            for (var percent = FirstOut; percent < 200; percent += 10)
            {
                var late = length.Counts is { } counts
                    ? cp.AtMost(LinearExpr.Constant((percent * 2 * counts) + 1), (LinearExpr)slot.End * 100, $"late[{slot.Index},{percent}]")
                    : 100 * ((model.Options.From?.Moves ?? 0) + slot.Index) > percent * length.Moves!.Value ? cp.True : cp.False;
                model.Charge(Id, cp.And($"lateout[{slot.Index},{percent}]", first, late));
            }

            before = cp.Or($"anybodyout[{slot.Index}]", before, goes);
        }
    }

    private void TooMany(MoveModel model, ThinningMemory was)
    {
        var cp = model.Cp;
        for (var a = 0; a < model.Cast; a++)
        {
            var most = string.Equals(model.Scene.Brief.Ending?.Last, model.Scene.Brief.Attackers[a].Name, StringComparison.Ordinal) ? BlowsOfLast : Blows;
            var so = new List<LinearExpr> { LinearExpr.Constant(was.Parts[a].Blows) };
            if (was.Parts[a].Blows + model.Slots.Count <= Math.Min(most, WornFrom))
            {
                continue;
            }

            var wear = new WearVars(cp.Const(was.Parts[a].HitAt), was.Parts[a].HitAt >= 0 ? cp.True : cp.False, was.Parts[a].IsBeaten ? cp.True : cp.False);
            foreach (var slot in model.Slots)
            {
                var on = slot.HasSeconds(cp) ? cp.Or($"blowon[{slot.Index},{a}]", slot.Targets[a], cp.And($"blowtoo[{slot.Index},{a}]", slot.Seconds[a], slot.TakesTwo)) : slot.Targets[a];
                var hits = model.UseIs(slot, u => u is { HasTarget: true, Technique.IsHit: true }, $"thinhit[{slot.Index}]");
                var blow = model.Unanswered(slot, cp.And($"thinblow[{slot.Index},{a}]", hits, on), $"thinblowhit[{slot.Index},{a}]");
                wear = Again(model, slot, a, (on, blow), wear, LinearExpr.Sum(so));
                so.Add(blow);
                if (was.Parts[a].Blows + slot.Index + 1 > most)
                {
                    model.Charge(Id, cp.And($"thinover[{slot.Index},{a}]", blow, cp.AtMost(LinearExpr.Constant(most + 1), LinearExpr.Sum(so), $"thinmany[{slot.Index},{a}]")));
                }
            }
        }
    }

    /// <summary>An attack of somebody worn comes too soon after the last blow, or though nothing has beaten them since; then what is true after the move.</summary>
    private WearVars Again(MoveModel model, SlotVars slot, int attacker, (BoolVar Takes, BoolVar Blow) move, WearVars was, LinearExpr blows)
    {
        var (cp, name) = (model.Cp, $"[{slot.Index},{attacker}]");
        var attacks = cp.And("wornattacks" + name, slot.Targets[attacker], slot.HasAttack);
        var worn = cp.And("wornagain" + name, attacks, was.IsHit, cp.AtMost(LinearExpr.Constant(WornFrom), blows, "worn" + name));
        var contact = (LinearExpr)slot.Start + model.Scene.Settle.ContactAfter.Value;
        model.Charge(Id, cp.And("wornsoon" + name, worn, cp.AtMost(contact + 1, was.HitAt + Rest + blows, "wornrest" + name)));
        model.Charge(Id, cp.And("wornlight" + name, worn, was.IsBeaten.Not()));

        var hitAt = cp.Int(-1, model.Far, "hitat" + name);
        cp.Model.Add(hitAt == slot.End).OnlyEnforceIf(move.Blow);
        cp.Model.Add(hitAt == was.HitAt).OnlyEnforceIf(move.Blow.Not());
        var goesOn = cp.And("wornon" + name, attacks.Not(), was.IsBeaten);
        var beats = cp.And("wornbeats" + name, move.Takes, model.ReactionIs(slot, r => r.Beats, $"thinbeats[{slot.Index}]"));
        return new WearVars(hitAt, cp.Or("ishit" + name, move.Blow, cp.And("washit" + name, attacks.Not(), was.IsHit)), cp.Or("isbeaten" + name, beats, goesOn));
    }

    /// <summary>What an attacker has taken since their last attack.</summary>
    /// <param name="HitAt">End of the last blow.</param>
    /// <param name="IsHit">There was one.</param>
    /// <param name="IsBeaten">Something beat them.</param>
    private readonly record struct WearVars(IntVar HitAt, BoolVar IsHit, BoolVar IsBeaten);

    private void Parts(MoveModel model, ThinningMemory was)
    {
        for (var a = 0; a < model.Cast; a++)
        {
            var moves = model.Slots.SelectMany(s => new LinearExpr[] { s.Targets[a], s.Seconds[a] }).Append(LinearExpr.Constant(was.Parts[a].Moves));
            model.Charge(Id, model.Cp.Positive(FewestMoves - LinearExpr.Sum(moves), FewestMoves, $"partlacks[{a}]"));
        }
    }
}
