using Generator.Domain;
using Generator.Rules;
using Generator.Rules.Judging;
using Generator.Solver.Repairing;
using Generator.Solver.Reworking;
using Generator.Solver.Tests.Constructing;
using Generator.Testing;
using Xunit.Abstractions;

namespace Generator.Solver.Tests.Repairing;

/// <summary>What a repair gives up where there is a choice: how a blow is sold before the blow, where somebody comes from before what is done with them.</summary>
public sealed class MildRepairTests(ITestOutputHelper told)
{
    private const int Drafted = 2;

    [Fact]
    public void Where_another_reaction_does_every_technique_stays()
    {
        var (repaired, byReaction) = (0, 0);
        for (var seed = 1; seed <= Drafted; seed++)
        {
            var clean = Drafts.Rounds(Drafts.Plain(), seed, 2).Routine!;
            for (var at = seed - 1; at < clean.Moves.Count; at += 2)
            {
                if (WithWrongReaction(clean, at, seed) is { } broken)
                {
                    // Nothing milder is looked for; where it gives up a technique it goes on until everything has been tried.
                    using var stop = new CancellationTokenSource();
                    var answer = Repair.Of(broken, Drafts.Book, new RepairOptions { Time = Drafts.Hang }, r => StopIf(IsMild(r), stop), stop.Token).Repaired!;
                    Assert.True(IsMild(answer), $"seed {seed}, move {at + 1}: {broken.Moves[at]} becomes {answer.Routine.Moves[at]}");
                    repaired++;
                    byReaction += answer.Change.Changed;
                }
            }
        }

        told.WriteLine($"{repaired} repaired, {byReaction} by another reaction");
        Assert.InRange(byReaction, 6, repaired);
    }

    /// <summary>One move at most is another, and its technique stays.</summary>
    private static bool IsMild(Reworked answer) => answer.Change.Changed <= 1 && Mildness.Of(answer) % Mildness.OneMove == 0;

    private static void StopIf(bool enough, CancellationTokenSource stop)
    {
        if (enough)
        {
            stop.Cancel();
        }
    }

    /// <summary>The first reaction after a random one that leaves something unsafe or broken; null for none.</summary>
    private static Routine? WithWrongReaction(Routine clean, int at, int seed)
    {
        var (scene, reactions) = (new Scene(clean.Brief, Drafts.Book), Drafts.Book.Reactions);
        var first = new Chance((100 * seed) + at).Whole(0, reactions.Count - 1);
        return clean.Moves[at].Reaction is null ? null : Enumerable.Range(first, reactions.Count)
            .Select(r => clean with { Moves = [.. clean.Moves.Select((m, i) => i == at ? m with { Reaction = reactions[r % reactions.Count].Id } : m)] })
            .FirstOrDefault(r => !Audit.Of(scene, r).IsClean);
    }
}
