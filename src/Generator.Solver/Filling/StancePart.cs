using Generator.Domain;
using Generator.Rules.Replaying;

namespace Generator.Solver.Filling;

/// <summary>Which stance the technique starts and ends in, and how long the change takes.</summary>
internal static class StancePart
{
    private static readonly int Count = Enum.GetValues<Stance>().Length;

    public static void Build(MoveModel model, SlotVars slot)
    {
        var cp = model.Cp;
        var kind = cp.ClassOf(slot.Uses, model.Classes.Stance, $"stanceclass[{slot.Index}]");
        slot.StanceClass = kind;
        var rows = model.Tables.Stance;
        slot.StanceTime = cp.Int(0, rows.Max(r => r[2]), $"stancetime[{slot.Index}]");
        slot.StanceForAttack = cp.Int(0, Count - 1, $"stanceforattack[{slot.Index}]");
        slot.StanceEnd = cp.Int(0, Count - 1, $"stance[{slot.Index + 1}]");
        cp.Table([kind, slot.Before.Stance, slot.StanceTime, slot.StanceForAttack, slot.StanceEnd], rows);
    }

    public static IEnumerable<long[]> Rows(MoveModel model)
    {
        for (var c = 0; c < model.Classes.StanceExamples.Count; c++)
        {
            for (var s = 0; s < Count; s++)
            {
                var (time, forAttack, end) = Change(model, model.Classes.StanceExamples[c], (Stance)s);
                if (time < StanceTable.Never || model.Options.Total)
                {
                    yield return [c, s, time, (int)forAttack, (int)end];
                }
            }
        }
    }

    private static (int Time, Stance ForAttack, Stance End) Change(MoveModel model, Use use, Stance stance)
    {
        if (use.Technique is not { } technique)
        {
            return (0, stance, stance);
        }

        var escapes = use.Kind == UseKind.EscapesGrab;
        var (_, start, time) = StanceChoice.For(model.Scene, stance, technique, escapes ? use.Grip : null);
        return (escapes && time > 0 ? StanceTable.Never : time, escapes ? stance : start, technique.EndStance ?? start);
    }
}
