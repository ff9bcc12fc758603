using Generator.Domain;
using Generator.Rules;
using Generator.Rules.Replaying;
using Generator.Solver.Engine;
using Google.OrTools.Sat;

namespace Generator.Solver.Staging;

/// <summary>
/// The coarse plan: which attacker comes in each of the next exchanges, when, for how many moves, and who goes out. It knows threat times,
/// resets and lengths, but no stance, hands, facing or holds: a guide for the rows, not a proof about them.
/// </summary>
public sealed class StagingModel
{
    private readonly List<LinearExpr> charges = [];

    /// <param name="rules">What a plan keeps to.</param>
    /// <param name="scene">Bodies, tempo and brief.</param>
    /// <param name="from">State to plan from.</param>
    /// <param name="delays">Half counts that may still be added to each attacker's return or entrance.</param>
    /// <param name="exchanges">How many exchanges to plan at most.</param>
    /// <param name="ends">The plan reaches the end of the routine; otherwise it only looks ahead.</param>
    public StagingModel(IReadOnlyList<IPlanRule> rules, Scene scene, FightState from, IReadOnlyList<int> delays, int exchanges, bool ends)
    {
        Scene = scene;
        From = from;
        Ends = ends;
        Bounds = new StagingBounds(scene);
        Horizon = StagingBounds.Horizon(scene.Brief);
        Delays = [.. delays.Select((d, a) => Cp.Int(0, d, $"delay[{a}]"))];
        var threats = Enumerable.Range(0, scene.Cast).Select(a => Opening(from, a)).ToArray();
        var outs = from.Attackers.Select(a => a.Posture == Posture.Out ? Cp.True : Cp.False).ToArray();
        LinearExpr time = LinearExpr.Constant(from.Time);
        var list = new List<StagingVars>();
        for (var j = 0; j < exchanges; j++)
        {
            var exchange = Build(j, time, threats, outs, list.Count > 0 ? list[^1] : null);
            list.Add(exchange);
            time = exchange.End;
            (threats, outs) = (After(exchange, threats), Gone(exchange, outs));
        }

        Exchanges = list;
        EndThreats = threats;
        EndOut = outs;
        EndTime = list.Count > 0 ? list[^1].End : Cp.Const(from.Time);
        foreach (var rule in rules)
        {
            rule.Post(this);
        }
    }

    public Scene Scene { get; }

    public FightState From { get; }

    public bool Ends { get; }

    public int Horizon { get; }

    public StagingBounds Bounds { get; }

    public Cp Cp { get; } = new();

    public IReadOnlyList<IntVar> Delays { get; }

    public IReadOnlyList<StagingVars> Exchanges { get; }

    /// <summary>Threat times after the last exchange.</summary>
    public IReadOnlyList<IntVar> EndThreats { get; }

    /// <summary>Out after the last exchange.</summary>
    public IReadOnlyList<BoolVar> EndOut { get; }

    /// <summary>End of the last exchange.</summary>
    public IntVar EndTime { get; }

    /// <summary>What rules and aims charge.</summary>
    public LinearExpr Points => LinearExpr.Sum([.. charges, LinearExpr.Constant(0)]);

    public void Charge(LinearExpr amount) => charges.Add(amount);

    private IntVar Opening(FightState from, int a)
    {
        var attacker = from.Attackers[a];
        var threat = attacker.IsActive ? Replay.ThreatTime(Scene, from, a) : from.Time;
        var opening = Cp.Int(threat, threat + Math.Max(0, Cp.Range(Delays[a]).High), $"threat[0,{a}]");
        Cp.Model.Add(opening == Delays[a] + threat);
        return opening;
    }

    private StagingVars Build(int j, LinearExpr time, IntVar[] threats, BoolVar[] outs, StagingVars? previous)
    {
        var used = Cp.Bool($"used[{j}]");
        var exchange = new StagingVars
        {
            Index = j,
            Used = used,
            By = Cp.Bools(Scene.Cast, $"by[{j}]"),
            Start = Cp.Int(0, Horizon, $"start[{j}]"),
            Moves = Cp.Int(0, Bounds.MostMoves, $"moves[{j}]"),
            End = Cp.Int(0, Horizon, $"end[{j}]"),
            PutsOut = Cp.Bool($"putsout[{j}]"),
            Threats = threats,
            Out = outs,
        };
        var solver = Cp.Model;
        solver.Add(Cp.Sum(exchange.By) == used);
        if (previous is not null)
        {
            solver.AddImplication(used, previous.Used);
        }

        solver.Add(exchange.Start >= time);
        solver.Add(exchange.Start == time).OnlyEnforceIf(used.Not());
        solver.Add(exchange.End == exchange.Start).OnlyEnforceIf(used.Not());
        solver.Add(exchange.Moves == 0).OnlyEnforceIf(used.Not());
        solver.Add(exchange.Moves >= 1).OnlyEnforceIf(used);
        solver.AddImplication(exchange.PutsOut, used);
        solver.Add(exchange.Moves >= 2).OnlyEnforceIf(exchange.PutsOut);
        solver.Add(exchange.End >= exchange.Start + (exchange.Moves * Bounds.ShortestMove));
        solver.Add(exchange.End <= exchange.Start + (exchange.Moves * Bounds.LongestMove)).OnlyEnforceIf(used);
        return exchange;
    }

    private IntVar[] After(StagingVars exchange, IntVar[] threats)
    {
        var next = new IntVar[threats.Length];
        for (var a = 0; a < threats.Length; a++)
        {
            next[a] = Cp.Int(0, Horizon * 3, $"threat[{exchange.Index + 1},{a}]");
            Cp.Model.Add(next[a] == threats[a]).OnlyEnforceIf(exchange.By[a].Not());
            Cp.Model.Add(next[a] >= exchange.End + Bounds.SoonestBack(a)).OnlyEnforceIf(exchange.By[a]);
            Cp.Model.Add(next[a] <= exchange.End + Bounds.LatestBack(a)).OnlyEnforceIf(exchange.By[a]);
        }

        return next;
    }

    private BoolVar[] Gone(StagingVars exchange, BoolVar[] outs)
    {
        var next = new BoolVar[outs.Length];
        for (var a = 0; a < outs.Length; a++)
        {
            var goes = Cp.And($"goes[{exchange.Index},{a}]", exchange.By[a], exchange.PutsOut);
            next[a] = Cp.Or($"out[{exchange.Index + 1},{a}]", outs[a], goes);
        }

        return next;
    }
}
