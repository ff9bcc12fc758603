using Generator.Rules.Memories;
using Generator.Solver.Filling;
using Google.OrTools.Sat;

namespace Generator.Solver.Rules;

/// <summary>Charges at the end for shares of the exchanges that do not fit the time in play, or the brief's wish.</summary>
public sealed class Share : RuleModule
{
    public override string Id => "share";

    public override void Post(MoveModel model)
    {
        if (!model.Options.Ends)
        {
            return;
        }

        var cp = model.Cp;
        var before = model.Options.Memory?.MemoryOf(Id) is ShareMemory memory ? memory.Exchanges : new int[model.Cast];
        var exchanges = Enumerable.Range(0, model.Cast).Select(a => Exchanges(model, a, before[a])).ToList();
        var times = Enumerable.Range(0, model.Cast).Select(a => cp.Int(-model.Far, model.Options.Horizon * 2, $"inplay[{a}]")).ToList();
        for (var a = 0; a < model.Cast; a++)
        {
            cp.Model.Add(times[a] == OutTimes.Of(model, a) - model.Entrances[a]);
        }

        var most = before.Sum() + model.Slots.Count + 1;
        for (var a = 0; a < model.Cast; a++)
        {
            if (model.Scene.Brief.Attackers[a].SharePercent is { } percent)
            {
                Wish(model, a, percent, exchanges, most);
                continue;
            }

            for (var b = 0; b < model.Cast; b++)
            {
                if (a != b && model.Scene.Brief.Attackers[b].SharePercent is null)
                {
                    Pair(model, a, b, exchanges, times, most);
                }
            }
        }
    }

    private static IntVar Exchanges(MoveModel model, int attacker, int before)
    {
        var opened = model.Slots.Select(s => (LinearExpr)model.Cp.And($"opened[{s.Index},{attacker}]", s.Targets[attacker], s.Opens)).ToList();
        var sum = model.Cp.Int(before, before + opened.Count, $"exchanges[{attacker}]");
        model.Cp.Model.Add(sum == LinearExpr.Sum([.. opened, LinearExpr.Constant(before)]));
        return sum;
    }

    private void Pair(MoveModel model, int longer, int shorter, List<IntVar> exchanges, List<IntVar> times, int most)
    {
        var cp = model.Cp;
        var inPlayLonger = cp.AtMost(times[shorter], times[longer], $"longer[{longer},{shorter}]");
        var over = cp.Int(-most, most, $"moreexchanges[{longer},{shorter}]");
        cp.Model.Add(over == (LinearExpr)exchanges[shorter] - exchanges[longer] - 1).OnlyEnforceIf(inPlayLonger);
        cp.Model.Add(over == 0).OnlyEnforceIf(inPlayLonger.Not());
        model.Charge(Id, cp.Positive(over, most, $"share[{longer},{shorter}]"));
    }

    private void Wish(MoveModel model, int attacker, int percent, List<IntVar> exchanges, int most)
    {
        var cp = model.Cp;
        var off = cp.Int(0, 100L * most, $"shareoff[{attacker}]");
        cp.Model.AddAbsEquality(off, (exchanges[attacker] * 100) - (LinearExpr.Sum(exchanges.Select(e => (LinearExpr)e)) * percent));
        var points = cp.Int(0, most, $"sharewish[{attacker}]");

        // points = (off - 100) / 100, rounded up, never below 0: the next whole hundred at or above off, less one
        var hundreds = cp.Int(0, most + 1, $"sharehundreds[{attacker}]");
        cp.Model.AddDivisionEquality(hundreds, off + 99, LinearExpr.Constant(100));
        cp.Model.AddMaxEquality(points, [LinearExpr.Constant(0), hundreds - 1]);
        model.Charge(Id, points);
    }
}
