using Generator.Domain;
using Generator.Rules;
using Generator.Rules.Judging;

namespace Generator.Solver.Rolling;

/// <summary>
/// The rolling loop as a part of the engine: one attempt after another, each by its own seed. Beside the constructive pass it waits a little and
/// steps in only where that has found nothing, and until it has.
/// </summary>
public sealed class RollingSource : IRoutineSource
{
    private static readonly TimeSpan Least = TimeSpan.FromSeconds(2);

    public string Name => "rolling CP-SAT";

    public SourceEnd Run(Scene scene, DraftOptions options, Action<Routine, Verdict> found, CancellationToken inHand, CancellationToken stop)
    {
        using var ends = CancellationTokenSource.CreateLinkedTokenSource(stop, options.Cold ? CancellationToken.None : inHand);
        if (!options.Cold && !Patience.Wait(scene, Least, ends.Token))
        {
            return SourceEnd.Nothing;
        }

        var loop = new RollingLoop(scene);
        var (best, least) = (int.MaxValue, BriefBound.Of(scene));
        for (var attempt = 0; !ends.IsCancellationRequested; attempt++)
        {
            if (loop.Attempt(unchecked((options.Seed * 31) + attempt) & int.MaxValue, ends.Token) is not { } routine)
            {
                continue;
            }

            var verdict = Audit.Of(scene, routine);
            if (verdict.Points < best)
            {
                best = verdict.Points;
                found(routine, verdict);
            }

            if (best <= least)
            {
                break;
            }
        }

        return SourceEnd.Nothing;
    }
}
