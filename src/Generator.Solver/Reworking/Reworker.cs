using Generator.Domain;
using Generator.Domain.Sketches;
using Generator.Rules;
using Generator.Rules.Judging;
using Generator.Rules.Replaying;
using Generator.Solver.Completing;
using Generator.Solver.Constructing;

namespace Generator.Solver.Reworking;

/// <summary>
/// Changes a routine until its brief is satisfied, as little as can be. Two searches run side by side: one tries every single change, then two,
/// three …; for changes too large for it the other fills the routine as a sketch in which everything is said that can be (<see cref="Complete"/>), at the same prices.
/// </summary>
/// <param name="original">The old routine.</param>
/// <param name="prices">What changes cost.</param>
/// <param name="keepsGaps">A move that comes late keeps its distance from the one before.</param>
/// <param name="rank">What to keep small, by the final comparison and the audit.</param>
internal sealed class Reworker(Original original, IPrices prices, bool keepsGaps, Func<Reworked, long> rank)
{
    /// <summary>Changes that the first search makes at most.</summary>
    private const int MostChanges = 6;

    /// <summary>How often the time doubles in which some filling is looked for.</summary>
    private const int MostDoublings = 6;

    /// <summary>How long some filling is looked for at first, and the one in which the least gives.</summary>
    private static readonly TimeSpan FirstTime = TimeSpan.FromSeconds(2), AnyTime = TimeSpan.FromDays(1);

    private readonly Lock door = new();
    private readonly Following old = new(original.Search, original.Moves, prices, keepsGaps);
    private long least = long.MaxValue;

    /// <summary>The best so far.</summary>
    public Reworked? Best { get; private set; }

    /// <summary>No answer changes fewer moves than this; 0 when nothing is known.</summary>
    public int Bound { get; init; }

    /// <summary>No answer that changes as many moves changes them less; what is not is looked for further.</summary>
    public Func<Reworked, bool> IsMildest { get; init; } = _ => true;

    /// <summary>Told of every better answer.</summary>
    public Action<Reworked> Better { get; init; } = _ => { };

    /// <summary>Searches. True when the search for the fewest changes ended by itself.</summary>
    /// <param name="seed">For the filling.</param>
    /// <param name="stop">Ends it early.</param>
    public bool Run(int seed, CancellationToken stop)
    {
        if (Take(original.Routine, out _) && Best!.Change.IsNothing)
        {
            return true;
        }

        var ground = new Ground(original.Search, original.MayOut);
        using var ends = CancellationTokenSource.CreateLinkedTokenSource(stop);
        var tried = false;
        var windows = Lane.Start(() => Alone(() => tried = Windows(ground, ends), ends));
        Alone(() => Fill(seed, ends.Token), ends);
        windows.GetAwaiter().GetResult();
        return tried;
    }

    /// <summary>A fault in one search stops the others, so that it is told at once.</summary>
    private static bool Alone(Action search, CancellationTokenSource ends)
    {
        try
        {
            search();
            return true;
        }
        catch
        {
            ends.Cancel();
            throw;
        }
    }

    /// <summary>The old routine as a sketch: some filling first, by other chances each time that there is none, then that in which the least gives.</summary>
    private void Fill(int seed, CancellationToken stop)
    {
        for (var turn = 0; Best is null && !stop.IsCancellationRequested; turn++)
        {
            using var first = CancellationTokenSource.CreateLinkedTokenSource(stop);
            Fill(Hopeless.LeftOpen(original, widely: turn % 2 == 0), seed + turn, FirstTime * (1 << Math.Min(turn / 2, MostDoublings)), first.Cancel, first.Token);
        }

        Fill(Hopeless.LeftOpen(original, widely: false), seed, AnyTime, () => { }, stop);
    }

    private void Fill(Sketch sketch, int seed, TimeSpan time, Action found, CancellationToken stop) =>
        Complete.Of(
            sketch,
            original.Search.Book,
            new CompleteOptions { Seed = seed, Time = time },
            prices,
            better =>
            {
                // Lingers and cues are nobody's words in a sketch, but they were taught.
                var routine = better.Routine with { Brief = original.Scene.Brief, Moves = Noted(better.Routine.Moves) };
                Take(Settling.Of(original, routine, stop), out _);
                Take(routine, out _);
                found();
            },
            stop);

    private bool Windows(Ground ground, CancellationTokenSource ends)
    {
        var search = new WindowSearch(ground, old, original.Routine.Placements, Take, ends.Token) { Bound = Bound, IsMildest = () => Best is not { } best || IsMildest(best) };
        var done = search.Run(MostChanges);
        if (done)
        {
            ends.Cancel();
        }

        return done;
    }

    private void Take(Finish finish)
    {
        var routine = Draftsman.RoutineOf(original.Search, finish);
        Take(routine with { Brief = original.Scene.Brief, Moves = Noted(routine.Moves) }, out _);
    }

    /// <summary>Notes beside moves that stay.</summary>
    private Move[] Noted(IReadOnlyList<Move> moves)
    {
        var noted = moves.ToArray();
        foreach (var change in RoutineChange.Between(original.Routine, original.Routine with { Moves = moves }).Moves)
        {
            if (change.Kind <= ChangeKind.Shifted)
            {
                noted[change.Now] = noted[change.Now] with { Note = original.Moves[change.Old].Note };
            }
        }

        return noted;
    }

    /// <summary>Takes an answer in when it is clean and better than the best.</summary>
    private bool Take(Routine routine, out Reworked reworked)
    {
        var verdict = Audit.Of(original.Scene, routine);
        reworked = new Reworked(original.Scene, original.Routine, routine, verdict, RoutineChange.Between(original.Routine, routine));
        if (!verdict.IsClean)
        {
            return false;
        }

        var value = rank(reworked);
        lock (door)
        {
            if (value >= least)
            {
                return false;
            }

            (Best, least) = (reworked, value);
            Better(reworked);
            return true;
        }
    }
}
