using Generator.Domain;
using Generator.Rules;
using Generator.Rules.Judging;

namespace Generator.Solver.Proving;

/// <summary>
/// The part of the engine that only says no: once the others have found nothing for a while, it looks whether any plan of comings, falls and
/// returns fits the brief at all.
/// </summary>
public sealed class ProofSource : IRoutineSource
{
    private static readonly TimeSpan Least = TimeSpan.FromSeconds(1.5);

    public string Name => "proof";

    public SourceEnd Run(Scene scene, DraftOptions options, Action<Routine, Verdict> found, CancellationToken inHand, CancellationToken stop)
    {
        using var ends = CancellationTokenSource.CreateLinkedTokenSource(stop, inHand);
        if (!Patience.Wait(scene, Least, ends.Token) || new Prover().Ask(scene, ends.Token) != Fit.Impossible)
        {
            return SourceEnd.Nothing;
        }

        return new SourceEnd
        {
            Impossible = true,
            Clash = ["The statements of the brief taken together: no order of comings, falls and returns fits them all. \"generator explain\" finds which of them clash."],
        };
    }
}
