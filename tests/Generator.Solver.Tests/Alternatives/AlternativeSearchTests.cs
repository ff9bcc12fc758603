using Generator.Domain;
using Generator.Rules;
using Generator.Rules.Judging;
using Generator.Solver.Alternatives;
using Generator.Solver.Tests.Constructing;

namespace Generator.Solver.Tests.Alternatives;

public class AlternativeSearchTests
{
    private static readonly AlternativesOptions Options = new() { Number = 3, Time = Drafts.Hang };

    [Theory]
    [InlineData(1)]
    [InlineData(4)]
    public void Alternatives_keep_the_moment_differ_enough_and_pass_the_audit(int seed)
    {
        var routine = Drafts.OfPlain(seed);
        var brief = routine.Brief with { Moments = [Solver.Reworking.Kept.Run(routine, 4, 5, null, null)] };
        var result = AlternativeSearch.Of(brief, Drafts.Book, Options with { Seed = seed }, [routine]);
        Assert.Equal(3, result.Found.Count);
        var best = result.Found.Min(f => f.Verdict.Points);
        foreach (var one in result.Found)
        {
            Assert.True(Audit.Of(new Scene(one.Routine.Brief, Drafts.Book), one.Routine).IsClean);
            Assert.Single(one.Shape.Order);
            Assert.Equal(Kept(routine, 4), Kept(one.Routine, one.Shape.Order[0].First));
            Assert.Equal(Kept(routine, 5), Kept(one.Routine, one.Shape.Order[0].First + 1));
            Assert.True(one.Verdict.Points <= best + Options.Slack);
            Assert.All(result.Found.Where(o => o != one), o => Assert.True(Shape.Difference(one.Shape, o.Shape) >= 30));
            Assert.True(Shape.Difference(one.Shape, Shape.Of(result.Scene, routine)) >= 30);
        }
    }

    [Fact]
    public void A_shift_by_a_count_is_no_difference()
    {
        var routine = Drafts.OfPlain(2);
        var scene = new Scene(routine.Brief, Drafts.Book);
        var later = routine with { Moves = [.. routine.Moves.Select(m => m with { Start = m.Start + new HalfCounts(2) })] };
        Assert.Equal(0, Shape.Difference(Shape.Of(scene, routine), Shape.Of(scene, later)));
    }

    [Fact]
    public void Impossible_is_told_as_such_and_a_stop_gives_what_there_is()
    {
        var clash = AlternativeSearch.Of(Drafts.Plain() with { Ending = new Ending(["Bruno"], "Wanda") }, Drafts.Book, Options, []);
        Assert.NotEmpty(clash.Clash);
        using var stop = new CancellationTokenSource();
        stop.Cancel();
        Assert.Empty(AlternativeSearch.Of(Drafts.Plain(), Drafts.Book, Options, [], null, stop.Token).Found);
    }

    private static (int? Attacker, string? Attack, string? Technique, string? Reaction) Kept(Routine routine, int move) =>
        (routine.Moves[move].Attacker, routine.Moves[move].Attack, routine.Moves[move].Technique, routine.Moves[move].Reaction);
}
