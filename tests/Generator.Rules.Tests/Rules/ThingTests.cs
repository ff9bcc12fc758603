using Generator.Domain;
using Generator.Rules.Judging;
using Generator.Rules.Tests.Fights;

namespace Generator.Rules.Tests.Rules;

/// <summary>The mark lies in the middle of 12 by 12 m, at 600, 600; a thing is so many centimetres from it.</summary>
public sealed class ThingTests
{
    private const string Drive = "swing-right > outside-block-left {limb-stopped} ; +1 wall-drive {hits-wall}";

    private static Fight At(string start, string moves, params Obstacle[] things) =>
        Fight.Of(start, moves).With(b => b with { Floor = b.Floor with { Obstacles = things } });

    private static Obstacle Behind12(string kind, int away) => new("the back " + kind, new(400), new(600 + away), new(400), new(20)) { Kind = kind };

    private static Obstacle Behind6(string kind, int away) => new("the " + kind, new(500), new(600 - away - 20), new(200), new(20)) { Kind = kind };

    /// <summary>A swing stops at 97 cm, the drive draws Bruno to 78 cm, 1.15 arms, and the reaction sends him 80 cm on, to 158 cm: 142 cm short of a wall at 3 m.</summary>
    [Fact]
    [Fails("thing")]
    public void A_wall_too_far_off_is_no_wall() =>
        Verify.Rule("thing").Given(At("left-lead Bruno@12/150", Drive, Behind12("wall", 300))).Finds(1, 2).As(Severity.Broken).Says("behind Bruno");

    [Fact]
    [Passes("thing")]
    public void A_wall_a_step_behind_serves() => Verify.Rule("thing").Given(At("left-lead Bruno@12/150", Drive, Behind12("wall", 220))).FindsNothing();

    /// <summary>90 cm from 158 are 248: at that distance it serves, a centimetre on it does not.</summary>
    [Theory]
    [InlineData(248, 0)]
    [InlineData(250, 1)]
    public void It_is_measured_from_where_the_move_leaves_them(int away, int findings) =>
        Verify.Rule("thing").Given(At("left-lead Bruno@12/150", Drive, Behind12("wall", away))).Finds(findings, 2);

    /// <summary>A chair is nothing to be driven against; where it is all there is, nobody can be: that is for able to say.</summary>
    [Fact]
    public void The_kind_must_allow_it()
    {
        var fight = At("left-lead Bruno@12/150", Drive, Behind12("chair", 220));
        Verify.Rule("thing").Given(fight).FindsNothing();
        Assert.Contains(fight.Audit().Findings, f => f.Rule == "able" && f.Message.Contains("something to be driven against", StringComparison.Ordinal));
    }

    /// <summary>The chair stands in the line; the wall behind it helps nobody there, but at 6 it would.</summary>
    [Fact]
    public void The_first_thing_on_the_line_counts()
    {
        var chair = new Obstacle("chair", new(580), new(800), new(40), new(40)) { Kind = "chair" };
        Verify.Rule("thing").Given(At("left-lead Bruno@12/150", Drive, chair, Behind12("wall", 245))).Finds(1, 2);
    }

    [Fact]
    public void A_floor_without_things_leaves_it_to_able()
    {
        var fight = At("left-lead Bruno@12/150", Drive);
        Verify.Rule("thing").Given(fight).FindsNothing();
        Assert.Contains(fight.Audit().Findings, f => f is { Rule: "able", Severity: Severity.Unsafe });
    }

    /// <summary>The wall stands 80 cm behind the hero with Bruno at 12; with Bruno at 6 it stands before them.</summary>
    [Theory]
    [InlineData("12", 0)]
    [InlineData("6", 1)]
    public void Behind_the_hero_is_across_from_the_attacker(string from, int findings) =>
        Verify.Rule("thing").Given(At($"left-lead Bruno@{from}/150", "+8 jab-right > cornered {presses-on}", Behind6("wall", 80))).Finds(findings, 1);

    [Theory]
    [InlineData(100, 0)]
    [InlineData(101, 1)]
    public void Within_is_kept_to_the_centimetre(int away, int findings)
    {
        // Another wall, at 9, so that somebody could be cornered here.
        var other = new Obstacle("other wall", new(500), new(500), new(20), new(200)) { Kind = "wall" };
        Verify.Rule("thing").Given(At("left-lead Bruno@12/150", "+8 jab-right > cornered {presses-on}", Behind6("wall", away), other)).Finds(findings, 1);
    }

    /// <summary>A table beside the line to Bruno: 30° off it, a metre away.</summary>
    [Theory]
    [InlineData(40, 0)]
    [InlineData(140, 1)]
    public void Between_is_a_step_off_the_line(int aside, int findings)
    {
        var table = new Obstacle("table", new(600 + aside), new(660), new(60), new(60)) { Kind = "table" };
        Verify.Rule("thing").Given(At("left-lead Bruno@12/200", "+8 jab-right > dodge-behind-table {falls-short}", table, new Obstacle("desk", new(640), new(480), new(60), new(60)) { Kind = "table" })).Finds(findings, 1);
    }

    /// <summary>Nobody is thrown onto a bed that is not rated and padded.</summary>
    [Theory]
    [InlineData(true, true, true)]
    [InlineData(true, false, false)]
    [InlineData(false, true, false)]
    public void Onto_a_thing_only_where_it_is_rated_and_padded(bool rated, bool padded, bool allowed)
    {
        var bed = Behind12("bed", 220) with { Rated = rated, Padded = padded };
        var fight = At("left-lead Bruno@12/150", "swing-right > outside-block-left {limb-stopped} ; +1 onto-padding-right {lands-on-padding}", bed);
        Assert.Equal(allowed, fight.Scene.Able.WhyNotReaction(TheBook.Book.ReactionIndex("lands-on-padding"), 0) is null);
    }

    /// <summary>Who comes off the wall stands a metre from it before they do.</summary>
    [Theory]
    [InlineData(200, 0)]
    [InlineData(180, 1)]
    public void An_attack_off_a_wall_begins_at_it(int distance, int findings) =>
        Verify.Rule("thing").Given(At($"left-lead Bruno@12/{distance}", "+8 wall-rush > side-step-left {falls-short}", Behind12("wall", 300))).Finds(findings, 1);

    /// <summary>The rail on the way is gone over and not walked through; what is not rated is.</summary>
    [Theory]
    [InlineData(true, 0)]
    [InlineData(false, 1)]
    public void Over_it_is_not_through_it(bool rated, int findings)
    {
        var rail = new Obstacle("rail", new(500), new(720), new(200), new(10)) { Kind = "rail", Rated = rated };
        var fight = At("left-lead Bruno@6/400", "+8 vaults-over-right", rail).With(b => b with { Marks = [new HeroMark("door", new(600), new(600)), new HeroMark("window", new(600), new(850))] });
        fight = fight with { Moves = [.. fight.Moves.Select(m => m with { To = 1 })] };
        Verify.Rule("clear-lane").Given(fight).Finds(findings, 1);
        Assert.Equal(findings > 0, fight.Audit().Findings.Any(f => f.Rule == "able"));
    }

    [Fact]
    public void A_mirrored_floor_serves_on_the_mirrored_bearings()
    {
        var wall = new Obstacle("wall", new(730), new(400), new(20), new(300)) { Kind = "wall" };
        var mirrored = wall with { X = new(1200 - 750) };
        var need = TheBook.Book.Technique("wall-drive").Uses!;
        int[] At(Obstacle thing) => [.. ThingTests.At("left-lead Bruno@12/150", Drive, thing).Scene.Things.BearingsOf(need, 0)];
        Assert.NotEmpty(At(wall));
        Assert.Equal(At(wall).Select(b => new Bearing(-b).HalfHours).Order(), At(mirrored).Order());
    }
}
