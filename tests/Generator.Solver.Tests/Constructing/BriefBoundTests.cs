using Generator.Domain;
using Generator.Rules;
using Generator.Solver.Questions;

namespace Generator.Solver.Tests.Constructing;

public class BriefBoundTests
{
    /// <summary>A hip throw has weight 5; an even arc allows 4 everywhere, a rising one 3, 4 and 5 in its thirds.</summary>
    [Theory]
    [InlineData(Arc.Even, 20, 40, 1)]
    [InlineData(Arc.Rising, 0, 10, 2)]
    [InlineData(Arc.Rising, 0, 20, 1)]
    [InlineData(Arc.Rising, 0, 40, 0)]
    [InlineData(Arc.TwoPeaks, 10, 18, 0)]
    [InlineData(Arc.Free, 0, 10, 0)]
    public void A_moment_too_heavy_for_where_it_stands_costs_its_excess(Arc arc, int earliest, int latest, int points)
    {
        var brief = Drafts.Plain(new Moment([new MomentMove("hip-throw", "Bruno", null, null)], new HalfCounts(earliest), new HalfCounts(latest))) with { Arc = arc };
        Assert.Equal(points, BriefBound.Of(new Scene(DraftBrief.Complete(brief, Drafts.Book), Drafts.Book)));
    }

    [Fact]
    public void A_draft_that_reaches_the_bound_is_proven_best()
    {
        var brief = Drafts.Plain(new Moment([new MomentMove("hip-throw", "Bruno", null, null)], new HalfCounts(20), new HalfCounts(40))) with { Arc = Arc.Even };
        var result = Drafts.Draft(brief);
        Assert.Equal(Standing.ProvenBest, result.Standing);
        Assert.Equal(1, result.Verdict!.Points);
        Assert.True(result.Reproducible);
    }
}
