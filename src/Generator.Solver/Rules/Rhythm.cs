using Generator.Domain;
using Generator.Rules.Memories;
using Generator.Solver.Filling;
using Google.OrTools.Sat;

namespace Generator.Solver.Rules;

/// <summary>Charges for exchanges that are the fourth or more of one length in a row (1 each) and, at the end, where none has five moves (2) and for each flurry that lacks of two (1).</summary>
public sealed class Rhythm : RuleModule
{
    private const int MostAlike = 3;
    private const int LongFrom = 5;
    private const int NoneLong = 2;
    private const int Fewest = 3;
    private const int Within = 2;
    private const int RestFrom = 5;
    private const int Wanted = 2;

    public override string Id => "rhythm";

    public override void Post(MoveModel model)
    {
        if (!model.Scene.Judges(FightRule.Rhythm))
        {
            return;
        }

        var was = model.Options.Memory?.MemoryOf(Id) as RhythmMemory ?? RhythmMemory.None;
        Lengths(model, was);
        if (model.Options.Ends)
        {
            Flurries(model, was);
        }
    }

    private void Lengths(MoveModel model, RhythmMemory was)
    {
        var cp = model.Cp;
        var most = Math.Max(was.Moves, was.Length) + model.Slots.Count;
        var (moves, length, alike) = (cp.Const(was.Moves), cp.Const(was.Length), cp.Const(Math.Min(MostAlike + 1, was.Alike)));
        var isLong = new List<ILiteral> { was.IsLong ? cp.True : cp.False };
        foreach (var slot in model.Slots)
        {
            var i = slot.Index;
            var ends = cp.And($"exchangeends[{i}]", slot.Opens, cp.AtMost(LinearExpr.Constant(1), moves, $"inexchange[{i}]"));
            var over = Alike(model, moves, length, alike, $"[{i}]");
            var (nextMoves, nextLength, nextAlike) = (cp.Int(0, most, $"exchangemoves[{i}]"), cp.Int(0, most, $"exchangelength[{i}]"), cp.Int(0, MostAlike + 1, $"exchangesalike[{i}]"));
            cp.Model.Add(nextMoves == 1).OnlyEnforceIf(ends);
            cp.Model.Add(nextMoves == (LinearExpr)moves + slot.Used).OnlyEnforceIf(ends.Not());
            cp.Model.Add(nextLength == moves).OnlyEnforceIf(ends);
            cp.Model.Add(nextLength == length).OnlyEnforceIf(ends.Not());
            cp.Model.Add(nextAlike == over).OnlyEnforceIf(ends);
            cp.Model.Add(nextAlike == alike).OnlyEnforceIf(ends.Not());
            model.Charge(Id, cp.And($"alikeagain[{i}]", ends, cp.Is(over, MostAlike + 1, $"fourthalike[{i}]")));
            (moves, length, alike) = (nextMoves, nextLength, nextAlike);
            isLong.Add(cp.AtMost(LinearExpr.Constant(LongFrom), moves, $"longexchange[{i}]"));
        }

        if (model.Options.Ends)
        {
            model.Charge(Id, cp.Is(Alike(model, moves, length, alike, "[end]"), MostAlike + 1, "lastalike"));
            model.Charge(Id, (1 - (LinearExpr)cp.Or("somelong", [.. isLong])) * NoneLong);
        }
    }

    /// <summary>How many are alike once an exchange of so many moves has ended, up to four.</summary>
    private static IntVar Alike(MoveModel model, IntVar moves, IntVar length, IntVar alike, string name)
    {
        var cp = model.Cp;
        var apart = cp.Int(-Cp(length), Cp(moves), "lengthsapart" + name);
        cp.Model.Add(apart == (LinearExpr)moves - length);
        var same = cp.Is(apart, 0, "samelength" + name);
        var (more, then) = (cp.Int(1, MostAlike + 1, "onemore" + name), cp.Int(1, MostAlike + 1, "thenalike" + name));
        cp.Model.AddMinEquality(more, [LinearExpr.Constant(MostAlike + 1), (LinearExpr)alike + 1]);
        cp.Model.Add(then == more).OnlyEnforceIf(same);
        cp.Model.Add(then == 1).OnlyEnforceIf(same.Not());
        return then;
    }

    private static long Cp(IntVar variable) => Engine.Cp.Range(variable).High;

    private void Flurries(MoveModel model, RhythmMemory was)
    {
        var cp = model.Cp;
        var now = new Beat(cp.Const(was.Contact), cp.Const(was.Beats), [LinearExpr.Constant(was.Flurries)]);
        foreach (var slot in model.Slots)
        {
            var attack = cp.And($"beatattack[{slot.Index}]", slot.HasAttack, model.AttackIs(slot, k => k.IsWalkIn, $"walksin[{slot.Index}]").Not());
            now = Met(model, now, attack, slot.Start + model.Scene.Settle.ContactAfter.Value, $"[{slot.Index},attack]");
            var blow = model.UseIs(slot, u => u is { HasTarget: true, Technique.IsHitOrThrow: true }, $"beatblow[{slot.Index}]");
            now = Met(model, now, blow, slot.End, $"[{slot.Index},blow]");
        }

        var flurries = LinearExpr.Sum(now.Flurries) + cp.Is(now.Beats, Fewest, "lastflurry");
        model.Charge(Id, cp.Positive(Wanted - flurries, Wanted, "flurrieslacking"));
    }

    private static Beat Met(MoveModel model, Beat was, BoolVar meets, LinearExpr contact, string name)
    {
        var cp = model.Cp;
        if (cp.IsFalse(meets))
        {
            return was;
        }

        var first = cp.Is(was.Beats, 0, "firstcontact" + name);
        var some = cp.AtMost(was.Contact + 1, contact, "latercontact" + name);
        var counts = cp.And("newcontact" + name, meets, cp.Or("countscontact" + name, first, some));
        var quick = cp.And("quickcontact" + name, counts, first.Not(), cp.AtMost(contact, was.Contact + Within, "within" + name));
        var rested = cp.And("rested" + name, counts, cp.Is(was.Beats, Fewest, "flurry" + name), cp.AtMost(was.Contact + RestFrom, contact, "rest" + name));
        var (at, beats, more) = (cp.Int(0, model.Options.Horizon * 2, "contact" + name), cp.Int(0, Fewest, "beats" + name), cp.Int(1, Fewest, "morebeats" + name));
        cp.Model.AddMinEquality(more, [LinearExpr.Constant(Fewest), (LinearExpr)was.Beats + 1]);
        cp.Model.Add(at == contact).OnlyEnforceIf(counts);
        cp.Model.Add(at == was.Contact).OnlyEnforceIf(counts.Not());
        cp.Model.Add(beats == more).OnlyEnforceIf(quick);
        cp.Model.Add(beats == 1).OnlyEnforceIf([counts, quick.Not()]);
        cp.Model.Add(beats == was.Beats).OnlyEnforceIf(counts.Not());
        return new Beat(at, beats, [.. was.Flurries, rested]);
    }

    /// <summary>The last contact, how many came quickly up to it, and the flurries so far.</summary>
    private sealed record Beat(IntVar Contact, IntVar Beats, IReadOnlyList<LinearExpr> Flurries);
}
