using Generator.Domain;
using Generator.Rules.Memories;
using Generator.Solver.Filling;
using Google.OrTools.Sat;

namespace Generator.Solver.Rules;

/// <summary>Charges for a technique twice in a row (3), a third time within eight moves, and four hits in a row alike in height or side (1 each).</summary>
public sealed class Variety : RuleModule
{
    private const int Back = 7;
    private const int Run = 4;

    public override string Id => "variety";

    public override void Post(MoveModel model)
    {
        var cp = model.Cp;
        var bases = model.Scene.Book.Techniques.Select(t => t.BaseId).Distinct(StringComparer.Ordinal).Select((id, n) => (id, n)).ToDictionary(p => p.id, p => p.n + 1, StringComparer.Ordinal);
        var last = model.Options.Memory?.MemoryOf(Id) is VarietyMemory memory ? memory.Last : [];
        var names = last.Select(t => cp.Const(bases[t.BaseId])).ToList();
        var heights = last.Select(t => cp.Const(HeightOf(t))).ToList();
        var sides = last.Select(t => cp.Const(SideOf(t))).ToList();
        foreach (var slot in model.Slots)
        {
            var name = cp.Pick(slot.Uses, u => model.Vocabulary.Uses[u].Technique is { } t ? bases[t.BaseId] : 0, $"base[{slot.Index}]");
            Repeats(model, slot, name, names);
            names.Add(name);
            heights.Add(cp.Pick(slot.Uses, u => HeightOf(model.Vocabulary.Uses[u].Technique), $"height[{slot.Index}]"));
            sides.Add(cp.Pick(slot.Uses, u => SideOf(model.Vocabulary.Uses[u].Technique), $"side[{slot.Index}]"));
            AlikeRun(model, heights, 4, $"heightrun[{slot.Index}]");
            AlikeRun(model, sides, 2, $"siderun[{slot.Index}]");
        }
    }

    private static int HeightOf(Technique? technique) => technique is { IsHit: true } ? (int)technique.Height + 1 : 0;

    private static int SideOf(Technique? technique) => technique is { IsHit: true, Side: { } side } ? (int)side + 1 : 0;

    private void Repeats(MoveModel model, SlotVars slot, IntVar name, List<IntVar> names)
    {
        var cp = model.Cp;
        var same = new List<LinearExpr>();
        for (var back = 1; back <= Back && back <= names.Count; back++)
        {
            var earlier = names[^back];
            var equal = cp.Bool($"again[{slot.Index},{back}]");
            cp.Model.Add(name == earlier).OnlyEnforceIf([equal, slot.Used]);
            cp.Model.Add(name != earlier).OnlyEnforceIf([equal.Not(), slot.Used]);
            cp.Model.AddImplication(equal, slot.Used);
            same.Add(equal);
            if (back == 1)
            {
                model.Charge(Id, LinearExpr.Term(equal, 3));
            }
        }

        if (same.Count >= 2)
        {
            model.Charge(Id, cp.AtMost(LinearExpr.Constant(2), LinearExpr.Sum(same), $"third[{slot.Index}]"));
        }
    }

    /// <summary>One point when the last four have the same value from 1 up.</summary>
    private void AlikeRun(MoveModel model, List<IntVar> values, int most, string name)
    {
        if (values.Count < Run)
        {
            return;
        }

        var run = model.Cp.Int(0, 1, name);
        model.Cp.Table([.. values.TakeLast(Run), run], Rows(most));
        model.Charge(Id, run);
    }

    private static IEnumerable<long[]> Rows(int most)
    {
        var count = most + 1;
        for (var code = 0; code < count * count * count * count; code++)
        {
            long[] row = [code % count, code / count % count, code / count / count % count, code / count / count / count, 0];
            row[4] = row[0] > 0 && row[0] == row[1] && row[1] == row[2] && row[2] == row[3] ? 1 : 0;
            yield return row;
        }
    }
}
