using Generator.Domain;
using Generator.Rules.Bodies;
using Generator.Rules.Replaying;
using Generator.Rules.Tests.Replaying;
using static Generator.Rules.Tests.Replaying.Case;

namespace Generator.Rules.Tests.Marks;

/// <summary>Travel moves worked by hand: the hero at 1 m/s, so that 3 m are 3 s, 6 half counts; the other mark 3 m towards 12.</summary>
public sealed class TravelReplayTests
{
    private static readonly Technique Goes = CaseBook.Wait with { Id = "goes", BaseId = "goes", Name = "Goes", Travel = Of(TravelKind.ByWill, false) };

    private static readonly Technique Driven = CaseBook.Hit with { Id = "driven", BaseId = "driven", Name = "Is driven", Family = Family.Setback, Travel = Of(TravelKind.Driven, true) };

    private static readonly Technique Thrown = Driven with { Id = "thrown", BaseId = "thrown", Name = "Is thrown", Travel = Of(TravelKind.Thrown, false) };

    private static readonly Reaction Falls = CaseBook.Reels with { Id = "falls", Posture = Posture.OnBack, Fall = FallClass.Back, Back = new Centimetres(40), ReadySeconds = 5m };

    private static Travel Of(TravelKind how, bool follows) => new(how, Window.Anywhere, new Centimetres(50), new Centimetres(600), 100, follows);

    private static Case Stage => new Case().Knows(Goes, Driven, Thrown).Knows(Falls).Marks((0, 300));

    private static Move To(Move move, int mark) => move with { To = mark };

    [Fact]
    public void It_lasts_as_long_as_the_way_and_ends_on_the_other_mark()
    {
        var step = Stage.At("12", 500).Play(To(Row(2, null, "goes"), 1));
        Assert.Equal((8, 1, 300, 0), (step.End, step.After.Mark, step.Way, step.Heading));
        Assert.Equal(new Place(0, 300), step.After.HeroWay!.End);
        Assert.Equal((8, 0, 300), (step.After.Time, step.Before.Mark, step.Floor.Equals(step.FloorAfter) ? 0 : 300));
    }

    /// <summary>The technique's own two half counts are more than the one that half a metre takes.</summary>
    [Fact]
    public void It_is_never_shorter_than_its_own_counts() =>
        Assert.Equal(2, new Case().Knows(Goes).Marks((0, 50)).At("12", 500).Play(To(Row(0, null, "goes"), 1)).End);

    /// <summary>An attack lands 2 half counts after the start; only then the way begins.</summary>
    [Fact]
    public void Where_a_blow_makes_the_hero_go_the_way_begins_with_the_contact() =>
        Assert.Equal(8, Stage.At("6", 90).Play(To(Row(0, 0, "driven", "shakes", "blow"), 1)).End);

    /// <summary>
    /// From 3 m towards 12: who is 3 m towards 3 is seen at 4:30, 3 √2 m away; who is 5 m towards 12 at 12, 2 m; who is 1 m towards 6 at 6, 4 m.
    /// </summary>
    [Fact]
    public void Everybody_is_seen_from_the_other_mark()
    {
        var after = Stage.At("3", 300).At("12", 500).At("6", 100).Play(To(Row(0, null, "goes"), 1)).After.Attackers;
        Assert.Equal([(9, 424), (0, 200), (12, 400)], after.Select(a => (a.Bearing, a.Distance)));
        Assert.Equal([new Place(300, 0), new Place(0, 500), new Place(0, -100)], after.Select(a => a.Place.Rounded()));
    }

    /// <summary>3.34 m to striking distance at 1 m/s, set off at count 1: 6.68 half counts, rounded up.</summary>
    [Fact]
    public void Threat_times_are_those_of_the_other_mark() =>
        Assert.Equal(7, Stage.At("3", 300).PlayAll(To(Row(0, null, "goes"), 1), Row(20, 0, "hit", "reels", "blow"))[1].Threats[0]);

    /// <summary>2 m towards 3 is at 146.3° from 3 m towards 12: nearest the half hour of 150°. They set off from where they really are and strike on that half hour at 90 cm.</summary>
    [Fact]
    public void Who_comes_sets_off_from_where_they_are()
    {
        var step = Stage.At("3", 200).Play(To(Row(0, null, "goes"), 1), Row(30, 0, "hit", "reels", "blow"));
        Assert.Equal((10, 361), (step.Before.Attackers[0].Bearing, step.Before.Attackers[0].Distance));
        var comes = step.After.Attackers[0].Leg!.Chain().First(l => l.Kind == LegKind.Comes);
        Assert.Equal(new Place(200, 0), comes.Start.Rounded());
        Assert.Equal((new Place(0, 300) + Place.At(10, 90)).Rounded(), comes.End.Rounded());
        Assert.Equal((10, 90, (Place?)null), (step.After.Attackers[0].Bearing, step.After.Attackers[0].Distance, step.After.Attackers[0].Stays));
    }

    [Fact]
    public void Who_goes_along_keeps_their_place_beside_the_hero()
    {
        var after = Stage.At("6", 90).Play(To(Row(0, 0, "driven", "shakes"), 1)).After.Attackers[0];
        Assert.Equal((12, 90), (after.Bearing, after.Distance));
        Assert.Equal(new Place(0, 210), after.Place.Rounded());
        Assert.Equal(new Place(0, 210), after.Leg!.End.Rounded());
    }

    [Fact]
    public void Who_sends_the_hero_stays_behind()
    {
        var after = Stage.At("6", 90).Play(To(Row(0, 0, "thrown", "shakes"), 1)).After.Attackers[0];
        Assert.Equal((12, 390), (after.Bearing, after.Distance));
        Assert.Equal(new Place(0, -90), after.Place.Rounded());
    }

    /// <summary>Bruno falls back from 90 to 130 cm towards 3 and lies there, whatever the mark.</summary>
    [Fact]
    public void Bodies_stay_where_they_lie()
    {
        var steps = Stage.At("3", 90).PlayAll(Row(0, 0, "hit", "falls"), To(Row(2, null, "goes"), 1));
        var (before, after) = (steps[0].After.Attackers[0].Leg!.LyingAt(5)!, steps[1].After.Attackers[0].Leg!.LyingAt(5)!);
        Assert.Equal((before.Start, before.End), (after.Start, after.End));
        Assert.Equal(new Place(130, 0), steps[1].After.Attackers[0].Place.Rounded());
        Assert.Equal(10, steps[1].After.Attackers[0].Bearing);
    }

    [Fact]
    public void Whoever_holds_the_hero_goes_along_even_where_that_is_wrong()
    {
        var steps = Stage.At("6", 90).PlayAll(Row(0, 0, "hit", "grips"), To(Row(2, null, "goes"), 1));
        Assert.Equal((12, 90, new Place(0, 210)), (steps[1].After.Attackers[0].Bearing, steps[1].After.Attackers[0].Distance, steps[1].After.Attackers[0].Place.Rounded()));
    }

    /// <summary>There and back: everybody is seen as at the start, to the half hour and the centimetre.</summary>
    [Fact]
    public void There_and_back_is_as_before()
    {
        var steps = Stage.At("3", 217).At("7:30", 333).At("1", 150).PlayAll(To(Row(0, null, "goes"), 1), To(Row(6, null, "goes"), 0));
        Assert.Equal(steps[0].Before.Attackers.Select(a => (a.Bearing, a.Distance)), steps[1].After.Attackers.Select(a => (a.Bearing, a.Distance)));
    }

    [Fact]
    public void A_row_that_leads_to_no_mark_leaves_the_hero_where_they_are()
    {
        var step = Stage.At("3", 300).Play(Row(0, null, "goes"));
        Assert.Equal((0, 2, -1), (step.After.Mark, step.End, step.Travels));
    }
}
