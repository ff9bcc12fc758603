using Generator.Domain;
using Generator.Rules;
using Generator.Rules.Judging;
using Generator.Rules.Replaying;
using Generator.Solver.Engine;
using Generator.Solver.Filling;
using Generator.Solver.Rules;
using Generator.Solver.Staging;

namespace Generator.Solver.Rolling;

/// <summary>
/// CP-SAT's way to a whole routine: staging plans some exchanges ahead from the true state, fill solves the next rows exactly, the first of
/// them are committed and replayed, and so on until the last rows are solved with everything that the ending asks for.
/// </summary>
public sealed class RollingLoop
{
    private const int WindowRows = 5;
    private const int LastRows = 8;

    /// <summary>Windows that may fail before the attempt is given up; another seed is then the better bet.</summary>
    private const int MostFailures = 16;

    /// <summary>Uses of techniques, beside those that are kept anyway, that a window is given at first; after a failure it gets another, larger draw.</summary>
    private const double Drawn = 160;
    private readonly Scene scene;
    private readonly Vocabulary vocabulary;
    private readonly int horizon;
    private readonly HashSet<string> named;

    public RollingLoop(Scene scene)
    {
        this.scene = scene;
        named = scene.Brief.Moments.SelectMany(m => m.Moves).SelectMany(m => new[] { m.Technique, m.Reaction ?? m.Technique }).ToHashSet(StringComparer.Ordinal);
        vocabulary = Vocabulary.Of(scene, Allows);
        horizon = StagingBounds.Horizon(scene.Brief);
    }

    /// <summary>Told of every window, for those who tune the loop.</summary>
    public Action<string>? Trace { get; set; }

    /// <summary>One routine by this seed, or null when time ran out or the attempt got stuck.</summary>
    public Routine? Attempt(int seed, CancellationToken stop)
    {
        var dice = new Random(seed);
        var blocks = new Stack<Draft>();
        var (failures, worked) = (0, -1);
        while (failures <= MostFailures && !stop.IsCancellationRequested)
        {
            var ending = blocks.Count > 0 && IsNearEnd(blocks.Peek());
            var next = Window(blocks.Count > 0 ? blocks.Peek() : null, dice.Next(), ending, failures == 0 || blocks.Count > worked, stop);
            if (next is not null && ending)
            {
                return next.ToRoutine(scene);
            }

            if (next is not null)
            {
                blocks.Push(next);
                continue;
            }

            // Another draw is tried once from the same rows; then one or more of them must go.
            failures++;
            worked = blocks.Count;
            for (var back = 0; back < (failures % 2 == 0 ? Math.Min(3, failures / 4 + 1) : 0) && blocks.Count > 0; back++)
            {
                blocks.Pop();
            }
        }

        return null;
    }

    /// <summary>What the loop chooses from: setbacks and pauses only where the brief asks for them.</summary>
    private bool Allows(Technique technique) => IsNamed(technique) || technique.Family switch
    {
        Family.Setback => scene.Brief.Setbacks is > 0 || (scene.Brief.Setbacks is null && scene.Plan is not null),
        Family.Pause => technique.Recovery || scene.Brief.Pauses is > 0,
        _ => true,
    };

    private bool IsNamed(Technique technique) => named.Contains(technique.Id) || named.Contains(technique.BaseId);

    private bool IsNearEnd(Draft draft) => scene.Brief.Length switch
    {
        { Counts: { } counts } => (2 * counts) - draft.State.Time <= 3 * LastRows - 2,
        { Moves: { } moves } => moves - draft.State.Moves <= LastRows - 1,
        _ => draft.State.Moves >= 12,
    };

    /// <summary>Solves the next rows and commits the first of them, or all when they end the routine; null when that did not work.</summary>
    private Draft? Window(Draft? draft, int seed, bool ends, bool quick, CancellationToken stop)
    {
        var dice = new Random(seed);
        var words = vocabulary.Drawn(
            dice,
            (quick ? 1 : 1.5) * Drawn / vocabulary.Uses.Count,
            t => IsNamed(t) || t.Family is Family.Escape or Family.Finish or Family.Setback or Family.Pause,
            r => !scene.Book.Reactions[r].AnswersBlow || named.Contains(scene.Book.Reactions[r].Id) || dice.Next(100) < scene.UsuallyAnsweredPercent);
        var delays = draft?.Delays(scene, horizon);
        var plan = draft is null ? Plan.Nothing : Stager.Ahead(RuleModules.OfPlans, scene, draft.State, delays!, seed, stop);
        var rows = ends ? LastRowsFor(draft!) : WindowRows;
        var model = new MoveModel(scene, words, new MoveModelOptions
        {
            Rules = RuleModules.All,
            From = draft?.State,
            Past = draft?.Past ?? [],
            Memory = draft?.Score,
            Rows = rows,
            FewestRows = ends ? Math.Max(1, rows - 5) : rows,
            Ends = ends,
            Horizon = ends ? Math.Max(horizon, draft!.State.Time + 4) : (draft?.State.Time ?? 0) + (8 * rows) + 30,
            Delays = delays,
            Plan = plan.Rows(rows),
        });
        foreach (var slot in model.Slots)
        {
            // Nobody goes down in a gap only to get up again.
            model.Cp.Model.Add(slot.StanceTime == 0).OnlyEnforceIf(model.UseIs(slot, u => u.Technique is { Recovery: true }, $"recovers[{slot.Index}]"));
        }

        DecisionOrder.Post(model, seed);
        model.Cp.Model.Minimize((model.Points * 3) + (ends ? Google.OrTools.Sat.LinearExpr.Constant(0) : WindowAims.Of(model, plan, horizon)));
        using var session = model.Session();
        session.Solve(new SearchSettings { Time = TimeSpan.FromSeconds(20), Work = ends ? 0.4 : 0.12, Seed = seed, Bare = true, Linear = false, OwnOrder = true }, null, stop);
        Trace?.Invoke($"uses {words.Uses.Count}/{vocabulary.Uses.Count} rows {draft?.Rows.Count ?? 0}+{rows}{(ends ? " ends" : string.Empty)} time {draft?.State.Time ?? 0} out {draft?.State.Attackers.Count(a => a.Posture == Posture.Out)} {draft?.Score.MemoryOf("setbacks")}: {session.Answer}, objective {session.Objective}, {session.Elapsed.TotalMilliseconds:0} ms, {session.Work:0.00} work, plan {string.Join(' ', plan.Exchanges.Select(e => $"{e.Attacker}x{e.Moves}{(e.PutsOut ? "!" : string.Empty)}"))}");
        return session.HasSolution ? Commit(draft, model, session, ends) : null;
    }

    private int LastRowsFor(Draft draft) => scene.Brief.Length switch
    {
        { Counts: null, Moves: { } moves } length => moves + length.Tolerance - draft.State.Moves,
        _ => LastRows + 1,
    };

    private Draft Commit(Draft? draft, MoveModel model, CpSession session, bool ends)
    {
        var solved = RowReader.Rows(model, session);
        var whole = draft is null
            ? Draft.Of(scene, RowReader.Placements(model, session), solved)
            : draft.With(scene, RowReader.Delays(model, session), solved);
        Agree(draft, whole, model, session, ends);
        var keep = ends ? solved.Count : Kept(solved);
        return draft is null
            ? Draft.Of(scene, whole.Placements, whole.Rows.Take(keep).ToList())
            : Draft.Of(scene, whole.Placements, whole.Rows.Take(draft.Rows.Count + keep).ToList());
    }

    /// <summary>About three rows, cut where the next exchange begins if it begins there or shortly before.</summary>
    private int Kept(IReadOnlyList<Row> rows)
    {
        // What the brief asks for and has come about stays: left to the next window it would be put off for ever.
        if (Enumerable.Range(0, rows.Count).LastOrDefault(i => IsWanted(rows[i]), -1) is var wanted && wanted >= 2)
        {
            return wanted + 1;
        }

        for (var cut = Math.Min(rows.Count - 1, 4); cut >= 2; cut--)
        {
            if (rows[cut].Attack >= 0 || rows[cut].Attacker != rows[cut - 1].Attacker)
            {
                return cut;
            }
        }

        return Math.Min(3, rows.Count);
    }

    private bool IsWanted(Row row) => row.Technique >= 0 && scene.Book.Techniques[row.Technique] is var technique
        && (technique.Family == Family.Setback || technique.IsStoryPause || IsNamed(technique)
            || (row.Reaction >= 0 && scene.Book.Reactions[row.Reaction].Posture == Posture.Out));

    /// <summary>Solver and audit must say the same of these rows, to the point.</summary>
    private void Agree(Draft? before, Draft after, MoveModel model, CpSession session, bool ends)
    {
        var score = ends ? after.Score.Close(scene, after.State) : after.Score;
        var counted = score.Points - (before?.Score.Points ?? 0);
        var solved = session.Value(model.Points);
        if (score.Forbidden > 0 || counted != solved)
        {
            var routine = after.ToRoutine(scene);
            var words = Audit.Of(scene, routine).Findings.Where(f => f.Severity >= Severity.Rough).Select(f => $"{f.Rule} at move {f.Move}: {f.Message}");
            throw new DisagreementException($"The solver counted {solved} points, the audit {counted} with {score.Forbidden} forbidden findings: {string.Join(", ", words)}.");
        }
    }
}
