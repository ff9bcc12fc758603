using Generator.Domain;
using Generator.Rules;
using Generator.Rules.Judging;

namespace Generator.Solver.Rolling;

/// <summary>
/// The rolling loop as a part of the engine: one attempt after another, each by its own seed. Beside the constructive pass it waits a little and
/// steps in only where that has found nothing: both at once would only take the machine from one another.
/// </summary>
public sealed class RollingSource : IRoutineSource
{
    private static readonly TimeSpan Patience = TimeSpan.FromSeconds(2);

    public string Name => "rolling CP-SAT";

    public SourceEnd Run(Scene scene, DraftOptions options, Func<Routine?> plan, Action<Routine, Verdict> found, CancellationToken stop)
    {
        if (!options.Cold && (stop.WaitHandle.WaitOne(Patience) || plan() is not null))
        {
            return SourceEnd.Nothing;
        }

        var loop = new RollingLoop(scene);
        var (best, least) = (int.MaxValue, BriefBound.Of(scene));
        for (var attempt = 0; !stop.IsCancellationRequested; attempt++)
        {
            if (loop.Attempt(unchecked((options.Seed * 31) + attempt) & int.MaxValue, stop) is not { } routine)
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
