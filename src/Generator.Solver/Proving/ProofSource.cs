using Generator.Domain;
using Generator.Rules;
using Generator.Rules.Judging;

namespace Generator.Solver.Proving;

/// <summary>
/// The part of the engine that only says no: once the others have found nothing for a while, it looks whether any plan of comings, falls and
/// returns fits the brief at all, at first round the hero moments only.
/// </summary>
public sealed class ProofSource : IRoutineSource
{
    private static readonly TimeSpan BeforeMoments = TimeSpan.FromSeconds(0.5);

    private static readonly TimeSpan BeforeWhole = TimeSpan.FromSeconds(1);

    public string Name => "proof";

    public SourceEnd Run(Scene scene, DraftOptions options, Action<Routine, Verdict> found, CancellationToken inHand, CancellationToken stop)
    {
        using var ends = CancellationTokenSource.CreateLinkedTokenSource(stop, inHand);
        var prover = new Prover();
        if (!Patience.Wait(scene, BeforeMoments, ends.Token)
            || (prover.RoundMoments(scene, ends.Token) != Fit.Impossible && (ends.Token.WaitHandle.WaitOne(BeforeWhole) || prover.Whole(scene, ends.Token) != Fit.Impossible)))
        {
            return SourceEnd.Nothing;
        }

        return new SourceEnd { Impossible = true };
    }
}
