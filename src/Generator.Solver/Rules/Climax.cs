using Generator.Domain;
using Generator.Rules.Memories;
using Generator.Solver.Filling;
using Google.OrTools.Sat;

namespace Generator.Solver.Rules;

/// <summary>Where the brief has acts, charges for a second attacker who runs off (1 each) and, at the end, for a last finish that is not the heaviest move and for a last fight of fewer than three moves.</summary>
public sealed class Climax : RuleModule
{
    private const int Fewest = 3;
    private const int MayRunOff = 1;

    public override string Id => "climax";

    public override void Post(MoveModel model)
    {
        if (!model.Scene.Judges(FightRule.Climax))
        {
            return;
        }

        var was = model.Options.Memory?.MemoryOf(Id) as ClimaxMemory ?? ClimaxMemory.None;
        RunOffs(model, was);
        if (model.Options.Ends)
        {
            Ends(model, was);
        }
    }

    private static ILiteral[] Outs(MoveModel model, SlotVars slot) =>
        [.. Enumerable.Range(0, model.Cast).Select(a => model.Cp.Or($"climaxout[{slot.Index},{a}]", model.Cp.And($"climaxtarget[{slot.Index},{a}]", slot.Targets[a], slot.TargetAfter.Out), slot.SecondsOut[a]))];

    private void RunOffs(MoveModel model, ClimaxMemory was)
    {
        var gone = LinearExpr.Sum(model.End.Attackers.Select(a => (LinearExpr)a.Gone));
        model.Charge(Id, model.Cp.Positive(gone - Math.Max(MayRunOff, was.RunsOff), model.Cast, "runoffs"));
    }

    private void Ends(MoveModel model, ClimaxMemory was)
    {
        var cp = model.Cp;
        var weights = model.Slots.Select(s => cp.Pick(s.Uses, u => model.Vocabulary.Uses[u].Technique?.Weight ?? 0, $"climaxweight[{s.Index}]")).ToList();
        var heaviest = cp.Int(0, 5, "heaviest");
        cp.Model.AddMaxEquality(heaviest, [LinearExpr.Constant(was.Heaviest), .. weights]);
        var (runOn, run) = (cp.Const(was.RunOn < 0 ? model.Cast : was.RunOn), cp.Const(Math.Min(Fewest, was.Run)));
        var (weight, fight) = (cp.Const(was.LastWeight), cp.Const(Math.Min(Fewest, was.LastFight)));
        foreach (var slot in model.Slots)
        {
            var goes = Outs(model, slot);
            (weight, fight) = AfterOut(model, slot, goes, (runOn, run), (weights[slot.Index], weight), fight);
            (runOn, run) = Run(model, slot, runOn, run);
        }

        var nobody = cp.Is(weight, 0, "climaxnobody");
        var (shortBy, lacking) = (cp.Int(0, 5, "climaxshort"), cp.Int(0, Fewest, "climaxlacking"));
        cp.Model.Add(shortBy == (LinearExpr)heaviest - weight).OnlyEnforceIf(nobody.Not());
        cp.Model.Add(lacking == Fewest - (LinearExpr)fight).OnlyEnforceIf(nobody.Not());
        cp.Model.Add(shortBy == 0).OnlyEnforceIf(nobody);
        cp.Model.Add(lacking == 0).OnlyEnforceIf(nobody);
        model.Charge(Id, shortBy);
        model.Charge(Id, lacking);
    }

    /// <summary>Weight and fight of whoever went out last; of two who go out in one move, the one later in the brief.</summary>
    private static (IntVar Weight, IntVar Fight) AfterOut(MoveModel model, SlotVars slot, ILiteral[] goes, (IntVar On, IntVar Moves) run, (IntVar Now, IntVar Before) weight, IntVar fightBefore)
    {
        var (cp, i) = (model.Cp, slot.Index);
        var (after, fight) = (cp.Int(0, 5, $"lastweight[{i}]"), cp.Int(0, Fewest, $"lastfight[{i}]"));
        ILiteral[] none = [.. goes.Select(g => g.Not())];
        cp.Model.Add(after == weight.Before).OnlyEnforceIf(none);
        cp.Model.Add(fight == fightBefore).OnlyEnforceIf(none);
        for (var a = 0; a < model.Cast; a++)
        {
            ILiteral[] last = [goes[a], .. none[(a + 1)..]];
            var same = cp.Is(run.On, a, $"climaxsame[{i},{a}]");
            var longer = cp.Int(1, Fewest, $"climaxlonger[{i},{a}]");
            cp.Model.AddMinEquality(longer, [LinearExpr.Constant(Fewest), (LinearExpr)run.Moves + 1]);
            cp.Model.Add(after == weight.Now).OnlyEnforceIf(last);
            cp.Model.Add(fight == longer).OnlyEnforceIf([.. last, same]);
            cp.Model.Add(fight == 1).OnlyEnforceIf([.. last, same.Not()]);
        }

        return (after, fight);
    }

    /// <summary>Whom the last moves with a target were on, and how many they are, up to three.</summary>
    private static (IntVar On, IntVar Moves) Run(MoveModel model, SlotVars slot, IntVar onBefore, IntVar before)
    {
        var (cp, i) = (model.Cp, slot.Index);
        var (on, moves) = (cp.Int(0, model.Cast, $"runon[{i}]"), cp.Int(0, Fewest, $"run[{i}]"));
        cp.Model.Add(on == onBefore).OnlyEnforceIf(slot.NoTarget);
        cp.Model.Add(moves == before).OnlyEnforceIf(slot.NoTarget);
        ILiteral[] one = [.. slot.Seconds.Select(s => s.Not())];
        foreach (var second in slot.Seconds)
        {
            cp.Model.Add(on == model.Cast).OnlyEnforceIf(second);
            cp.Model.Add(moves == 0).OnlyEnforceIf(second);
        }

        for (var a = 0; a < model.Cast; a++)
        {
            ILiteral[] here = [slot.Targets[a], .. one];
            var same = cp.Is(onBefore, a, $"runsame[{i},{a}]");
            var longer = cp.Int(1, Fewest, $"runlonger[{i},{a}]");
            cp.Model.AddMinEquality(longer, [LinearExpr.Constant(Fewest), (LinearExpr)before + 1]);
            cp.Model.Add(on == a).OnlyEnforceIf(here);
            cp.Model.Add(moves == longer).OnlyEnforceIf([.. here, same]);
            cp.Model.Add(moves == 1).OnlyEnforceIf([.. here, same.Not()]);
        }

        return (on, moves);
    }
}
