using System.Diagnostics;
using Generator.Domain;
using Generator.Library;
using Generator.Rules;
using Generator.Solver.Refuting;
using Generator.Rules.Judging;
using Generator.Solver.Constructing;
using Generator.Solver.Proving;

namespace Generator.Solver.Explaining;

/// <summary>
/// What is known of a brief: solvable once a quick draft has passed the audit, impossible once arithmetic or
/// a <see cref="Prover"/> proves it. A search that finds nothing proves nothing.
/// </summary>
/// <param name="book">The library.</param>
/// <param name="seed">For the quick drafts.</param>
/// <param name="patience">How long a draft is tried at first.</param>
/// <param name="stop">Ends it early: unknown.</param>
internal sealed class BriefOracle(Book book, int seed, TimeSpan patience, CancellationToken stop)
{
    private static readonly int[] Widths = [6, 10, 16, 24, 8];

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
        ends.CancelAfter(Patience);
        var ground = new Ground(scene, [.. Enumerable.Repeat(true, scene.Cast)]);
        var proof = Lane.Start(() => Proven(scene, ends));
        var other = Lane.Start(() => Found(ground, 1, ends));
        var found = Found(ground, 0, ends);
        found |= other.GetAwaiter().GetResult();
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

    private bool Found(Ground ground, int lane, CancellationTokenSource ends)
    {
        for (var round = 0; !ends.IsCancellationRequested; round++)
        {
            var dice = new Dice(Dice.SeedOf(seed, lane, round));
            var width = ground.Aims.Width(Widths[(round + lane) % Widths.Length]);
            if (OpeningPlaces.Choose(ground, dice) is not { } placements)
            {
                continue;
            }

            using var first = CancellationTokenSource.CreateLinkedTokenSource(ends.Token);
            var beam = new Beam(ground, dice, width, Beam.Noise(dice), int.MaxValue);
            if (beam.Run(ground.Openings(placements), _ => first.Cancel(), first.Token) is { } finish && Audit.Of(ground.Scene, Draftsman.RoutineOf(ground.Scene, finish)).IsClean)
            {
                ends.Cancel();
                return true;
            }
        }

        return false;
    }
}
