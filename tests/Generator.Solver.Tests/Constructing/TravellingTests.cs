using Generator.Domain;
using Generator.Domain.Sketches;
using Generator.Rules;
using Generator.Rules.Judging;
using Generator.Rules.Replaying;
using Generator.Solver.Alternatives;
using Generator.Solver.Completing;
using Generator.Solver.Explaining;
using Generator.Solver.Questions;
using Generator.Solver.Repairing;
using Generator.Solver.Revising;

namespace Generator.Solver.Tests.Constructing;

/// <summary>Drafts over several marks, and the questions that are refused there.</summary>
public sealed class TravellingTests
{
    private static readonly Brief TwoMarks = new()
    {
        Length = new Length(32, null, 4),
        Floor = new FloorPlan { MarkX = new(300), MarkY = new(400) },
        Marks = [new HeroMark("stove", new(300), new(400)), new HeroMark("sink", new(550), new(400))],
        Attackers = [new AttackerPart { Name = "Bruno" }, new AttackerPart { Name = "Wanda" }],
    };

    private static DraftResult Drafted(int seed) => Drafting.Draft(TwoMarks, Drafts.Book, new DraftOptions { Seed = seed, Rounds = 12, Time = Drafts.Hang });

    [Fact]
    public void A_draft_visits_the_marks_in_their_order_and_passes_the_audit()
    {
        var result = Drafted(1);
        Assert.Equal(DraftStatus.Found, result.Status);
        var scene = new Scene(result.Routine!.Brief, Drafts.Book);
        Assert.True(Audit.Of(scene, result.Routine).IsClean);
        var steps = Replay.Of(scene, result.Routine);
        Assert.Equal([1], steps.Where(s => s.Travels >= 0).Select(s => s.Travels));
        Assert.Equal(1, steps[^1].After.Mark);
        Assert.InRange(steps.Count(s => s.Before.Mark == 1), 3, steps.Count - 3);
    }

    [Fact]
    public void The_same_brief_and_seed_give_the_same_routine()
    {
        var (one, other) = (Drafted(3), Drafted(3));
        Assert.Equal(one.Routine?.Moves, other.Routine?.Moves);
    }

    [Fact]
    public void No_draft_on_one_mark_has_a_travel_move() =>
        Assert.All(Enumerable.Range(1, 6), seed => Assert.All(Drafts.OfSmall(seed).Routine?.Moves ?? [], m => Assert.True(m.Technique is null || Drafts.Book.Technique(m.Technique).Travel is null)));

    [Fact]
    public void What_cannot_be_answered_yet_is_refused_and_says_so()
    {
        var routine = new Routine
        {
            Brief = TwoMarks,
            Placements = [new Placement(default, new(300), HalfCounts.Zero), new Placement(new Bearing(6), new(300), HalfCounts.Zero)],
            Moves = [new Move { Start = HalfCounts.Zero, Technique = "walks-across", To = 1 }],
        };
        Action[] asked =
        [
            () => Complete.Of(Sketch.Of(routine), Drafts.Book, new CompleteOptions()),
            () => Repair.Of(routine, Drafts.Book, new RepairOptions()),
            () => Revise.Of(routine, routine.Brief, Drafts.Book, new ReviseOptions()),
            () => AlternativeSearch.Of(TwoMarks, Drafts.Book, new AlternativesOptions(), []),
            () => Explain.Of(TwoMarks, Drafts.Book, new ExplainOptions()),
            () => Drafting.Draft(TwoMarks, Drafts.Book, new DraftOptions { Cold = true }),
        ];
        Assert.All(asked, ask => Assert.Contains("\n  Maybe ", Assert.Throws<SeveralMarksException>(ask).Message, StringComparison.Ordinal));
    }
}
