using Generator.Domain;
using Generator.Rules;
using Generator.Solver.Explaining;
using Generator.Solver.Questions;
using Generator.Solver.Refuting;
using Generator.Solver.Tests.Constructing;

namespace Generator.Solver.Tests.Travelling;

/// <summary>What is said of briefs over several marks, and what is not.</summary>
public class TravellingExplainTests
{
    [Fact]
    public void A_mark_farther_away_than_any_travel_move_goes_is_told_with_the_way()
    {
        var brief = Far();
        Assert.Equal(DraftStatus.Impossible, Drafts.Rounds(brief, 1, 1).Status);
        var explanation = Explain.Of(brief, Drafts.Book, new ExplainOptions { Time = Drafts.Hang, Patience = TimeSpan.FromSeconds(2) });
        Assert.Equal(Answer.Impossible, explanation.Brief);
        Assert.Equal(["the mark sink at 13.50 m, 4.00 m"], explanation.Clashes[0]);
        Assert.Contains("From stove to sink it is 10.50 m", explanation.Reasons[0], StringComparison.Ordinal);
        Assert.Contains(explanation.GiveUps, g => g.Words is ["the fight without the mark sink"] && !g.Brief.Travels);
    }

    /// <summary>Nobody goes there either, but a routine may end before: it is mended and completed.</summary>
    [Fact]
    public void It_is_said_of_drafts_alone() => Assert.Empty(Refutations.Reasons(new Scene(DraftBrief.Complete(Far(), Drafts.Book), Drafts.Book)));

    [Fact]
    public void What_can_be_drafted_is_never_said_to_be_impossible()
    {
        Assert.Equal(Answer.Solvable, Explain.Of(Fights.TwoMarks, Drafts.Book, new ExplainOptions { Time = Drafts.Hang }).Brief);
        Assert.All(Fights.All, r => Assert.False(new BriefOracle(Drafts.Book, 1, TimeSpan.FromSeconds(1), CancellationToken.None).IsProven(r.Brief)));
    }

    private static Brief Far() => Fights.TwoMarks with
    {
        Floor = Fights.TwoMarks.Floor with { Width = new(1600), Depth = new(800) },
        Marks = [Fights.TwoMarks.Marks[0], new HeroMark("sink", new(1350), new(400))],
    };
}
