using Generator.Domain;
using static Generator.Rules.Tests.Replaying.Case;

namespace Generator.Rules.Tests.Replaying;

/// <summary>Where attackers stop, which limb sets the band, and how far a reaction sends them.</summary>
public sealed class DistanceReplayTests
{
    private static Band Arm(decimal from, decimal to, bool meets = false) => new(Limb.Arm, from, to, new Centimetres(0), new Centimetres(0), meets);

    private static Func<AttackerPart, AttackerPart> ArmOf(int length) => part => part with { Arm = new Centimetres(length) };

    [Theory]
    [InlineData(70, 120, 90)]
    [InlineData(30, 60, 60)]
    [InlineData(140, 175, 140)]
    public void An_attacker_stops_at_90_or_at_the_nearest_end_of_the_band(int from, int to, int expected) =>
        // Arm 100: bands 70-120 (holds 90), 30-60 (ends before 90), 140-175 (begins after 90).
        Assert.Equal(expected, new Case().At("12", 300).Knows(CaseBook.Blow with { Id = "own", Contact = Arm(from / 100m, to / 100m) }).Play(Row(20, 0, "hit", "reels", "own")).Distance);

    [Fact]
    public void An_attack_with_contact_is_measured_by_the_attackers_arm()
    {
        var own = CaseBook.Blow with { Id = "own", Contact = Arm(1.4m, 1.75m) };

        // Arm 80: 1.4 x 80 = 112, although the hero's arm is 100.
        Assert.Equal(112, new Case().At("12", 300, 0, ArmOf(80)).Knows(own).Play(Row(20, 0, "hit", "reels", "own")).Distance);
    }

    [Fact]
    public void A_missed_attack_is_measured_by_the_longer_arm()
    {
        var own = CaseBook.Blow with { Id = "own", Contact = Arm(1.4m, 1.75m), NonContact = true };

        // The hero's 100 beats 80: 140.
        Assert.Equal(140, new Case().At("12", 300, 0, ArmOf(80)).Knows(own).Play(Row(20, 0, "hit", "reels", "own")).Distance);
    }

    [Theory]
    [InlineData(ContactKind.Contact, 120, 100, 150)]
    [InlineData(ContactKind.NonContact, 120, 120, 180)]
    [InlineData(ContactKind.NonContact, 80, 100, 150)]
    public void A_techniques_band_is_measured_by_the_hero_and_a_miss_by_the_longer_arm(ContactKind kind, int partner, int near, int far)
    {
        var own = CaseBook.Hit with { Id = "own", Band = Arm(1m, 1.5m), Kind = kind };
        var reach = new Case().At("12", 90, 0, ArmOf(partner)).Knows(own).Play(Row(0, 0, "own", "reels", "blow")).Reach;

        Assert.Equal((near, far), (reach.Near, reach.Far));
    }

    [Fact]
    public void Bands_are_rounded_inwards()
    {
        var own = CaseBook.Hit with { Id = "own", Band = new Band(Limb.Arm, 1.4m, 1.75m, new Centimetres(40), new Centimetres(20), false) };
        var reach = new Case().Hero(h => h with { Arm = new Centimetres(67) }).At("12", 90).Knows(own).Play(Row(0, 0, "own", "reels", "blow")).Reach;

        // 1.4 x 67 = 93.8, up to 94; 1.75 x 67 = 117.25, down to 117. With steps: 94 - 20 = 74 and 117 + 40 = 157.
        Assert.Equal((94, 117, 74, 157), (reach.Near, reach.Far, reach.Least, reach.Most));
    }

    [Fact]
    public void Without_a_measured_arm_stature_gives_it()
    {
        var own = CaseBook.Hit with { Id = "own", Band = Arm(1m, 1m) };
        var reach = new Case().Hero(h => h with { Arm = null, Height = new Centimetres(200) }).At("12", 90).Knows(own).Play(Row(0, 0, "own", "reels", "blow")).Reach;

        // 0.39 x 200 = 78.
        Assert.Equal(78, reach.Near);
    }

    [Theory]
    [InlineData(70, 90)]
    [InlineData(110, 110)]
    public void A_stop_hit_meets_the_attacker_no_nearer_than_its_own_band(int from, int expected)
    {
        // The blow would bring the attacker to 90.
        var stop = CaseBook.Hit with { Id = "stop", Band = Arm(from / 100m, 1.3m, meets: true) };

        Assert.Equal(expected, new Case().At("12", 300).Knows(stop).Play(Row(20, 0, "stop", "reels", "blow")).Distance);
    }

    [Fact]
    public void After_a_blow_the_attacker_stands_at_the_old_distance_and_what_the_reaction_adds()
    {
        var back = CaseBook.Reels with { Id = "back", Back = new Centimetres(80) };
        var near = CaseBook.Hit with { Id = "near", Band = Arm(0.4m, 0.6m) };

        // 90 + 80 = 170: a strike does not draw the partner into its band.
        Assert.Equal(170, new Case().At("12", 90).Knows(near).Knows(back).Play(Row(0, 0, "near", "back", "blow")).After.Attackers[0].Distance);
    }

    [Theory]
    [InlineData(40, 60, 80)]
    [InlineData(100, 120, 120)]
    [InlineData(80, 100, 110)]
    public void A_throw_draws_the_partner_into_the_band_first(int from, int to, int expected)
    {
        // From 90: drawn to 60, to 100, or left at 90; then 20 back.
        var back = CaseBook.Reels with { Id = "back", Back = new Centimetres(20) };
        var draws = CaseBook.Hit with { Id = "draws", Band = Arm(from / 100m, to / 100m), Draws = true };

        Assert.Equal(expected, new Case().At("12", 90).Knows(draws).Knows(back).Play(Row(0, 0, "draws", "back", "blow")).After.Attackers[0].Distance);
    }

    [Fact]
    public void Nobody_let_go_is_left_within_the_room_of_two_bodies()
    {
        var inwards = CaseBook.Reels with { Id = "inwards", Back = new Centimetres(-120) };

        Assert.Equal(50, new Case().At("12", 90).Knows(inwards).Play(Row(0, 0, "hit", "inwards", "blow")).After.Attackers[0].Distance);
    }

    [Fact]
    public void A_follow_up_finds_the_attacker_where_the_last_move_left_them()
    {
        var back = CaseBook.Reels with { Id = "back", Back = new Centimetres(15) };

        // 90 + 15.
        Assert.Equal(105, new Case().At("12", 300).Knows(back).Play(Row(20, 0, "hit", "back", "blow"), Row(22, 0, "hit")).Distance);
    }
}
