using Generator.Domain;

namespace Generator.Solver.Filling;

/// <summary>What the target is like when the move starts, and the posture in which it leaves them.</summary>
internal static class TargetPart
{
    /// <summary>Effective posture while recovering, or without a target.</summary>
    public static readonly int Closed = Enum.GetValues<Posture>().Length;

    public static void Build(MoveModel model, SlotVars slot)
    {
        var cp = model.Cp;
        var raw = model.OfTarget(slot, a => a.Posture, Closed, $"raw[{slot.Index}]");
        var open = model.OfTarget(slot, a => a.OpenUntil, -1, $"topen[{slot.Index}]");
        var ready = model.OfTarget(slot, a => a.ReadyAt, 0, $"tready[{slot.Index}]");
        var isOpen = cp.AtMost(slot.Start, open, $"isopen[{slot.Index}]");
        var isReady = cp.AtMost(ready, slot.Start, $"isready[{slot.Index}]");
        slot.Effective = cp.Int(0, Closed, $"effective[{slot.Index}]");
        cp.Table([raw, isOpen, isReady, slot.Effective], EffectiveRows());
        slot.EffectiveIs = [.. Enumerable.Range(0, Closed + 1).Select(p => cp.Is(slot.Effective, p, $"is[{slot.Index},{p}]"))];
        slot.PostureEnd = cp.Int(0, Closed, $"postureend[{slot.Index}]");
        slot.Fate = cp.Int(0, 2, $"fate[{slot.Index}]");
        var left = cp.ClassOf([.. slot.Reactions, slot.NoReaction], [.. model.Vocabulary.Reactions.Select(r => (int?)model.Scene.Book.Reactions[r].Posture ?? Closed), Closed + 1], $"leaves[{slot.Index}]");
        cp.Table([left, slot.Effective, slot.PostureEnd, slot.Fate], LeavesRows());
        HandPart.Build(model, slot);
    }

    private static IEnumerable<long[]> EffectiveRows()
    {
        for (var open = 0; open <= 1; open++)
        {
            for (var ready = 0; ready <= 1; ready++)
            {
                foreach (var posture in Enum.GetValues<Posture>())
                {
                    var active = !posture.IsControlled() && posture is not (Posture.Gripping or Posture.Out);
                    var effective = !active || open == 1 ? (int)posture : ready == 0 ? Closed : (int)(posture == Posture.Knelt ? Posture.Knelt : Posture.Ready);
                    yield return [(int)posture, open, ready, effective];
                }

                yield return [Closed, open, ready, Closed];
            }
        }
    }

    private static IEnumerable<long[]> LeavesRows()
    {
        for (var effective = 0; effective <= Closed; effective++)
        {
            foreach (var posture in Enum.GetValues<Posture>())
            {
                yield return [(int)posture, effective, (int)posture, Fate(posture)];
            }

            // As before: the hold stays. What was recovering counts as ready, which no rule accepts anyway.
            var kept = effective == Closed ? Posture.Ready : (Posture)effective;
            yield return [Closed, effective, (int)kept, Fate(kept)];
            yield return [Closed + 1, effective, Closed, 0];
        }
    }

    private static int Fate(Posture posture) => posture.IsControlled() ? 1 : posture == Posture.Gripping ? 2 : 0;
}
