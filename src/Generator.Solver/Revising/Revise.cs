using System.Diagnostics;
using Generator.Domain;
using Generator.Library;
using Generator.Solver.Refuting;
using Generator.Solver.Reworking;

namespace Generator.Solver.Revising;

/// <summary>Fits a routine that has been taught to a brief that has changed, with the least to teach anew.</summary>
public static class Revise
{
    private const long OneCost = 1_000;

    /// <summary>Revises a routine; one that answers the new brief as it is comes back unchanged.</summary>
    /// <param name="routine">The routine as taught, with the brief that it was made for.</param>
    /// <param name="brief">The new brief. What it leaves open about ending, setbacks and pauses stays as it was.</param>
    /// <param name="book">The library.</param>
    /// <param name="options">Seed, time and weights.</param>
    /// <param name="better">Told of every better revision.</param>
    /// <param name="stop">Ends the search; the best so far is returned.</param>
    public static ReviseResult Of(Routine routine, Brief brief, Book book, ReviseOptions options, Action<Reworked>? better = null, CancellationToken stop = default)
    {
        var clock = Stopwatch.StartNew();
        var original = Original.Of(routine, Complete(brief, routine.Brief), book);
        if (Refutations.Reasons(original.Search).Concat(Ways.Nowhere(original.Search, original.NewMarks)).ToList() is { Count: > 0 } clash)
        {
            return new ReviseResult { Clash = clash, Elapsed = clock.Elapsed };
        }

        using var ends = CancellationTokenSource.CreateLinkedTokenSource(stop);
        ends.CancelAfter(options.Time);
        var marks = MarkNews.For(routine, original.Scene.Brief, book, original.Taken);
        long Rank(Reworked reworked) => (Reteaching.Of(reworked, options.Weights, marks(reworked)).Cost * OneCost) + (10 * reworked.Change.Shift) + reworked.Verdict.Points;
        var reworker = new Reworker(original, new TeachingCosts(options.Weights), Rank) { Better = better ?? (_ => { }) };
        var tried = reworker.Run(options.Seed, ends.Token);
        return new ReviseResult
        {
            Revised = reworker.Best,
            Teaching = reworker.Best is { } best ? Reteaching.Of(best, options.Weights, marks(best), original.Gone) : null,
            Taken = original.Taken,
            Gone = original.Gone,
            SmallerTried = tried,
            Elapsed = clock.Elapsed,
        };
    }

    private static Brief Complete(Brief brief, Brief old) => brief with
    {
        Ending = brief.Ending ?? EndingOf(brief, old),
        Acts = brief.Acts ?? old.Acts,
        Judged = brief.Judged ?? old.Judged,
        Setbacks = brief.Setbacks ?? old.Setbacks,
        Pauses = brief.Pauses ?? old.Pauses,
        Length = brief.Length ?? old.Length,
    };

    /// <summary>As it was, parts passed on: everybody where everybody went out.</summary>
    private static Ending? EndingOf(Brief brief, Brief old)
    {
        if (old.Ending is not { } was)
        {
            return null;
        }

        var parts = Original.Parts(old, brief);
        string? Now(string name)
        {
            var i = old.Attackers.Select(a => a.Name).ToList().IndexOf(name);
            return i < 0 || parts[i] < 0 ? null : brief.Attackers[parts[i]].Name;
        }

        var everybody = old.Attackers.All(a => was.Out.Contains(a.Name));
        return new Ending(everybody ? [.. brief.Attackers.Select(a => a.Name)] : [.. was.Out.Select(Now).OfType<string>()], was.Last is null ? null : Now(was.Last));
    }
}
