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
        foreach (var slot in model.Slots)
        {
            cp.Model.Add(time == slot.End).OnlyEnforceIf([slot.Targets[attacker], slot.TargetAfter.Out]);
        }

        cp.Model.Add(time == model.End.Time).OnlyEnforceIf(model.End.Attackers[attacker].Out.Not());
        return time;
    }
}
