using Generator.Domain;
using Generator.Rules.Tests.Fights;

namespace Generator.Rules.Tests.Marks;

/// <summary>Every rule judges with the mark of the moment. The first mark is in the middle of 12 by 12 m; the others are so many centimetres from it towards 3 and 12.</summary>
public sealed class TravelRuleTests
{
    private static Fight Between(string start, string moves, params (int X, int Y, int To)[] marks)
    {
        var fight = Fight.Of(start, moves).With(b => b with
        {
            Marks = [new HeroMark("door", new(600), new(600)), .. marks.Select((m, i) => new HeroMark($"mark {i + 1}", new(600 + m.X), new(600 + m.Y)))],
        });
        var next = 0;
        return fight with { Moves = [.. fight.Moves.Select(m => m.Technique is { } t && TheBook.Book.Technique(t).Travel is not null ? m with { To = marks[next++].To } : m)] };
    }

    [Theory]
    [InlineData(0, 300, 0)]
    [InlineData(0, 60, 1)]
    [InlineData(0, 450, 1)]
    public void A_way_is_as_long_as_the_move_can_be(int x, int y, int findings) =>
        Verify.Rule("in-reach").Given(Between("left-lead Bruno@6/400", "+8 backs-away", (x, y, 1))).Finds(findings, 1);

    [Fact]
    public void A_way_to_the_mark_of_the_moment_leads_nowhere() =>
        Verify.Rule("in-reach").Given(Between("left-lead Bruno@6/400", "+8 walks-across", (0, 300, 0))).Finds(1, 1).Says("on door already");

    /// <summary>Backing to a mark at 12 takes a turn of 9 half hours, for which two half counts are not enough.</summary>
    [Theory]
    [InlineData(8, 0)]
    [InlineData(2, 1)]
    public void The_hero_turns_for_the_way_in_the_gap(int gap, int findings) =>
        Verify.Rule("flow-facing").Given(Between("left-lead Bruno@6/400", $"+{gap} backs-away", (0, 300, 1))).Finds(findings, 1);

    /// <summary>Bruno, who drives the hero back, comes from 12: that leads to 6 and not to 12.</summary>
    [Theory]
    [InlineData(-200, 0)]
    [InlineData(200, 1)]
    public void Who_is_driven_goes_away_from_who_drives(int y, int findings) =>
        Verify.Rule("flow-facing").Given(Between("left-lead Bruno@12/250", "+8 cross-right > parries-back {presses-on}", (0, y, 1))).Finds(findings, 1);

    [Theory]
    [InlineData(100, 0)]
    [InlineData(-20, 1)]
    public void Nothing_stands_on_the_way(int x, int findings)
    {
        var fight = Between("left-lead Bruno@6/400", "+8 walks-across", (0, 400, 1)).With(b => b with { Floor = b.Floor with { Obstacles = [new Obstacle("table", new(600 + x), new(780), new(60), new(60))] } });
        Verify.Rule("clear-lane").Given(fight).Finds(findings, 1);
    }

    /// <summary>Wanda stands beside the way, half a metre or a metre off it.</summary>
    [Theory]
    [InlineData(100, 0)]
    [InlineData(50, 1)]
    public void The_hero_keeps_clear_of_who_stands_beside_the_way(int aside, int findings) =>
        Verify.Rule("spacing").Given(Between($"left-lead Bruno@6/400 Wanda@3/{aside}", "+8 walks-across", (0, 300, 1))).Finds(findings, 1);

    /// <summary>Bruno lies at 12 from 1.37 m outwards.</summary>
    [Theory]
    [InlineData(0, 300, 1)]
    [InlineData(300, 0, 0)]
    public void The_hero_goes_over_nobody(int x, int y, int findings) =>
        Verify.Rule("underfoot").Given(Between("left-lead Bruno@12/150", "swing-right > outside-block-left {limb-stopped} ; step-punch-right {back-fall} ; +4 walks-across", (x, y, 1))).Finds(findings, 3);

    /// <summary>Seen from a mark 4 m towards 3, a camera 5 m away at 6 is at 219°, 7:30 nearly; a straight punch reads along its line.</summary>
    [Theory]
    [InlineData("6", 1)]
    [InlineData("7:30", 0)]
    public void Cameras_are_seen_from_the_mark_of_the_moment(string clock, int points)
    {
        var found = Verify.Rule("sightline").Given(Between($"left-lead camera=6 Bruno@12/300", $"+4 walks-across ; Bruno@{clock}: +30 !swing-right > outside-block-left {{limb-stopped}} ; cross-right {{head-back}}", (400, 0, 1)));
        found.Finds(points, 3);
    }

    /// <summary>Nobody walks on through a table that stands between where they stay and the mark of the moment.</summary>
    [Theory]
    [InlineData(150, 1)]
    [InlineData(-150, 0)]
    public void Nobody_comes_through_what_stands_between(int x, int findings)
    {
        var fight = Between("left-lead Bruno@3/270", "+8 walks-across ; Bruno: +30 !swing-right > outside-block-left {limb-stopped}", (0, 300, 1))
            .With(b => b with { Floor = b.Floor with { Obstacles = [new Obstacle("table", new(600 + x), new(720), new(40), new(40))] } });
        Verify.Rule("spacing").Given(fight).Finds(findings, 2);
    }
}
