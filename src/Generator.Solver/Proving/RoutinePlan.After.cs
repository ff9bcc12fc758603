using Generator.Domain;
using Generator.Solver.Engine;
using Google.OrTools.Sat;

namespace Generator.Solver.Proving;

/// <summary>What a move makes of the attackers: postures, returns and openings after it.</summary>
internal sealed partial class RoutinePlan
{
    private void Follow(PlanSlot slot, PlanSlot next)
    {
        var (classes, model) = (Seen, Cp.Model);
        var seconds = slot.Second.OfType<BoolVar>().ToList();
        var needing = Enumerable.Range(0, classes.Count).Where(c => classes[c].Traits.Second != SecondRole.None).Select(c => slot.Is[c]).ToList();
        if (needing.Count > 0)
        {
            model.Add(Cp.Sum(seconds) == Cp.Sum(needing));
        }

        foreach (var a in Followed)
        {
            var on = Enumerable.Range(0, classes.Count).Where(c => classes[c].Traits.Attacker == a).ToList();
            var changing = on.Where(c => classes[c].Traits.To is not null).ToList();
            var changes = new List<BoolVar>(changing.Select(c => slot.Is[c]));
            if (slot.Second[a] is { } second)
            {
                changes.Add(second);
            }

            var changed = Cp.Bool($"changed[{slot.Index},{a}]");
            model.Add(Cp.Sum(changes) == changed);
            for (var p = 0; p < Postures; p++)
            {
                model.AddBoolOr([changed, slot.Posture[a][p].Not(), next.Posture[a][p]]);
                model.AddBoolOr([changed, slot.Posture[a][p], next.Posture[a][p].Not()]);
            }

            foreach (var group in changing.GroupBy(c => classes[c].Traits.To!.Value))
            {
                model.AddImplication(Sum([.. group.Select(c => slot.Is[c])], $"leaves[{slot.Index},{a},{group.Key}]"), next.Posture[a][(int)group.Key]);
            }

            model.Add(next.Threat[a] >= slot.Threat[a]).OnlyEnforceIf(changed.Not());
            model.Add(next.Ready[a] >= slot.Ready[a]).OnlyEnforceIf(changed.Not());
            model.Add(next.Open[a] <= slot.Open[a]).OnlyEnforceIf(changed.Not());
            Returns(slot, next, a, changing);
            if (slot.Second[a] is { } taken)
            {
                SecondAfter(slot, next, a, taken);
            }
        }
    }

    private void Returns(PlanSlot slot, PlanSlot next, int a, List<int> changing)
    {
        var (classes, model) = (Seen, Cp.Model);
        if (changing.Count == 0)
        {
            return;
        }

        var target = Sum([.. changing.Select(c => slot.Is[c])], $"target[{slot.Index},{a}]");
        var isOn = changing.Select(c => slot.Is[c]).ToList();
        model.Add(next.Threat[a] >= slot.End + Cp.Sum(isOn, changing.Select(c => (long)classes[c].Back))).OnlyEnforceIf(target);
        model.Add(next.Ready[a] >= slot.End + Cp.Sum(isOn, changing.Select(c => (long)classes[c].Recover))).OnlyEnforceIf(target);
        model.Add(next.Open[a] <= slot.End + Cp.Sum(isOn, changing.Select(c => (long)Math.Min(classes[c].Open, farAhead)))).OnlyEnforceIf(target);
    }

    private void SecondAfter(PlanSlot slot, PlanSlot next, int a, BoolVar taken)
    {
        var (classes, model) = (Seen, Cp.Model);
        foreach (var c in Enumerable.Range(0, classes.Count).Where(c => (classes[c].Traits.AbleSeconds & (1 << a)) != 0))
        {
            var traits = classes[c].Traits;
            var leaves = traits.SecondLeaves;
            model.AddBoolOr([taken.Not(), slot.Is[c].Not(), next.Posture[a][(int)leaves]]);
            model.Add(next.Threat[a] >= slot.End + classes[c].SecondBack).OnlyEnforceIf([taken, slot.Is[c]]);
            model.Add(next.Ready[a] >= slot.End + classes[c].SecondBack).OnlyEnforceIf([taken, slot.Is[c]]);
            model.Add(next.Open[a] <= slot.End + Math.Min(classes[c].Open, farAhead)).OnlyEnforceIf([taken, slot.Is[c]]);
        }
    }
}
