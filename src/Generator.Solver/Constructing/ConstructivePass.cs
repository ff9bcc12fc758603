using Generator.Domain;
using Generator.Rules;
using Generator.Rules.Judging;

namespace Generator.Solver.Constructing;

/// <summary>
/// The quick half of the engine: beam searches over Replay's step, scored by the rules. Two lanes run side by side in rounds; after each round
/// the better answer stands (the first lane's when equal), so that the same seed gives the same routine whatever the machine.
/// Incomplete: when it finds nothing, that says nothing about the brief.
/// </summary>
public sealed class ConstructivePass : IRoutineSource
{
    private const int Lanes = 2;

    /// <summary>Turns of each lane that make a round of <see cref="DraftOptions.Rounds"/>.</summary>
    private const int TurnsInRound = 4;

    /// <summary>
    /// Half counts up to which a fight is mostly drafted in the first lane's first turn (6,000 to 13,000 moves tried): the other lane, whose turn would then be for nothing, waits for it. What comes out is the same.
    /// </summary>
    private const double ShortFight = 60;

    public const string Source = "constructive pass";

    public string Name => Source;

    public SourceEnd Run(Scene scene, DraftOptions options, Action<Routine, Verdict> found, CancellationToken inHand, CancellationToken stop)
    {
        var ground = new Ground(scene);
        PassLane[] lanes = [.. Enumerable.Range(0, Lanes).Select(lane => new PassLane(ground, options.Seed, lane))];
        var turns = options.Rounds is { } rounds ? (long)rounds * TurnsInRound : long.MaxValue;
        Finish? best = null;
        for (var turn = 0L; !stop.IsCancellationRequested && turn < turns; turn++)
        {
            var waits = turn == 0 && ground.Aims.Total <= ShortFight;
            if (Turn(ground, lanes, best, waits, options.Rounds is null ? found : null, stop) is not { } better || better.Points >= best?.Points)
            {
                continue;
            }

            best = better;
            var (routine, verdict) = Draftsman.Write(scene, best);
            found(routine, verdict);
            if (best.Points <= ground.Least)
            {
                return new SourceEnd { ByItself = true };
            }
        }

        return stop.IsCancellationRequested ? SourceEnd.Nothing : new SourceEnd { ByItself = true };
    }

    /// <summary>One turn of every lane; the best finish of all, of the first lane that has it.</summary>
    /// <param name="ground">What the lanes share.</param>
    /// <param name="lanes">The lanes.</param>
    /// <param name="best">The best so far.</param>
    /// <param name="waits">The others begin when the first lane has ended its turn and can be bettered.</param>
    /// <param name="found">Told of the very first.</param>
    /// <param name="stop">Ends the turn early.</param>
    private static Finish? Turn(Ground ground, PassLane[] lanes, Finish? best, bool waits, Action<Routine, Verdict>? found, CancellationToken stop)
    {
        using var ends = CancellationTokenSource.CreateLinkedTokenSource(stop);
        var told = best is null && found is not null ? 0 : 1;

        // The very first routine is shown at once, unless which lane is sooner must not matter; one that cannot be bettered waits for the lane before it, so that always the same one is shown.
        void First(Finish finish)
        {
            if (finish.Points > ground.Least && Interlocked.Exchange(ref told, 1) == 0)
            {
                var (routine, verdict) = Draftsman.Write(ground.Scene, finish);
                found!(routine, verdict);
            }
        }

        var finishes = new Finish?[lanes.Length];
        if (waits)
        {
            finishes[0] = lanes[0].Take(best, First, ends.Token);
            if (finishes[0]?.Points <= ground.Least)
            {
                return finishes[0];
            }
        }

        var others = lanes[1..].Select(lane => Lane.Start(() => lane.Take(best, First, ends.Token))).ToArray();
        try
        {
            finishes[0] = waits ? finishes[0] : lanes[0].Take(best, First, ends.Token);
        }
        finally
        {
            if (finishes[0]?.Points <= ground.Least)
            {
                ends.Cancel();
            }

            for (var lane = 1; lane < lanes.Length; lane++)
            {
                finishes[lane] = others[lane - 1].GetAwaiter().GetResult();
            }
        }

        return finishes.OfType<Finish>().MinBy(f => f.Points);
    }
}
