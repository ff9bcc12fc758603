using System.Diagnostics;
using Generator.Domain;
using Generator.Library;
using Generator.Rules;
using Generator.Rules.Judging;
using Generator.Rules.Replaying;
using Generator.Solver.Constructing;
using Generator.Solver.Refuting;

namespace Generator.Solver.Alternatives;

/// <summary>
/// Finds several routines for one brief that keep its hero moments and are otherwise far apart: many quick drafts, and of those that are good
/// enough the set that differs most.
/// </summary>
public sealed class AlternativeSearch
{
    private const int Lanes = 2;

    /// <summary>Routines among which the most diverse set is sought.</summary>
    private const int MostKept = 14;

    /// <summary>Times as many routines as are wanted are looked at, once there are enough.</summary>
    private const int Plenty = 2;

    private static readonly int[] Widths = [6, 10, 16, 8, 24];

    private readonly Lock door = new();
    private readonly Pool pool = new();
    private readonly List<IReadOnlyList<Node>> paths = [];
    private readonly Scene scene;
    private readonly AlternativesOptions options;
    private readonly IReadOnlyList<Shape> apart;
    private readonly Action<int, Alternative> told;
    private int seen;

    private AlternativeSearch(Scene scene, AlternativesOptions options, IReadOnlyList<Routine> apart, Action<int, Alternative> told)
    {
        (this.scene, this.options, this.told) = (scene, options, told);
        this.apart = [.. apart.Select(r => Shape.Of(scene, r))];
    }

    /// <summary>Searches.</summary>
    /// <param name="brief">What is asked for, hero moments included.</param>
    /// <param name="book">The library.</param>
    /// <param name="options">How many, how different, how good.</param>
    /// <param name="apart">Routines from which all alternatives differ as well.</param>
    /// <param name="told">Told how many there are, and which is the best.</param>
    /// <param name="stop">Ends the search; what there is so far is returned.</param>
    public static AlternativesResult Of(Brief brief, Book book, AlternativesOptions options, IReadOnlyList<Routine> apart, Action<int, Alternative>? told = null, CancellationToken stop = default)
    {
        var clock = Stopwatch.StartNew();
        var worked = new Scene(DraftBrief.Complete(brief, book), book);
        if (Refutations.First(worked) is { Reasons: var clash })
        {
            return new AlternativesResult { Scene = worked, Found = [], Clash = clash, Elapsed = clock.Elapsed };
        }

        using var ends = CancellationTokenSource.CreateLinkedTokenSource(stop);
        ends.CancelAfter(options.Time);
        var search = new AlternativeSearch(worked, options, apart, told ?? ((_, _) => { }));
        var ground = new Ground(worked);
        search.paths.AddRange(apart.Select(r => RoutinePath.Of(ground, r)).Where(t => t.Count > 1));
        var refill = Window(worked.Brief with { Moments = brief.Moments }, apart.Count > 0 ? apart[0] : null, options.Locked, book);
        var others = Enumerable.Range(1, Lanes - 1).Select(lane => Lane.Start(() => refill is null ? search.Work(ground, lane, ends) : search.Refilled(refill, ground.Least, ends))).ToArray();
        search.Work(ground, 0, ends);
        foreach (var other in others)
        {
            other.GetAwaiter().GetResult();
        }

        return new AlternativesResult { Scene = worked, Found = search.Chosen(), Seen = search.seen, Elapsed = clock.Elapsed };
    }

    private bool Work(Ground ground, int lane, CancellationTokenSource ends)
    {
        var failed = false;
        for (var round = 0; !ends.IsCancellationRequested; round++)
        {
            var dice = new Dice(Dice.SeedOf(options.Seed, lane, round));
            var width = ground.Aims.Width(Widths[(round + lane) % Widths.Length]);
            var beam = new Beam(ground, dice, width, Beam.Noise(dice), int.MaxValue);
            var roots = failed && Branch(dice) is { } branch ? [branch] : OpeningPlaces.Choose(ground, dice) is { } placements ? ground.Openings(placements) : [];
            var finish = beam.Run(roots, _ => { }, ends.Token);
            failed = finish is null;
            if (finish is null)
            {
                continue;
            }

            lock (door)
            {
                paths.Add(finish.Node.Path());
            }

            var (routine, verdict) = Draftsman.Write(scene, finish);
            if (Take(new Alternative(routine, verdict, Shape.Of(scene, routine)), ground.Least))
            {
                ends.Cancel();
            }
        }

        return true;
    }

    /// <summary>The moves between those that stay; null where none do.</summary>
    private static Refill? Window(Brief brief, Routine? routine, IReadOnlyList<LockedStretch> locked, Book book) => routine is not null && locked.Count > 0
        ? new Refill(routine with { Brief = brief with { Moments = [.. brief.Moments.SkipLast(locked.Count)] } }, locked, book) : null;

    /// <summary>Ways through the moves between those that stay; all of the rest is as it was.</summary>
    private bool Refilled(Refill refill, int least, CancellationTokenSource ends)
    {
        foreach (var way in refill.Ways(options.Seed, ends.Token).TakeWhile(_ => !ends.IsCancellationRequested).OfType<Routine>())
        {
            var routine = way with { Brief = scene.Brief };
            if (Audit.Of(scene, routine) is { IsClean: true } verdict && Take(new Alternative(routine, verdict, Shape.Of(scene, routine)), least))
            {
                ends.Cancel();
            }
        }

        return true;
    }

    /// <summary>
    /// A node in the first half of a routine that is there already, from which another may go its own way: where beginning afresh fails, that is
    /// the better chance. Null before there is one.
    /// </summary>
    private Node? Branch(Dice dice)
    {
        lock (door)
        {
            return paths.Count > 0 && paths[dice.Next(paths.Count)] is var path ? path[dice.Next((path.Count + 1) / 2)] : null;
        }
    }

    /// <summary>Takes a routine into the pool. True when there is nothing more to look for.</summary>
    private bool Take(Alternative found, int least)
    {
        lock (door)
        {
            seen++;
            if (apart.Any(a => Shape.Difference(a, found.Shape) < options.SharePercent))
            {
                return false;
            }

            pool.Add(found);
            if (pool.Count > MostKept)
            {
                pool.RemoveAt(pool.Worst());
            }

            var chosen = Pick();
            told(chosen.Count, pool.Best());
            var enough = chosen.Count == options.Number && seen >= Plenty * options.Number;
            return enough && (chosen.All(c => c.Verdict.Points <= least) || seen >= 2 * Plenty * options.Number);
        }
    }

    private IReadOnlyList<Alternative> Chosen()
    {
        lock (door)
        {
            return [.. Pick().OrderBy(c => c.Verdict.Points)];
        }
    }

    /// <summary>As many as are wanted, or as many as there are that differ enough.</summary>
    private IReadOnlyList<Alternative> Pick()
    {
        if (pool.Count == 0)
        {
            return [];
        }

        var most = pool.Best().Verdict.Points + options.Slack;
        var good = Enumerable.Range(0, pool.Count).Where(i => pool[i].Verdict.Points <= most).ToList();
        int Difference(int i, int j) => pool.Difference(good[i], good[j]);
        for (var number = Math.Min(options.Number, good.Count); number > 1; number--)
        {
            var set = DiverseSet.Pick(good.Count, number, Difference, DiversityGoal.Smallest);
            if (set.All(i => set.All(j => i == j || Difference(i, j) >= options.SharePercent)))
            {
                return [.. set.Select(i => pool[good[i]])];
            }
        }

        return [pool[good.MinBy(i => pool[i].Verdict.Points)]];
    }
}
