using Generator.Domain;
using Generator.Rules.Judging;
using Generator.Rules.Replaying;
using Generator.Rules.Rules;
using Generator.Rules.Tests.Fights;
using Generator.Rules.Tests.Replaying;
using static Generator.Rules.Tests.Replaying.Case;

namespace Generator.Rules.Tests.Rules;

/// <summary>A sit fall takes 3.3 s, 11 half counts, and 2 of margin; from 127 cm there is 1 half count to walk: 14 from the end of the move.</summary>
public sealed class ResetWindowTests
{
    private const string Falls = "swing-right > outside-block-left {limb-stopped} ; cross-right {sits-down}";

    private static Found Judge(string moves) => Verify.Rule("reset-window").Given(Fight.Of("left-lead Bruno@12/250", moves));

    [Fact]
    [Fails("reset-window")]
    public void A_fallen_attacker_is_not_back_at_once() =>
        Judge(Falls + " ; +11 swing-left > duck {overswings}").Finds(1, 3).As(Severity.Unsafe).Measures(9.5m, 10m, "count");

    [Fact]
    [Passes("reset-window")]
    public void But_in_time() => Judge(Falls + " ; +12 swing-left > duck {overswings}").FindsNothing();

    [Theory]
    [InlineData(15, 1)]
    [InlineData(16, 0)]
    public void Lingering_takes_longer(int gap, int findings) => Judge($"{Falls} ~4 ; +{gap} swing-left > duck {{overswings}}").Finds(findings, 3);

    [Theory]
    [InlineData(15, 1)]
    [InlineData(16, 0)]
    public void So_does_walking_round(int gap, int findings) => Judge($"{Falls} ; Bruno@1: +{gap} swing-left > duck {{overswings}}").Finds(findings, 3);

    [Theory]
    [InlineData(16, 1)]
    [InlineData(17, 0)]
    public void A_novice_takes_longer_to_get_up(int gap, int findings) =>
        Verify.Rule("reset-window").Given(Fight.Of("left-lead Bruno@12/250", $"{Falls} ; +{gap} swing-left > duck {{overswings}}").WithAttacker(0, b => b with { Skill = Skill.Novice })).Finds(findings, 3);

    /// <summary>A blow lands at the very half count of the threat time, and whoever fell is up when it begins, whatever margin the brief leaves: as with the one count that is usual, and not with less.</summary>
    [Theory]
    [InlineData(0, 11, 1)]
    [InlineData(0, 12, 0)]
    [InlineData(2, 12, 0)]
    [InlineData(3, 12, 1)]
    [InlineData(3, 13, 0)]
    public void Nobody_begins_a_blow_before_they_are_up(int margin, int gap, int findings) =>
        Verify.Rule("reset-window").Given(Fight.Of("left-lead Bruno@12/250", $"{Falls} ; +{gap} swing-left > duck {{overswings}}").With(b => b with { Safety = b.Safety with { Margin = new(margin) } })).Finds(findings, 3);

    /// <summary>Who has kept their feet winds up while they recover: the next blow lands on the half count at which they are ready and there.</summary>
    [Theory]
    [InlineData(-1, 1)]
    [InlineData(0, 0)]
    public void Who_kept_their_feet_strikes_as_soon_as_they_are_ready(int by, int findings)
    {
        const string First = "swing-right > outside-block-left {limb-stopped}";
        var fight = Fight.Of("left-lead Bruno@12/250", First);
        var after = fight.Steps()[0].After;
        var lands = Replay.ThreatTime(fight.Scene, after, 0) + by;
        Verify.Rule("reset-window").Given(Fight.Of("left-lead Bruno@12/250", $"{First} ; +{lands - 2 - after.Time} swing-left > duck {{overswings}}")).Finds(findings, 2);
    }

    /// <summary>
    /// Sent through the mark to 4.90 m, 5.80 m on, Bruno needs 5 half counts at 2.53 m/s, from 6 to 11. Met on the way by a blow that he takes without a stop, he would be ready at 8; the 4 m back take him
    /// 8 half counts, so that a blow lands at 16, or at 19 if he arrives first. Met when he has arrived, he is not held back.
    /// </summary>
    [Theory]
    [InlineData(6, 16, 1)]
    [InlineData(6, 18, 1)]
    [InlineData(6, 19, 0)]
    [InlineData(11, 21, 0)]
    [InlineData(11, 20, 1)]
    public void Who_is_still_being_sent_arrives_first(int met, int lands, int findings)
    {
        var through = CaseBook.Reels with { Id = "through", Back = new(400), Round = 12 };
        var atOnce = CaseBook.Reels with { Id = "at-once", Posture = Posture.Ready, OpenSeconds = 0, ReadySeconds = 0 };
        var steps = new Case().At("12", 200).Knows(through, atOnce).PlayAll(Row(4, 0, "hit", "through", "blow"), Row(met, 0, "hit", "at-once"), Row(lands - 2, 0, "hit", "reels", "blow"));
        var tally = new Tally(true);
        RuleBook.All[RuleBook.IndexOf("reset-window")].Observe(steps[2].Scene, null, steps[2], tally);
        Assert.Equal(findings, tally.Findings.Count);
    }

    [Fact]
    public void Of_somebody_out_another_rule_speaks() =>
        Judge("swing-right > outside-block-left {limb-stopped} ; finishing-cross-right {out-flat} ; swing-left > duck {overswings}").FindsNothing();

    /// <summary>From 690 cm there are 600 to walk at 2 m/s, 10 half counts; the first contact comes 2 after the start of the move. The count-in gives 8.</summary>
    [Theory]
    [InlineData(600, 0)]
    [InlineData(690, 0)]
    [InlineData(700, 1)]
    [InlineData(4000, 1)]
    public void Nobody_sets_off_before_the_count_in(int distance, int findings) =>
        Verify.Rule("reset-window").Given(Fight.Of($"left-lead Bruno@12/{distance}", "swing-right > outside-block-left {limb-stopped}")).Finds(findings, 1);
}
