using Generator.Domain;
using Generator.Rules;
using Generator.Rules.Judging;
using Generator.Rules.Replaying;
using Generator.Solver.Filling;

namespace Generator.Solver.Rolling;

/// <summary>The rows committed so far, replayed from the start: the true state and the rules' memories.</summary>
public sealed class Draft
{
    private Draft(IReadOnlyList<Placement> placements, IReadOnlyList<Row> rows, IReadOnlyList<FightState> past, FightState state, Score score)
    {
        Placements = placements;
        Rows = rows;
        Past = past;
        State = state;
        Score = score;
    }

    public IReadOnlyList<Placement> Placements { get; }

    public IReadOnlyList<Row> Rows { get; }

    /// <summary>What was known before each row, the last first.</summary>
    public IReadOnlyList<FightState> Past { get; }

    public FightState State { get; }

    public Score Score { get; }

    /// <summary>Replays the rows.</summary>
    public static Draft Of(Scene scene, IReadOnlyList<Placement> placements, IReadOnlyList<Row> rows)
    {
        var state = Replay.Open(scene, placements);
        var score = Score.Begin(scene, state);
        var past = new List<FightState>();
        foreach (var row in rows)
        {
            past.Add(state);
            var step = Replay.Step(scene, state, row);
            score = score.Observe(scene, step);
            state = step.After;
        }

        past.Reverse();
        return new Draft(placements, rows, past, state, score);
    }

    /// <summary>The same with later entrances or longer lingers of those who have acted, and more rows.</summary>
    public Draft With(Scene scene, IReadOnlyList<int> delays, IEnumerable<Row> more)
    {
        var placements = Placements.ToArray();
        var rows = Rows.ToArray();
        for (var a = 0; a < delays.Count; a++)
        {
            if (delays[a] == 0)
            {
                continue;
            }

            var last = Array.FindLastIndex(rows, r => r.Attacker == a && r.Reaction >= 0);
            if (last < 0)
            {
                placements[a] = placements[a] with { Entrance = placements[a].Entrance + new HalfCounts(delays[a]) };
            }
            else
            {
                rows[last] = rows[last] with { Linger = rows[last].Linger + delays[a] };
            }
        }

        return Of(scene, placements, [.. rows, .. more]);
    }

    /// <summary>Half counts that may still be added to each attacker's return or entrance.</summary>
    public IReadOnlyList<int> Delays(Scene scene, int horizon) =>
        [.. State.Attackers.Select((s, a) => DelayOf(scene, s, a, horizon))];

    public Routine ToRoutine(Scene scene) => new()
    {
        Brief = scene.Brief,
        LibraryVersion = scene.Book.Version,
        Placements = Placements,
        Moves = [.. Rows.Select(r => r.ToMove(scene))],
    };

    private int DelayOf(Scene scene, AttackerState state, int attacker, int horizon)
    {
        if (!state.IsActive)
        {
            return 0;
        }

        if (Delayed.IsEntrance(state))
        {
            return scene.Brief.Attackers[attacker].Entrance is null ? Math.Max(0, horizon - state.Entrance) : 0;
        }

        var last = Rows.LastOrDefault(r => r.Attacker == attacker && r.Reaction >= 0);
        return Math.Max(0, scene.LongestLinger(last) - last.Linger);
    }
}
