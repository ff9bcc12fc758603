using Generator.Domain;
using Generator.Rules;
using Generator.Rules.Replaying;
using Generator.Solver.Engine;
using Google.OrTools.Sat;

namespace Generator.Solver.Staging;

/// <summary>Plans the next exchanges from the true state: who comes, for how long, and who is put out, so that the whole comes out right.</summary>
public static class Stager
{
    private const int Exchanges = 6;

    /// <summary>A plan; empty when none was found in the little time it gets.</summary>
    public static Plan Ahead(IReadOnlyList<IPlanRule> rules, Scene scene, FightState state, IReadOnlyList<int> delays, int seed, CancellationToken stop)
    {
        var plan = new StagingModel(rules, scene, state, delays, Exchanges, false);
        var dice = new Random(seed);
        var cp = plan.Cp;
        var weights = new List<LinearExpr> { plan.Points * 4 };
        foreach (var exchange in plan.Exchanges)
        {
            // Exchanges of two to four moves, some more likely than others by the dice; long ones wear thin.
            cp.Model.Add(exchange.Moves <= 4);
            weights.Add(cp.Positive((LinearExpr)exchange.Moves - 2 - dice.Next(2), 8, $"long[{exchange.Index}]"));
            weights.Add(cp.Positive(2 - (LinearExpr)exchange.Moves, 8, $"short[{exchange.Index}]"));
            cp.Model.AddBoolOr([exchange.Used, .. plan.EndOut.Select(o => (ILiteral)o)]);
        }

        Schedule(plan, scene, state, weights);
        cp.Model.Minimize(LinearExpr.Sum(weights));
        using var session = new CpSession(cp.Model);
        session.Solve(new SearchSettings { Time = TimeSpan.FromSeconds(1), Work = 0.08, Seed = seed, Bare = true, Linear = false }, null, stop);
        return session.HasSolution ? Read(plan, session) : Plan.Nothing;
    }

    /// <summary>Nobody out in the first third, all but one out shortly before the end: each planned exchange keeps to that line.</summary>
    private static void Schedule(StagingModel plan, Scene scene, FightState state, List<LinearExpr> weights)
    {
        var cp = plan.Cp;
        foreach (var exchange in plan.Exchanges)
        {
            var outs = LinearExpr.Sum(exchange.Out.Select(o => (LinearExpr)o)) + exchange.PutsOut;
            var moves = 5 * (exchange.Index + 1) / 2;
            var wanted = OutSchedule.Wanted(scene.Brief, state.Time + (int)(moves * OutSchedule.PerMove), state.Moves + moves);
            var early = cp.Positive(outs - wanted, scene.Cast, $"early[{exchange.Index}]");
            var late = cp.Positive(wanted - outs, scene.Cast, $"late[{exchange.Index}]");
            weights.Add(early * 6);
            weights.Add(late * 3);
        }
    }

    private static Plan Read(StagingModel plan, CpSession session) => new(
    [
        .. plan.Exchanges.Where(e => session.IsTrue(e.Used)).Select(e => new PlannedExchange(
            Array.FindIndex(e.By, session.IsTrue), (int)session.Value(e.Moves), session.IsTrue(e.PutsOut))),
    ]);
}
