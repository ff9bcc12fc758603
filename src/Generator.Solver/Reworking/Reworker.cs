using Generator.Domain;
using Generator.Domain.Sketches;
using Generator.Rules;
using Generator.Rules.Judging;
using Generator.Rules.Replaying;
using Generator.Solver.Completing;
using Generator.Solver.Constructing;

namespace Generator.Solver.Reworking;

/// <summary>
/// Changes a routine until its brief is satisfied, as little as can be. Three searches run side by side: one tries every single change, then two,
/// three …; for changes too large for it another is the beam of a draft that tries the old moves first and pays for others by what they cost, and the third fills the
/// routine as a sketch in which everything is said that can be (<see cref="Complete"/>), which finds something where much must change.
/// </summary>
/// <param name="original">The old routine.</param>
/// <param name="costs">What changes cost.</param>
/// <param name="rank">What to keep small, by the final comparison and the audit.</param>
internal sealed class Reworker(Original original, IChangeCosts costs, Func<Reworked, long> rank)
{
    /// <summary>Changes that the first search makes at most.</summary>
    private const int MostChanges = 6;

    /// <summary>How often the time doubles in which some filling is looked for.</summary>
    private const int MostDoublings = 6;

    /// <summary>How long some filling is looked for at first, and the one in which the least gives.</summary>
    private static readonly TimeSpan FirstTime = TimeSpan.FromSeconds(4), AnyTime = TimeSpan.FromDays(1);

    private static readonly int[] Widths = [8, 24, 48, 16];

    private readonly Lock door = new();
    private readonly Guide guide = new(original.Moves, costs, original.Lacks, original.Marks);
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
        var others = new[] { Lane.Start(() => Alone(() => tried = Windows(ground, ends), ends)), Lane.Start(() => Alone(() => Beams(ground, seed, ends.Token), ends)) };
        Alone(() => Fill(seed, ends.Token), ends);
        foreach (var other in others)
        {
            other.GetAwaiter().GetResult();
        }

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
            Fill(Hopeless.LeftOpen(original, widely: turn % 2 == 1), seed + turn, FirstTime * (1 << Math.Min(turn / 2, MostDoublings)), first.Cancel, first.Token, givesFirst: true);
        }

        Fill(Hopeless.LeftOpen(original, widely: false), seed, AnyTime, () => { }, stop);
    }

    private void Fill(Sketch sketch, int seed, TimeSpan time, Action found, CancellationToken stop, bool givesFirst = false) =>
        Complete.Of(
            sketch,
            original.Search.Book,
            new CompleteOptions { Seed = seed, Time = time, GivesFirst = givesFirst },
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
        var search = new WindowSearch(ground, guide, original.Routine.Placements, Take, ends.Token) { Bound = Bound, IsMildest = () => Best is not { } best || IsMildest(best) };
        var done = search.Run(MostChanges);
        if (done)
        {
            ends.Cancel();
        }

        return done;
    }

    private void Beams(Ground ground, int seed, CancellationToken stop)
    {
        Finish? best = null;
        for (var round = 0; !stop.IsCancellationRequested; round++)
        {
            var dice = new Dice(Dice.SeedOf(seed, 0, round));
            var beam = new Beam(ground, dice, ground.Aims.Width(Widths[round % Widths.Length]), 0.3 + dice.Unit(), best?.Toll ?? int.MaxValue, guide);
            if (beam.Run(best is null || round % 4 == 0 ? Roots(ground, dice, round) : [Cut(best, dice)], Take, stop) is { } better)
            {
                best = better;
            }
        }
    }

    /// <summary>The old opening; now and then another one.</summary>
    private IEnumerable<Node> Roots(Ground ground, Dice dice, int round)
    {
        var placements = round % 8 == 4 || !OnFloor() ? OpeningPlaces.Choose(ground, dice) ?? original.Routine.Placements : original.Routine.Placements;
        return guide.Openings(ground, placements);
    }

    private bool OnFloor()
    {
        var open = Score.Begin(original.Search, Replay.Open(original.Search, original.Routine.Placements));
        return open.Forbidden == 0;
    }

    /// <summary>A node some moves before one that is not as it was.</summary>
    private static Node Cut(Finish best, Dice dice)
    {
        var path = best.Node.Path();
        var changed = Enumerable.Range(1, path.Count - 1).Where(i => path[i].Track!.Min() > path[i - 1].Track!.Min()).ToList();
        var at = changed.Count > 0 && dice.Percent(75) ? changed[dice.Next(changed.Count)] - 1 - dice.Next(6) : dice.Next(path.Count - 1);
        return path[Math.Clamp(at, 0, path.Count - 2)];
    }

    private void Take(Finish finish)
    {
        var routine = Draftsman.RoutineOf(original.Search, finish);
        Take(routine with { Brief = original.Scene.Brief, Moves = Noted(routine.Moves) }, out _);
    }

    /// <summary>Notes beside moves that stay; what they hurt stays hurt.</summary>
    private Move[] Noted(IReadOnlyList<Move> moves)
    {
        var noted = moves.ToArray();
        foreach (var change in RoutineChange.Between(original.Routine, original.Routine with { Moves = moves }).Moves)
        {
            if (change.Kind > ChangeKind.Changed)
            {
                continue;
            }

            var (now, old) = (noted[change.Now], original.Routine.Moves[change.Old]);
            if (old.Hurts is { } hurts && now.Start < hurts.Until && HurtsLike(old, now))
            {
                now = now with { Hurts = now.Hurts ?? hurts };
            }

            noted[change.Now] = change.Kind == ChangeKind.Changed ? now : now with { Note = original.Moves[change.Old].Note };
        }

        return noted;
    }

    /// <summary>Another setback hurts the hero as the one before did; whom else a move hurts only the same technique hurts.</summary>
    private bool HurtsLike(Move old, Move now)
    {
        if (old.Technique is not { } before || now.Technique is not { } after)
        {
            return false;
        }

        var (was, comes) = (original.Scene.Book.Technique(before), original.Scene.Book.Technique(after));
        return was.Family == Family.Setback ? comes.Family == Family.Setback : old.Attacker == now.Attacker && string.Equals(was.BaseId, comes.BaseId, StringComparison.Ordinal);
    }

    /// <summary>Takes an answer in when it is clean and better than the best.</summary>
    private bool Take(Routine routine, out Reworked reworked)
    {
        var verdict = Audit.Of(original.Scene, routine);
        reworked = new Reworked(original.Scene, original.Routine, routine, verdict, RoutineChange.Between(original.Routine, routine));
        if (!verdict.IsClean || !original.KeepsMarks(routine))
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
