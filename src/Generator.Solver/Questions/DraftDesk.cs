using System.Diagnostics;
using Generator.Domain;
using Generator.Rules;
using Generator.Rules.Judging;
using Generator.Solver.Constructing;

namespace Generator.Solver.Questions;

/// <summary>Where the parts of the engine hand in routines: keeps the best, tells of progress, and stops everybody when it cannot be bettered.</summary>
internal sealed class DraftDesk(Scene scene, Stopwatch clock, IProgress<DraftProgress>? progress, CancellationTokenSource ends) : IDisposable
{
    private readonly Lock door = new();
    private readonly CancellationTokenSource inHand = new();
    private readonly int least = BriefBound.Of(scene);
    private Verdict? verdict;
    private string source = string.Empty;
    private TimeSpan? firstAfter;

    public Scene Scene => scene;

    /// <summary>Cancelled once the constructive pass has a routine.</summary>
    public CancellationToken InHand => inHand.Token;

    /// <summary>The best routine so far.</summary>
    public Routine? Best { get; private set; }

    public void Dispose() => inHand.Dispose();

    /// <summary>Takes a routine in when it is better than the best.</summary>
    /// <exception cref="DisagreementException">The audit forbids it: a fault of the program.</exception>
    public void Take(string from, Routine routine, Verdict judged)
    {
        if (!judged.IsClean)
        {
            throw new DisagreementException($"The {from} handed in a routine that the audit forbids: {judged.Grave[0].Message}");
        }

        lock (door)
        {
            if (verdict is not null && verdict.Points <= judged.Points)
            {
                return;
            }

            firstAfter ??= clock.Elapsed;
            (Best, verdict, source) = (routine, judged, from);
            progress?.Report(new DraftProgress(clock.Elapsed, judged.Points, least, from) { Best = routine });
            if (from == ConstructivePass.Source)
            {
                inHand.Cancel();
            }

            if (judged.Points <= least)
            {
                ends.Cancel();
            }
        }
    }

    /// <summary>What came of it all.</summary>
    public DraftResult Result(IReadOnlyList<(string Name, SourceEnd End)> outcomes)
    {
        lock (door)
        {
            if (Best is null)
            {
                return new DraftResult
                {
                    Status = outcomes.Any(o => o.End.Impossible) ? DraftStatus.Impossible : DraftStatus.OutOfTime,
                    Elapsed = clock.Elapsed,
                };
            }

            if (outcomes.Any(o => o.End.Impossible))
            {
                throw new DisagreementException("A routine that passes the audit was found for a brief that is proven impossible.");
            }

            var bound = outcomes.Select(o => o.End.Bound).Append(least).Max();
            return new DraftResult
            {
                Status = DraftStatus.Found,
                Routine = Best,
                Verdict = verdict,
                Standing = verdict!.Points == 0 ? Standing.Perfect : verdict.Points <= bound ? Standing.ProvenBest : Standing.BestFound,
                Bound = Math.Min(bound, verdict.Points),
                FirstAfter = firstAfter,
                Elapsed = clock.Elapsed,
                Source = source,
                Reproducible = outcomes.Any(o => o.Name == source && o.End.ByItself),
            };
        }
    }
}
