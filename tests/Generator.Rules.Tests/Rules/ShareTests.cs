using Generator.Domain;
using Generator.Rules.Tests.Fights;

namespace Generator.Rules.Tests.Rules;

public sealed class ShareTests
{
    private const string Start = "left-lead Bruno@12/250 Wanda@3/250";

    private static string Exchanges(string who, int times) => string.Join(" ; ", Enumerable.Repeat(who + ": +2 swing-right > outside-block-left {limb-stopped} ; cross-right {head-back}", times));

    private static Fight Shared(int bruno, int wanda, string then = "") => Fight.Of(Start, string.Join(" ; ", Exchanges("Bruno", bruno), Exchanges("Wanda", wanda)) + then);

    private static Found Judge(Fight fight) => Verify.Rule("share").Given(fight);

    [Fact]
    [Fails("share")]
    public void Five_to_two_cost_two_points() => Judge(Shared(5, 2)).Finds(1, 0).As(Severity.Rough).Costs(2).Measures(3, 1, "exchanges").Concerns("Wanda, Bruno");

    [Theory]
    [Passes("share")]
    [InlineData(4, 3)]
    [InlineData(3, 4)]
    [InlineData(3, 3)]
    public void One_fewer_is_fair(int bruno, int wanda) => Judge(Shared(bruno, wanda)).FindsNothing();

    [Fact]
    public void Who_is_out_early_may_have_fewer() =>
        Judge(Fight.Of(Start, Exchanges("Wanda", 1) + " ; finishing-hook-left {out-crumples} ; " + Exchanges("Bruno", 4))).FindsNothing();

    [Fact]
    public void Who_comes_in_late_may_have_fewer() => Judge(Shared(5, 2) with { Placements = Fight.Of("left-lead Bruno@12/250 Wanda@3/250/12", string.Empty).Placements }).FindsNothing();

    /// <summary>Asked for 40 in a hundred of 7, 2.8: 2 and 3 are within one; 1 is 1.8 off, which is one point; 0 is 2.8 off, two points.</summary>
    [Theory]
    [InlineData(2, 0)]
    [InlineData(3, 0)]
    [InlineData(4, 1)]
    [InlineData(1, 1)]
    [InlineData(0, 2)]
    public void A_share_asked_for_is_kept_within_one_exchange(int wanda, int points) =>
        Judge(Fight.Of(Start, string.Join(" ; ", Exchanges("Bruno", 7 - wanda), Exchanges("Wanda", wanda))).WithAttacker(1, w => w with { SharePercent = 40 })).Costs(points);

    [Fact]
    public void A_follow_up_is_no_exchange() => Judge(Shared(2, 1, " ; body-hook-left ; knee-right ; hook-left")).FindsNothing();
}
