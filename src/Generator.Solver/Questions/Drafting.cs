using System.Diagnostics;
using Generator.Domain;
using Generator.Library;
using Generator.Rules;
using Generator.Solver.Refuting;
using Generator.Solver.Constructing;
using Generator.Solver.Explaining;
using Generator.Solver.Proving;
using Generator.Solver.Rolling;

namespace Generator.Solver.Questions;

/// <summary>Turns a brief into an audited routine.</summary>
public static class Drafting
{
    /// <summary>Drafts a routine; whatever is returned as found has passed the audit without an unsafe or broken finding.</summary>
    /// <param name="brief">What is asked for.</param>
    /// <param name="book">The library.</param>
    /// <param name="options">Seed, time, and whether CP-SAT is to work alone.</param>
    /// <param name="progress">Told of every better routine.</param>
    /// <param name="stop">Stops the search; the best routine so far is returned.</param>
    public static DraftResult Draft(Brief brief, Book book, DraftOptions options, IProgress<DraftProgress>? progress = null, CancellationToken stop = default)
    {
        if (options.Cold)
        {
            SeveralMarksException.Refuse(brief);
        }

        var clock = Stopwatch.StartNew();
        var complete = DraftBrief.Complete(brief, book);
        var scene = new Scene(complete, book);
        if ((Sides(options) && !brief.Travels ? Refutations.Plainly(scene) : Refutations.First(scene)) is not null)
        {
            return Impossible(brief, book, clock, stop);
        }

        using var ends = CancellationTokenSource.CreateLinkedTokenSource(stop);
        ends.CancelAfter(options.Time);
        using var desk = new DraftDesk(scene, clock, progress, ends);
        var sources = Sources(brief.Travels ? options with { Rounds = options.Rounds ?? int.MaxValue } : options);
        var tasks = sources.Select(s => Lane.Start(() => Work(s, desk, options, ends))).ToArray();
        var outcomes = tasks.Select(t => t.GetAwaiter().GetResult()).ToArray();
        var result = desk.Result([.. sources.Zip(outcomes, (source, end) => (source.Name, end))]);
        return result.Status == DraftStatus.Impossible ? Impossible(brief, book, clock, stop) : result;
    }

    private static DraftResult Impossible(Brief brief, Book book, Stopwatch clock, CancellationToken stop)
    {
        var (clash, reasons) = Explain.Quickly(brief, book, stop);
        return new DraftResult
        {
            Status = DraftStatus.Impossible,
            Clash = clash.Count > 0 ? clash : ["The statements of the brief taken together: no order of comings, falls and returns fits them all. \"generator explain\" finds which of them clash."],
            Reasons = reasons,
            Elapsed = clock.Elapsed,
        };
    }

    /// <summary>The parts of the engine that work side by side; where what comes out must not hang on which is sooner, one alone.</summary>
    private static IRoutineSource[] Sources(DraftOptions options) => options.Rounds is not null
        ? [new ConstructivePass()]
        : options.Cold
        ? [new RollingSource(), new ProofSource()]
        : [new ConstructivePass(), new RollingSource(), new ProofSource(), new RefutingSource()];

    /// <summary>Several parts work side by side, one of which argues against the brief meanwhile.</summary>
    private static bool Sides(DraftOptions options) => options is { Rounds: null, Cold: false };

    /// <summary>Lets one part of the engine work; a fault in it stops the others, so that it is told at once.</summary>
    private static SourceEnd Work(IRoutineSource source, DraftDesk desk, DraftOptions options, CancellationTokenSource ends)
    {
        var sound = false;
        try
        {
            var end = source.Run(desk.Scene, options, (routine, verdict) => desk.Take(source.Name, routine, verdict), desk.InHand, ends.Token);
            sound = true;
            if (end.Impossible)
            {
                ends.Cancel();
            }

            return end;
        }
        finally
        {
            if (!sound)
            {
                ends.Cancel();
            }
        }
    }
}
