using Generator.Domain;
using static Generator.Rules.Tests.Replaying.Case;

namespace Generator.Rules.Tests.Replaying;

/// <summary>Where round the clock a reaction leaves the attacker. All start at 1 o'clock, half hour 2.</summary>
public sealed class CarryReplayTests
{
    private static int Lands(Carry carry, int round, LineSide side = LineSide.Centre, bool attacked = true)
    {
        var attack = CaseBook.Blow with { Id = "own", Line = new AttackLine(LineKind.HighRound, side) };
        var sent = CaseBook.Reels with { Id = "sent", Round = round };
        var stage = new Case().At("1", 90).Knows(CaseBook.Hit with { Id = "send", Carry = carry }).Knows(attack).Knows(sent);
        return stage.Play(Row(0, 0, "send", "sent", attacked ? "own" : null)).After.Attackers[0].Bearing;
    }

    [Theory]
    [InlineData(Carry.Clockwise, 4)]
    [InlineData(Carry.CounterClockwise, 0)]
    [InlineData(Carry.None, 2)]
    public void The_technique_says_which_way(Carry carry, int expected) => Assert.Equal(expected, Lands(carry, 2));

    [Theory]
    [InlineData(LineSide.Left, 5)]
    [InlineData(LineSide.Centre, 5)]
    [InlineData(LineSide.Right, 23)]
    public void With_the_attack_the_way_is_clockwise_unless_it_comes_at_the_right(LineSide side, int expected) =>
        // 2 + 3 = 5, or 2 - 3 = -1, which is 23.
        Assert.Equal(expected, Lands(Carry.WithAttack, 3, side));

    [Fact]
    public void With_no_attack_to_go_on_with_the_way_is_clockwise() => Assert.Equal(5, Lands(Carry.WithAttack, 3, attacked: false));

    [Theory]
    [InlineData(Carry.None)]
    [InlineData(Carry.Clockwise)]
    [InlineData(Carry.CounterClockwise)]
    [InlineData(Carry.WithAttack)]
    public void Twelve_is_through_the_mark_whatever_the_carry(Carry carry) => Assert.Equal(14, Lands(carry, 12, LineSide.Right));

    [Fact]
    public void A_move_without_a_reaction_leaves_the_attacker_where_the_attack_brought_them()
    {
        var bruno = new Case().At("1", 300).Play(Row(20, 0, "hit", null, "blow")).After.Attackers[0];

        Assert.Equal((2, 90, Posture.Ready), (bruno.Bearing, bruno.Distance, bruno.Posture));
    }
}
