using Generator.Solver.Filling;
using Google.OrTools.Sat;

namespace Generator.Solver.Rules;

/// <summary>When each attacker goes out, for the rules that ask.</summary>
internal static class OutTimes
{
    /// <summary>Moment at which the attacker goes out within these rows or went out before; the end of the last row for one who stays in.</summary>
    public static LinearExpr Of(MoveModel model, int attacker)
    {
        if (model.Options.From is { } state && state.Attackers[attacker].OutAt >= 0)
        {
            return LinearExpr.Constant(state.Attackers[attacker].OutAt);
        }

        var cp = model.Cp;
        var time = cp.Int(0, model.Options.Horizon, $"outat[{attacker}]");
        var goes = model.Slots.Select(s => cp.And($"goesout[{s.Index},{attacker}]", s.Targets[attacker], s.TargetAfter.Out)).ToList();
        for (var i = 0; i < goes.Count; i++)
        {
            var second = model.Slots[i].SecondsOut[attacker];
            goes[i] = ReferenceEquals(second, cp.False) ? goes[i] : cp.Or($"goesoutanyhow[{i},{attacker}]", goes[i], second);
            cp.Model.Add(time == model.Slots[i].End).OnlyEnforceIf(goes[i]);
        }

        cp.Model.Add(time == model.End.Time).OnlyEnforceIf([.. goes.Select(g => g.Not())]);
        return time;
    }
}
