using Generator.Domain;
using Generator.Rules.Tests.Fights;

namespace Generator.Rules.Tests.Rules;

public sealed class SightlineTests
{
    private static Found Judge(string cameras, string hit) =>
        Verify.Rule("sightline").Given(Fight.Of("left-lead Bruno@12/250 " + cameras, "jab-right > slip-left {falls-short} ; " + hit));

    private const string Straight = "cross-right {head-back}";

    private const string Swung = "hook-left {head-turns}";

    [Theory]
    [Fails("sightline")]
    [InlineData("camera=3")]
    [InlineData("camera=1")]
    [InlineData("camera=5")]
    [InlineData("camera=3 camera=10")]
    public void A_straight_miss_shows_its_gap_from_the_side(string cameras) => Judge(cameras, Straight).Finds(1, 2).As(Severity.Rough).Costs(1);

    [Theory]
    [Passes("sightline")]
    [InlineData("camera=6")]
    [InlineData("camera=12:30")]
    [InlineData("camera=5:30")]
    [InlineData("camera=3 camera=12")]
    public void It_reads_along_the_line(string cameras) => Judge(cameras, Straight).FindsNothing();

    [Theory]
    [InlineData("camera=2", 0)]
    [InlineData("camera=2:30", 1)]
    [InlineData("camera=8", 0)]
    [InlineData("camera=9", 1)]
    public void A_swung_miss_reads_until_seen_from_the_side(string cameras, int findings) => Judge(cameras, Swung).Finds(findings, 2);

    [Fact]
    public void A_blow_that_is_answered_may_be_seen_to_miss() => Judge("camera=3", "cross-right {slips-blow}").FindsNothing();

    [Fact]
    public void A_hit_with_contact_reads_from_everywhere() => Judge("camera=3", "body-punch-right {folds}").FindsNothing();

    [Fact]
    public void Without_a_camera_nothing_is_said() => Judge("tempo=100", Straight).FindsNothing();

    [Fact]
    public void It_tells_how_far_off_the_nearest_camera_is() => Judge("camera=3 camera=1", Straight).Measures(30, 15, "degrees").Says("Camera 1 is the nearest");
}
