using Generator.Domain;
using Generator.Rules;
using Generator.Rules.Judging;

namespace Generator.Solver.Refuting;

/// <summary>
/// The part of the engine that argues against the brief. Working out what the library leaves possible takes as long as half of a draft of 24 moves, so it begins
/// where nothing has been found for a moment.
/// </summary>
internal sealed class RefutingSource : IRoutineSource
{
    private static readonly TimeSpan Least = TimeSpan.FromMilliseconds(250);

    private static readonly TimeSpan ForEachMove = TimeSpan.FromMilliseconds(8);

    public string Name => "refuting";

    public SourceEnd Run(Scene scene, DraftOptions options, Action<Routine, Verdict> found, CancellationToken inHand, CancellationToken stop)
    {
        using var ends = CancellationTokenSource.CreateLinkedTokenSource(stop, inHand);
        return Patience.Wait(Least + (Patience.Moves(scene.Brief) * ForEachMove), ends.Token) && Refutations.First(scene) is not null ? new SourceEnd { Impossible = true } : SourceEnd.Nothing;
    }
}
