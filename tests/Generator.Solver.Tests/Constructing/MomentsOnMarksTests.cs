using Generator.Domain;
using Generator.Rules;
using Generator.Solver.Constructing;

namespace Generator.Solver.Tests.Constructing;

/// <summary>Hero moments that no count binds, but a table that stands near one of three marks.</summary>
public class MomentsOnMarksTests
{
    private static readonly Brief Empty = new()
    {
        Length = new Length(60, null, 4),
        Floor = new FloorPlan { Width = new(1400), Depth = new(800), MarkX = new(300), MarkY = new(400) },
        Marks = [new HeroMark("stove", new(300), new(400)), new HeroMark("sink", new(700), new(400)), new HeroMark("door", new(1100), new(400))],
        Attackers = [new AttackerPart { Name = "Bruno" }, new AttackerPart { Name = "Wanda" }],
    };

    /// <summary>It takes time to bring somebody before the table, and once the hero has gone on it is too late.</summary>
    [Theory]
    [InlineData(0)]
    [InlineData(1)]
    [InlineData(2)]
    public void It_is_owed_while_the_hero_still_stays_there(int mark)
    {
        var aims = Aims(mark, null);
        var moment = Assert.Single(aims.Moments);
        Assert.Equal((mark, mark), moment.Marks);
        var (comes, goes) = (mark == 0 ? 0 : aims.TravelDue(mark), mark == 2 ? aims.Total : aims.TravelsFrom(mark + 1));
        Assert.InRange(moment.Due, comes, (comes + goes) / 2);
    }

    [Fact]
    public void Counts_that_are_written_say_when_themselves() => Assert.Equal(80, Assert.Single(Aims(0, new HalfCounts(80)).Moments).Earliest);

    private static Aims Aims(int mark, HalfCounts? earliest)
    {
        var place = Empty.Marks[mark];
        var table = new Obstacle("table", new(place.X.Value - 60), new(place.Y.Value + 130), new(120), new(80)) { Kind = "table", Rated = true, Padded = true };
        var brief = Empty with
        {
            Floor = Empty.Floor with { Obstacles = [table] },
            Moments = [new Moment([new MomentMove("head-to-table", null, null, null)], earliest, null)],
        };
        return new Ground(new Scene(DraftBrief.Complete(brief, Drafts.Book), Drafts.Book)).Aims;
    }
}
