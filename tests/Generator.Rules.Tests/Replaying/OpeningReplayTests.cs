using Generator.Domain;
using static Generator.Rules.Tests.Replaying.Case;

namespace Generator.Rules.Tests.Replaying;

/// <summary>What posture a follow-up finds, and when.</summary>
public sealed class OpeningReplayTests
{
    [Theory]
    [InlineData(2, Posture.OffBalance)]
    [InlineData(4, Posture.OffBalance)]
    [InlineData(5, null)]
    [InlineData(6, Posture.Ready)]
    public void An_opening_lasts_then_comes_recovery_then_ready(int start, Posture? expected) =>
        // The hit ends at 2: open for 1 s to 4, ready after 2 s at 6.
        Assert.Equal(expected, new Case().At("12", 90).Play(Row(0, 0, "hit", "reels", "blow"), Row(start, 0, "hit")).TargetPosture);

    [Fact]
    public void Opening_times_round_up()
    {
        var longer = CaseBook.Reels with { Id = "longer", OpenSeconds = 1.1m };

        // 2.2 -> 3 half counts after 2.
        Assert.Equal(5, new Case().At("12", 90).Knows(longer).Play(Row(0, 0, "hit", "longer", "blow")).After.Attackers[0].OpenUntil);
    }

    [Theory]
    [InlineData("caught", Posture.HeldArm)]
    [InlineData("grips", Posture.Gripping)]
    [InlineData("drops", Posture.Out)]
    public void Held_gripping_and_out_last(string reaction, Posture expected)
    {
        var hold = CaseBook.Hit with { Id = "hold", LeftEnd = HandEnd.Holding };

        Assert.Equal(expected, new Case().At("12", 90).Knows(hold).Play(Row(0, 0, "hold", reaction, "blow"), Row(200, 0, "hit")).TargetPosture);
    }

    [Fact]
    public void A_posture_kept_as_before_keeps_the_recovery_too()
    {
        var bruno = new Case().At("12", 90).Play(Row(0, 0, "hit", "reels", "blow"), Row(2, 0, "hit", "shakes")).After.Attackers[0];

        // Ready at 2 + 4 = 6 as after the first hit, not at 4 + 0.
        Assert.Equal((Posture.OffBalance, 6), (bruno.Posture, bruno.ReadyAt));
    }

    [Fact]
    public void Before_the_first_move_everybody_is_ready() =>
        Assert.Equal(Posture.Ready, new Case().At("12", 90).Play(Row(0, 0, "hit")).TargetPosture);

    [Fact]
    public void Whoever_goes_out_is_out_from_the_end_of_that_move_and_only_once()
    {
        var after = new Case().At("12", 90).Play(Row(0, 0, "hit", "drops", "blow"), Row(8, 0, "hit", "drops")).After;

        Assert.Equal((2, false), (after.Attackers[0].OutAt, after.Attackers[0].Gone));
    }

    [Fact]
    public void Running_off_leaves_the_floor()
    {
        var flees = CaseBook.Drops with { Id = "flees", Back = new Centimetres(300) };

        Assert.True(new Case().At("12", 90).Knows(flees).Play(Row(0, 0, "hit", "flees", "blow")).After.Attackers[0].Gone);
    }
}
