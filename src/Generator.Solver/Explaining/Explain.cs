using System.Diagnostics;
using System.Numerics;
using Generator.Domain;
using Generator.Library;
using Generator.Library.Files;
using Generator.Library.Reading;
using Generator.Solver.Questions;

namespace Generator.Solver.Explaining;

/// <summary>Says which statements of a brief clash, and what to give up.</summary>
public static class Explain
{
    /// <summary>Looks for the smallest clashes of a brief and the smallest concessions.</summary>
    /// <param name="brief">The brief.</param>
    /// <param name="book">The library.</param>
    /// <param name="options">Seed and time.</param>
    /// <param name="told">Told of what is known so far, in words.</param>
    /// <param name="stop">Ends the search; what is known so far is returned.</param>
    public static BriefExplanation Of(Brief brief, Book book, ExplainOptions options, Action<string>? told = null, CancellationToken stop = default)
    {
        var clock = Stopwatch.StartNew();
        using var ends = CancellationTokenSource.CreateLinkedTokenSource(stop);
        ends.CancelAfter(options.Time);

        // The rest of the time is for the smallest concessions.
        using var sets = CancellationTokenSource.CreateLinkedTokenSource(ends.Token);
        sets.CancelAfter(0.6 * options.Time);
        var asked = Asked(brief, book);
        var statements = Statements.Of(asked, book.Settle);
        var oracle = new BriefOracle(book, options.Seed, options.Patience, sets.Token);
        var gentle = new BriefOracle(book, options.Seed, options.Patience, ends.Token);
        var first = SmallestClash.ByArithmetic(asked, book, statements);
        first = first.IsProven ? first : SmallestClash.RoundMoments(asked, book, statements, ends.Token);

        var whole = first.IsProven ? Answer.Impossible : Drafted(asked, book, options, ends.Token);
        told?.Invoke(whole switch
        {
            Answer.Solvable => "There is a routine for this brief",
            Answer.Impossible => "No routine can satisfy this brief",
            _ => "No routine was found yet",
        });
        if (whole == Answer.Solvable)
        {
            return new BriefExplanation { Brief = whole, Proven = true, Complete = true, Elapsed = clock.Elapsed };
        }

        var everything = Clashes.AllOf(statements.Count);
        Brief Kept(ulong set) => Statements.Keep(asked, statements, set);
        int Farness(ulong set) => Members(statements.Count, set).Max(i => (int)statements[i].Nearness);
        bool IsReadable(Brief b) => BriefReader.Parse(new SourceFile("way out", BriefWriter.Text(b)), book).IsGood;
        bool Helps(Brief b) => !ends.IsCancellationRequested && IsReadable(b) && gentle.Ask(b) == Answer.Solvable;
        var clashes = new Clashes(statements.Count, set => set == everything ? whole : oracle.Ask(Kept(set)), set => oracle.IsProven(Kept(set)), () => Harder(oracle, options.Time), sets.Token) { First = first.Set, Farness = Farness };
        var report = clashes.Report();
        return new BriefExplanation
        {
            Brief = whole,
            Clashes = whole != Answer.Impossible ? [] : [.. report.Clashes.OrderByDescending(c => c == first.Set).ThenBy(BitOperations.PopCount).Select(c => Words(statements, c))],
            GiveUps = [.. report.GiveUps.OrderBy(BitOperations.PopCount).ThenBy(Farness).Select(g => Concession(asked, statements, g, Helps, IsReadable)).OfType<WayOut>()],
            Reasons = first.Reasons,
            Proven = report.Proven,
            Minimal = report.Minimal,
            Complete = report.Complete && !ends.IsCancellationRequested,
            Elapsed = clock.Elapsed,
        };
    }

    /// <summary>
    /// Statements of a brief that clash, none of which can be left out as far as arithmetic or a proof round its hero moments goes, and why they do; both empty where
    /// those prove nothing.
    /// </summary>
    internal static (IReadOnlyList<string> Clash, IReadOnlyList<string> Reasons) Quickly(Brief brief, Book book, CancellationToken stop)
    {
        var asked = Asked(brief, book);
        var statements = Statements.Of(asked, book.Settle);
        var clash = SmallestClash.ByArithmetic(asked, book, statements);
        clash = clash.IsProven ? clash : SmallestClash.RoundMoments(asked, book, statements, stop);
        return (Words(statements, clash.Set), clash.Reasons);
    }

    /// <summary>What a draft says of the brief, up to its first routine: neither finds or proves what the other does not.</summary>
    private static Answer Drafted(Brief asked, Book book, ExplainOptions options, CancellationToken stop)
    {
        using var first = CancellationTokenSource.CreateLinkedTokenSource(stop);
        var drafted = Drafting.Draft(asked, book, new DraftOptions { Seed = options.Seed, Time = options.Time / 2 }, new FirstRoutine(first), first.Token);
        return drafted.Status switch
        {
            DraftStatus.Found => Answer.Solvable,
            DraftStatus.Impossible => Answer.Impossible,
            _ => Answer.Unknown,
        };
    }

    /// <summary>The brief with the ending that a draft would give it, so that it can be spoken of; what else it leaves open stays open, as for whoever changes the file.</summary>
    private static Brief Asked(Brief brief, Book book) => brief with { Ending = DraftBrief.Complete(brief, book).Ending };

    private static IReadOnlyList<string> Words(IReadOnlyList<Statement> statements, ulong set) => [.. Members(statements.Count, set).Select(i => statements[i].Words)];

    private static IEnumerable<int> Members(int count, ulong set) => Enumerable.Range(0, count).Where(i => (set & (1UL << i)) != 0);

    /// <summary>What has to be given up, and no more of each than need be; null where it cannot be written down as a brief.</summary>
    private static WayOut? Concession(Brief brief, IReadOnlyList<Statement> statements, ulong giveUp, Func<Brief, bool> helps, Func<Brief, bool> isReadable)
    {
        var changes = Members(statements.Count, giveUp).ToDictionary(i => i, i => (Words: statements[i].Instead, Asked: statements[i].Without));
        Brief Changed() => changes.OrderBy(c => c.Key).Aggregate(brief, (b, c) => c.Value.Asked(b));
        foreach (var i in changes.Keys.ToList())
        {
            var whole = changes[i];
            changes[i] = Least(statements[i].Gentler, asked =>
            {
                changes[i] = (string.Empty, asked);
                return helps(Changed());
            }) ?? whole;
        }

        return Changed() is var changed && isReadable(changed) ? new WayOut([.. changes.OrderBy(c => c.Key).Select(c => c.Value.Words)], changed) : null;
    }

    /// <summary>The first concession that helps: in longer and longer steps, then between the last two.</summary>
    private static (string Words, Func<Brief, Brief> Asked)? Least(IReadOnlyList<(string Words, Func<Brief, Brief> Asked)> gentler, Func<Func<Brief, Brief>, bool> helps)
    {
        var (without, with) = (-1, Math.Min(0, gentler.Count - 1));
        while (with >= 0 && !helps(gentler[with].Asked))
        {
            (without, with) = (with, with == gentler.Count - 1 ? -1 : Math.Min(gentler.Count - 1, (2 * with) + 1));
        }

        while (with - without > 1)
        {
            var middle = (with + without) / 2;
            (without, with) = helps(gentler[middle].Asked) ? (without, middle) : (middle, with);
        }

        return with < 0 ? null : gentler[with];
    }

    private static bool Harder(BriefOracle oracle, TimeSpan most)
    {
        oracle.Patience *= 2;
        return oracle.Patience < most;
    }

    /// <summary>Ends a draft at its first routine.</summary>
    private sealed class FirstRoutine(CancellationTokenSource ends) : IProgress<DraftProgress>
    {
        public void Report(DraftProgress value)
        {
            if (value.Best is not null)
            {
                ends.Cancel();
            }
        }
    }
}
