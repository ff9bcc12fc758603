using Generator.Domain;
using Generator.Rules.Tests.Fights;
using Generator.Rules.Tests.Replaying;

namespace Generator.Rules.Tests.Rules;

public sealed class SpacingTests
{
    private const string Block = "swing-right > outside-block-left {limb-stopped}";

    private static Found Judge(string start, string moves) => Verify.Rule("spacing").Given(Fight.Of(start, moves));

    /// <summary>2 × 1.5 m × sin 15°.</summary>
    [Fact]
    [Fails("spacing")]
    public void Two_open_too_close() =>
        Judge("left-lead Bruno@12/250 Wanda@2/150 Piet@3/150", string.Empty).Finds(1, 0).As(Severity.Unsafe).Measures(0.78m, 1, "m").Concerns("Wanda, Piet");

    [Theory]
    [Passes("spacing")]
    [InlineData("left-lead Bruno@12/250 Wanda@2/200 Piet@3/200")]
    [InlineData("left-lead Bruno@12/250 Wanda@2/150 Piet@4/150")]
    public void A_metre_apart_is_well(string start) => Judge(start, Block).FindsNothing();

    [Fact]
    public void Everybody_opens_on_the_floor() => Judge("left-lead Bruno@12/571", Block).Finds(1, 0).Measures(5.71m, 5.70m, "m");

    [Fact]
    public void The_opener_comes_too_close_to_one_who_stands_ready() => Judge("left-lead Bruno@12/250 Wanda@1/120", Block).Finds(1, 1).Says("0.60 m apart");

    [Fact]
    public void Who_is_busy_going_down_is_not_standing() =>
        Judge("left-lead Bruno@12/250 Wanda@1/250", Block + " ; cross-right {sits-down} ; Wanda: +1 swing-right > outside-block-left {limb-stopped}").FindsNothing();

    /// <summary>Bruno has been stopped at 12 and still reels there, or is held; Wanda comes in half an hour beside him.</summary>
    [Theory]
    [InlineData(Block + " ; Wanda: +0 swing-left > outside-block-right {limb-stopped}")]
    [InlineData("cross-right > wrist-catch-left {arm-caught} ; Wanda: +0 swing-left > outside-block-right {limb-stopped}")]
    public void Who_comes_in_keeps_clear_of_who_is_upright_and_not_ready(string moves) =>
        Judge("left-lead Bruno@12/250 Wanda@1/250", moves).Finds(1, 2).As(Severity.Unsafe).Concerns("Wanda, Bruno").Says("apart");

    [Fact]
    public void Room_to_pass_is_enough_beside_who_is_not_ready() =>
        Judge("left-lead Bruno@12/250 Wanda@2/250", Block + " ; Wanda: +0 swing-left > outside-block-right {limb-stopped}").FindsNothing();

    /// <summary>Bruno, held half a metre away, is turned into the way of Wanda's blow, which carries her back in the end: without room for him it stops at 90 cm, with it at 1.60 m.</summary>
    [Theory]
    [InlineData(0, 40)]
    [InlineData(70, null)]
    public void Who_is_put_between_keeps_clear_of_the_blow(int behind, int? apart)
    {
        var hold = CaseBook.Hit with { Id = "hold", LeftEnd = HandEnd.Holding };
        var shield = CaseBook.Hit with { Id = "shield", CarriesHeld = true, Band = CaseBook.Hit.Band with { Behind = new(behind) } };
        var back = CaseBook.Reels with { Id = "back", Back = new(100) };
        var step = new Case().At("12", 50).At("3", 300).Knows(hold, shield).Knows(back).Play(Case.Row(0, 0, "hold", "caught"), Case.Row(4, 1, "shield", "back", "blow"));
        Assert.Equal(apart is { } found ? [found] : [], step.Meetings(step.Scene).Select(m => m.Apart).Distinct());
    }

    [Fact]
    public void Coming_from_another_bearing_needs_floor_there()
    {
        var fight = Fight.Of("left-lead Bruno@12/250", "Bruno@3: swing-right > outside-block-left {limb-stopped}");
        Verify.Rule("spacing").Given(fight.With(b => b with { Floor = b.Floor with { Width = new(400), MarkX = new(200) } })).Finds(1, 1).Measures(2.5m, 2.4m, "m");
        Verify.Rule("spacing").Given(fight).FindsNothing();
    }
}
