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
            if (Turn(ground, lanes, best, options.Rounds is null ? found : null, stop) is not { } better || better.Points >= best?.Points)
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
    private static Finish? Turn(Ground ground, PassLane[] lanes, Finish? best, Action<Routine, Verdict>? found, CancellationToken stop)
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

        var others = lanes[1..].Select(lane => Lane.Start(() => lane.Take(best, First, ends.Token))).ToArray();
        var finishes = new Finish?[lanes.Length];
        try
        {
            finishes[0] = lanes[0].Take(best, First, ends.Token);
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
