using Generator.Domain;
using Generator.Rules;
using Generator.Rules.Judging;
using Generator.Rules.Replaying;
using Generator.Solver.Questions;
using Generator.Solver.Tests.Travelling;

namespace Generator.Solver.Tests.Constructing;

/// <summary>Drafts over several marks.</summary>
public sealed class TravellingTests
{
    private static DraftResult Drafted(int seed) => Drafts.Rounds(Fights.TwoMarks, seed, 12);

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

    /// <summary>A name for the only mark makes no other fight.</summary>
    [Fact]
    public void A_fight_on_one_mark_that_has_a_name_is_the_one_on_the_mark_of_the_floor()
    {
        var plain = Drafts.Plain();
        var named = plain with { Marks = [new HeroMark("well", plain.Floor.MarkX, plain.Floor.MarkY)] };
        var (one, other) = (Drafts.Rounds(plain, 5, 2).Routine!, Drafts.Rounds(named, 5, 2).Routine!);
        Assert.Equal(one.Moves, other.Moves);
        Assert.Equal(one.Placements, other.Placements);
    }

    [Fact]
    public void To_cp_sat_alone_it_is_refused_and_says_so() =>
        Assert.Contains("\n  Maybe ", Assert.Throws<SeveralMarksException>(() => Drafting.Draft(Fights.TwoMarks, Drafts.Book, new DraftOptions { Cold = true })).Message, StringComparison.Ordinal);
}
