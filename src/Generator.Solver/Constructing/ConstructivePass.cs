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

    /// <summary>Nodes kept in a layer of time, by round; where layers are of moves, so many times more.</summary>
    private static readonly int[] Widths = [6, 10, 16, 8, 24];

    private const int ByMoves = 4;

    /// <summary>Every so many rounds a lane begins afresh although there is a routine to better.</summary>
    private const int AfreshEvery = 8;

    /// <summary>A mending run searches one window for so many moves of the routine.</summary>
    private const int MovesPerWindow = 3;

    public const string Source = "constructive pass";

    public string Name => Source;

    public SourceEnd Run(Scene scene, DraftOptions options, Action<Routine, Verdict> found, CancellationToken inHand, CancellationToken stop)
    {
        var ground = new Ground(scene);
        Finish? best = null;
        for (var round = 0; !stop.IsCancellationRequested && round < (options.Rounds ?? int.MaxValue); round++)
        {
            var better = Round(ground, options.Seed, round, best, options.Rounds is null ? found : null, stop);
            if (better is null)
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

    /// <summary>Both lanes once; the better finish if it betters the best.</summary>
    private static Finish? Round(Ground ground, int seed, int round, Finish? best, Action<Routine, Verdict>? found, CancellationToken stop)
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

        var others = Enumerable.Range(1, Lanes - 1).Select(lane => Lane.Start(() => Once(ground, seed, round, lane, best, First, ends.Token))).ToArray();
        var finishes = new Finish?[Lanes];
        try
        {
            finishes[0] = Once(ground, seed, round, 0, best, First, ends.Token);
        }
        finally
        {
            if (finishes[0]?.Points <= ground.Least)
            {
                ends.Cancel();
            }

            for (var lane = 1; lane < Lanes; lane++)
            {
                finishes[lane] = others[lane - 1].GetAwaiter().GetResult();
            }
        }

        return finishes.OfType<Finish>().MinBy(f => f.Points);
    }

    private static Finish? Once(Ground ground, int seed, int round, int lane, Finish? best, Action<Finish> found, CancellationToken stop)
    {
        var dice = new Dice(Dice.SeedOf(seed, lane, round));
        var width = Widths[(round + lane) % Widths.Length] * (ground.Aims.ByTime ? 1 : ByMoves);
        var noise = 0.4 + (1.6 * dice.Unit());
        var afresh = best is null || (round + (lane * AfreshEvery / Lanes)) % AfreshEvery == AfreshEvery - 1;
        var wishes = afresh ? Wishes.Drawn(ground.Repertoire, new Dice(Dice.SeedOf(seed, lane, round) ^ ground.Mark)) : null;
        if (!afresh && (round + lane) % Lanes == 0)
        {
            var mended = new Mending(ground, dice, width).Better(best!, best!.Node.Depth / MovesPerWindow, stop);
            return ReferenceEquals(mended, best) ? null : mended;
        }

        var beam = new Beam(ground, dice, width, noise, best?.Points ?? int.MaxValue, null, wishes);
        if (!afresh)
        {
            return beam.Run([Cut(best!, dice)], found, stop);
        }

        return Staging.Choose(ground.Scene, dice) is { } placements ? beam.Run(ground.Openings(placements), found, stop) : null;
    }

    /// <summary>A node of the best routine some moves before its first penalty, or anywhere when the penalty is one of the whole.</summary>
    private static Node Cut(Finish best, Dice dice)
    {
        var path = best.Node.Path();
        var first = path.FindIndex(n => n.Score.Points > path[0].Score.Points);
        var latest = first > 0 && dice.Percent(75) ? first - 1 : path.Count - 2;
        var cut = first > 0 ? latest - dice.Next(Math.Min(12, latest + 1)) : dice.Next(latest + 1);
        return path[Math.Max(0, cut)];
    }
}
