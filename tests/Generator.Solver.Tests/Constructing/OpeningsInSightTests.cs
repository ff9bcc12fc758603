using Generator.Domain;
using Generator.Rules;
using Generator.Solver.Constructing;

namespace Generator.Solver.Tests.Constructing;

/// <summary>Whose hero moment a camera sees from some bearings only mostly opens on one of them.</summary>
public sealed class OpeningsInSightTests
{
    private const int Openings = 400;

    [Theory]
    [InlineData("uppercut", true)]
    [InlineData("shin-kick", false)]
    public void Openings_favour_bearings_at_which_the_moment_is_seen(string technique, bool matters)
    {
        var ground = GroundOf(technique, null);
        Assert.Null(ground.Aims.FromSight[0]);
        Assert.Equal(matters, ground.Aims.FromSight[1] is not null);
        var dice = new Dice(5);
        var bearings = Enumerable.Range(0, Openings).Select(_ => OpeningPlaces.Choose(ground, dice)![1].Bearing.HalfHours).ToList();
        Assert.True(bearings.Distinct().Count() >= 4, "they all open alike");

        // An uppercut is seen within one half hour of the line: from 6 of 24 bearings, which chance alone would hit in a quarter of the cases.
        var inSight = bearings.Count(b => new Bearing(b).Apart(new Bearing(18)) is <= 1 or >= 11);
        Assert.InRange(inSight, matters ? 0.7 * Openings : 0, (matters ? 0.95 : 0.4) * Openings);
    }

    [Fact]
    public void Where_the_brief_says_where_somebody_opens_they_do()
    {
        var ground = GroundOf("uppercut", new Bearing(12));
        var dice = new Dice(5);
        Assert.All(Enumerable.Range(0, 40), _ => Assert.Equal(12, OpeningPlaces.Choose(ground, dice)![1].Bearing.HalfHours));
    }

    [Fact]
    public void Two_moments_of_one_attacker_add_up()
    {
        var one = GroundOf("uppercut", null).Aims.FromSight[1]!;
        var two = GroundOf("uppercut", null, "side-kick").Aims;
        var other = two.Moments[1].OutOfSight!;
        Assert.Equal(one.Zip(other, (x, y) => x + y), two.FromSight[1]!);
    }

    private static Ground GroundOf(string technique, Bearing? bearing, string? second = null)
    {
        var brief = Drafts.Plain([.. new[] { technique, second }.OfType<string>().Select(t => new Moment([new MomentMove(t, "Wanda", null, null)], null, null))]);
        brief = brief with
        {
            Attackers = [brief.Attackers[0], brief.Attackers[1] with { Bearing = bearing }],
            Cameras = [new Camera("A", new Bearing(18), new Centimetres(600), new Centimetres(150))],
        };
        return new Ground(new Scene(DraftBrief.Complete(brief, Drafts.Book), Drafts.Book));
    }
}
