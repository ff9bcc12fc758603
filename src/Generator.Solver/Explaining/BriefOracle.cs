using System.Diagnostics;
using Generator.Domain;
using Generator.Library;
using Generator.Rules;
using Generator.Solver.Constructing;
using Generator.Solver.Proving;
using Generator.Solver.Refuting;

namespace Generator.Solver.Explaining;

/// <summary>
/// What is known of a brief: solvable once a draft has passed the audit, impossible once arithmetic or a <see cref="Prover"/> proves it. A search that finds nothing proves nothing.
/// <para>It drafts as a draft does, with the same seed: whoever drafts what was found to be solvable finds the routine that was found here.</para>
/// </summary>
/// <param name="book">The library.</param>
/// <param name="seed">For the drafts.</param>
/// <param name="patience">How long a draft is tried at first; longer where a busy machine leaves it little of that.</param>
/// <param name="stop">Ends it early: unknown.</param>
internal sealed class BriefOracle(Book book, int seed, TimeSpan patience, CancellationToken stop)
{
    /// <summary>How long a draft is tried now: whoever asks again after all else is known may wait longer.</summary>
    public TimeSpan Patience { get; set; } = patience;

    /// <summary>What takes no search at all: arithmetic, and a look at the moves round the hero moments. False means as good as nothing.</summary>
    public bool IsProven(Brief brief) => Proven(new Scene(DraftBrief.Complete(brief, book), book));

    public Answer Ask(Brief brief)
    {
        var scene = new Scene(DraftBrief.Complete(brief, book), book);
        if (Proven(scene))
        {
            return Answer.Impossible;
        }

        using var ends = CancellationTokenSource.CreateLinkedTokenSource(stop);
        var over = Lane.Start(() => Over(ends));
        var proof = Lane.Start(() => Proven(scene, ends));
        var found = Found(scene, ends);
        ends.Cancel();
        over.GetAwaiter().GetResult();
        var impossible = proof.GetAwaiter().GetResult();
        if (found && impossible)
        {
            throw new DisagreementException("A routine that passes the audit was found for a brief that is proven impossible.");
        }

        return found ? Answer.Solvable : impossible ? Answer.Impossible : Answer.Unknown;
    }

    private bool Proven(Scene scene)
    {
        if (Refutations.First(scene) is not null)
        {
            return true;
        }

        using var ends = CancellationTokenSource.CreateLinkedTokenSource(stop);
        ends.CancelAfter(2 * Patience);
        return new Prover().RoundMoments(scene, ends.Token) == Fit.Impossible;
    }

    /// <summary>Proven impossible while no routine was found. Most briefs that can be drafted are so before the proof begins.</summary>
    private bool Proven(Scene scene, CancellationTokenSource ends)
    {
        // What the drafts get before the proof takes its share of the machine.
        if (ends.Token.WaitHandle.WaitOne(Patience / 2) || new Prover().Whole(scene, ends.Token) != Fit.Impossible)
        {
            return false;
        }

        ends.Cancel();
        return true;
    }

    /// <summary>Ends what has had as much work as <see cref="Patience"/> is on a machine with nothing else to do.</summary>
    private bool Over(CancellationTokenSource ends)
    {
        if (Solver.Patience.WaitAtLeast(Patience, ends.Token))
        {
            ends.Cancel();
        }

        return true;
    }

    private bool Found(Scene scene, CancellationTokenSource ends)
    {
        var found = false;
        new ConstructivePass().Run(
            scene,
            new DraftOptions { Seed = seed },
            (_, verdict) =>
            {
                found |= verdict.IsClean;
                ends.Cancel();
            },
            CancellationToken.None,
            ends.Token);
        return found;
    }
}
