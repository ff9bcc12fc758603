using Generator.Domain;
using Generator.Library.Files;
using Generator.Library.Reading;
using Generator.Solver.Revising;
using Generator.Solver.Tests.Constructing;
using Generator.Testing;

namespace Generator.Solver.Tests.Revising;

/// <summary>Marks of a walk are moved, and no move changes.</summary>
public class MarkNewsTests
{
    private static readonly Routine Taught = RoutineReader.Parse(new SourceFile("taught.json", Walk.Json), Drafts.Book).Value!;

    private static readonly Bearing Three = new(6);

    [Fact]
    public void Nothing_is_elsewhere_where_no_mark_is()
    {
        var result = Revised(Taught.Brief);
        Assert.True(result.Teaching!.Marks.IsNothing);
        Assert.Equal(0, result.Teaching.Cost);
    }

    [Fact]
    public void The_mark_to_which_the_hero_goes_is_20_cm_nearer()
    {
        var result = Revised(Moved(0, -20));
        Assert.True(result.Revised!.Change.IsNothing);
        var mark = Assert.Single(result.Teaching!.Marks.Marks);
        Assert.Equal((550, 530, 1), (mark.Was.X.Value, mark.Is.X.Value, Assert.Single(mark.Moves)));
        Assert.Equal([((Three, new Centimetres(250)), (Three, new Centimetres(230))), ((Three, new Centimetres(200)), (Three, new Centimetres(220)))], result.Teaching.Marks.Ways.Select(w => (w.Was, w.Is)));
        Assert.Equal([-1, 0], result.Teaching.Marks.Ways.Select(w => Assert.Single(w.Who)));
        Assert.Equal([1, 1], result.Teaching.People.Select(p => p.Ways));
        Assert.Equal(2, result.Teaching.Cost);
    }

    /// <summary>Distances are from the first mark: who opens stands 20 cm farther on as well, and at the sink as much nearer.</summary>
    [Fact]
    public void The_mark_on_which_the_hero_begins_is_20_cm_farther_on()
    {
        var news = Revised(Moved(20, 0)).Teaching!.Marks;
        Assert.Equal("stove", Assert.Single(news.Marks).Is.Name);
        Assert.Equal([(250, 230), (200, 220)], news.Ways.Select(w => (w.Was.Way.Value, w.Is.Way.Value)));
    }

    /// <summary>The whole fight stands elsewhere, and nobody has another way in it.</summary>
    [Fact]
    public void Marks_that_move_by_the_same_step_leave_all_ways()
    {
        var result = Revised(Moved(-20, -20));
        Assert.Equal(["stove", "sink"], result.Teaching!.Marks.Marks.Select(m => m.Is.Name));
        Assert.Empty(result.Teaching.Marks.Ways);
        Assert.Equal(0, result.Teaching.Cost);
    }

    private static Brief Moved(int first, int second)
    {
        var (floor, marks) = (Taught.Brief.Floor, Taught.Brief.Marks);
        HeroMark By(HeroMark mark, int step) => mark with { X = new(mark.X.Value + step) };
        return Taught.Brief with { Floor = floor with { MarkX = new(floor.MarkX.Value + first) }, Marks = [By(marks[0], first), By(marks[1], second)] };
    }

    private static ReviseResult Revised(Brief brief) => Revise.Of(Taught, brief, Drafts.Book, new ReviseOptions { Time = Drafts.Hang });
}
