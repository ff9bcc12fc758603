using System.Diagnostics;
using Generator.Domain;
using Generator.Library;
using Generator.Rules;
using Generator.Rules.Judging;

namespace Generator.Solver.Alternatives;

/// <summary>
/// Other ways for the moves of a routine that are not locked, each told as soon as it is found, so that the first need not wait for the others. Nothing is drafted afresh and nothing refuted
/// beforehand, for the routine itself answers the brief; where nothing is found this way, <see cref="AlternativeSearch"/> may still find something.
/// </summary>
public sealed class WaysThrough
{
    private const int Lanes = 2;

    /// <summary>Attempts in a row that bring nothing new before a lane gives up.</summary>
    private const int Barren = 40;

    private readonly Lock door = new();
    private readonly List<Alternative> found = [];
    private readonly Scene scene;
    private readonly AlternativesOptions options;
    private readonly Alternative inHand;
    private readonly Action<Alternative> told;
    private Alternative? rough;
    private int seen;

    private WaysThrough(Scene scene, AlternativesOptions options, Routine routine, Action<Alternative> told)
    {
        (this.scene, this.options, this.told) = (scene, options, told);
        var own = routine with { Brief = scene.Brief };
        inHand = new Alternative(own, Audit.Of(scene, own), Shape.Of(scene, own));
    }

    /// <summary>Searches.</summary>
    /// <param name="routine">The routine in hand; nothing in it is unsafe or broken.</param>
    /// <param name="brief">What it answers; what is locked are its last hero moments.</param>
    /// <param name="book">The library.</param>
    /// <param name="options">How many, how different, what is locked. None has more points than the routine in hand and <see cref="AlternativesOptions.Slack"/>, unless all have.</param>
    /// <param name="told">Told of each as soon as it is found.</param>
    /// <param name="stop">Ends the search; what there is so far is returned.</param>
    public static AlternativesResult Of(Routine routine, Brief brief, Book book, AlternativesOptions options, Action<Alternative> told, CancellationToken stop = default)
    {
        var clock = Stopwatch.StartNew();
        var worked = new Scene(brief, book);
        using var ends = CancellationTokenSource.CreateLinkedTokenSource(stop);
        ends.CancelAfter(options.Time);
        var refill = new Refill(routine with { Brief = brief with { Moments = [.. brief.Moments.SkipLast(options.Locked.Count)] } }, options.Locked, book);
        var search = new WaysThrough(worked, options, routine, told);
        var other = Lane.Start(() => search.Work(refill, Lanes - 1, ends));
        search.Work(refill, 0, ends);
        other.GetAwaiter().GetResult();
        return new AlternativesResult { Scene = worked, Found = search.All(), Seen = search.seen, Elapsed = clock.Elapsed };
    }

    private bool Work(Refill refill, int lane, CancellationTokenSource ends)
    {
        var barren = 0;
        foreach (var way in refill.Ways(options.Seed, ends.Token, lane).TakeWhile(_ => !ends.IsCancellationRequested))
        {
            barren = way is not null && Take(way with { Brief = scene.Brief }, ends) ? 0 : barren + 1;
            if (barren >= Barren)
            {
                break;
            }
        }

        return true;
    }

    /// <summary>Tells of a way that is new; false for one that is not.</summary>
    private bool Take(Routine way, CancellationTokenSource ends)
    {
        if (Audit.Of(scene, way) is not { IsClean: true } verdict)
        {
            return false;
        }

        var one = new Alternative(way, verdict, Shape.Of(scene, way));
        lock (door)
        {
            seen++;
            if (ends.IsCancellationRequested || found.Prepend(inHand).Any(o => Shape.Difference(o.Shape, one.Shape) < options.SharePercent))
            {
                return false;
            }

            if (verdict.Points > inHand.Verdict.Points + options.Slack)
            {
                rough = rough is null || verdict.Points < rough.Verdict.Points ? one : rough;
                return false;
            }

            found.Add(one);
            told(one);
            if (found.Count == options.Number)
            {
                ends.Cancel();
            }

            return true;
        }
    }

    /// <summary>What was told; the least rough of what was too rough where there was nothing else.</summary>
    private List<Alternative> All()
    {
        if (found.Count == 0 && rough is not null)
        {
            found.Add(rough);
            told(rough);
        }

        return found;
    }
}
