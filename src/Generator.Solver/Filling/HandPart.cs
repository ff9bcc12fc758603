using Generator.Domain;
using Generator.Rules;
using Generator.Rules.Replaying;

namespace Generator.Solver.Filling;

/// <summary>
/// The hero's hands and bound before and after a row, by tables over classes of uses. The transition is Replay's own; a fault column says
/// what does not fit, for the rules flow-hands and grip.
/// </summary>
internal static class HandPart
{
    public static int Code(Hand hand, int cast) => hand.Kind switch
    {
        HandKind.Guard => 0,
        HandKind.Out => 1,
        HandKind.Holding => 2 + hand.Who,
        _ => 2 + cast + hand.Who,
    };

    public static int Code(Bound bound, int by, int cast) => bound switch
    {
        Bound.Free => 0,
        Bound.Front => 1 + by,
        _ => 1 + cast + by,
    };

    public static void Build(MoveModel model, SlotVars slot)
    {
        var cp = model.Cp;
        var classes = model.Classes;
        var later = cp.AtMost(Google.OrTools.Sat.LinearExpr.Constant(model.Scene.Settle.HandBack.Value), slot.Gap, $"handback[{slot.Index}]");
        var most = 1 + (2 * model.Cast);
        slot.LeftEnd = cp.Int(0, most, $"left[{slot.Index + 1}]");
        slot.RightEnd = cp.Int(0, most, $"right[{slot.Index + 1}]");
        slot.BoundEnd = cp.Int(0, 2 * model.Cast, $"bound[{slot.Index + 1}]");
        slot.LeftFault = cp.Int(0, 2, $"leftfault[{slot.Index}]");
        slot.RightFault = cp.Int(0, 2, $"rightfault[{slot.Index}]");
        slot.BoundFault = cp.Int(0, 1, $"boundfault[{slot.Index}]");
        var left = cp.ClassOf(slot.Uses, classes.Left, $"leftclass[{slot.Index}]");
        var right = cp.ClassOf(slot.Uses, classes.Right, $"rightclass[{slot.Index}]");
        var bound = cp.ClassOf(slot.Uses, classes.Bound, $"boundclass[{slot.Index}]");
        cp.Table([left, slot.Before.Left, later, slot.Target, slot.Fate, slot.LeftEnd, slot.LeftFault], model.Tables.Left);
        cp.Table([right, slot.Before.Right, later, slot.Target, slot.Fate, slot.RightEnd, slot.RightFault], model.Tables.Right);
        cp.Table([bound, slot.Before.Bound, slot.Target, slot.Fate, slot.BoundEnd, slot.BoundFault], model.Tables.Bound);
    }

    public static IEnumerable<long[]> HandRows(MoveModel model, IReadOnlyList<Use> examples, Side side)
    {
        var most = 1 + (2 * model.Cast);
        for (var c = 0; c < examples.Count; c++)
        {
            for (var code = 0; code <= most; code++)
            {
                for (var later = 0; later <= 1; later++)
                {
                    for (var target = 0; target <= model.Cast; target++)
                    {
                        for (var fate = 0; fate <= 2; fate++)
                        {
                            var (end, fault) = HandChange(model, examples[c], side, code, later == 1, target, fate);
                            if (fault == 0 || model.Options.Total)
                            {
                                yield return [c, code, later, target, fate, end, fault];
                            }
                        }
                    }
                }
            }
        }
    }

    private static (int End, int Fault) HandChange(MoveModel model, Use use, Side side, int code, bool later, int target, int fate)
    {
        if (use.Technique is not { } technique)
        {
            return (code, 0);
        }

        var cast = model.Cast;
        var who = target == cast ? -1 : target;
        var hand = HandStates.Seized(HandStates.Settled(Decode(code, cast), later), side == Side.Left ? use.Grip?.GripsLeft : use.Grip?.GripsRight, who);
        var fits = HandFit.Accepts(hand, side == Side.Left ? technique.LeftNeed : technique.RightNeed, who);
        var fault = fits ? 0 : hand.Kind == HandKind.Held ? 2 : 1;
        var end = Effects.HandAfter(hand, side == Side.Left ? technique.LeftEnd : technique.RightEnd, who);
        if (hand.Kind is HandKind.Holding or HandKind.Held && hand.Who != who && end != hand && fault == 0)
        {
            fault = 2;
        }

        if (who >= 0)
        {
            end = Effects.Freed(end, who, fate switch { 1 => Posture.HeldArm, 2 => Posture.Gripping, _ => Posture.OffBalance });
        }

        return (Code(end, cast), fault);
    }

    private static Hand Decode(int code, int cast) => code switch
    {
        0 => Hand.Guard,
        1 => Hand.Out,
        _ => code < 2 + cast ? new Hand(HandKind.Holding, code - 2) : new Hand(HandKind.Held, code - 2 - cast),
    };

    public static IEnumerable<long[]> BoundRows(MoveModel model)
    {
        var examples = model.Classes.BoundExamples;
        for (var c = 0; c < examples.Count; c++)
        {
            for (var code = 0; code <= 2 * model.Cast; code++)
            {
                for (var target = 0; target <= model.Cast; target++)
                {
                    for (var fate = 0; fate <= 2; fate++)
                    {
                        var (end, fault) = BoundChange(model.Cast, examples[c], code, target, fate);
                        if (fault == 0 || model.Options.Total)
                        {
                            yield return [c, code, target, fate, end, fault];
                        }
                    }
                }
            }
        }
    }

    private static (int End, int Fault) BoundChange(int cast, Use use, int code, int target, int fate)
    {
        if (use.Technique is not { } technique)
        {
            return (code, 0);
        }

        var bound = code == 0 ? Bound.Free : code <= cast ? Bound.Front : Bound.Rear;
        var by = code == 0 ? -1 : (code - 1) % cast;
        var who = target == cast ? -1 : target;
        if (use.Grip?.GripsBound is { } grips && grips != Bound.Free && bound == Bound.Free)
        {
            (bound, by) = (grips, who);
        }

        var works = technique.Bounds.HasFlag(bound switch { Bound.Free => BoundSet.Free, Bound.Front => BoundSet.Front, _ => BoundSet.Rear });
        var fault = works && (bound == Bound.Free || by == who || technique.Supported) ? 0 : 1;
        (bound, by) = technique.EndBound switch
        {
            null => (bound, by),
            Bound.Free => (Bound.Free, -1),
            { } ends => (ends, who),
        };
        if (who >= 0 && by == who && fate != 2)
        {
            (bound, by) = (Bound.Free, -1);
        }

        return (Code(bound, by, cast), fault);
    }
}
