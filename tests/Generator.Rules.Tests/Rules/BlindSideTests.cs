using Generator.Domain;
using Generator.Rules.Tests.Fights;

namespace Generator.Rules.Tests.Rules;

public sealed class BlindSideTests
{
    private static Found Judge(string start, string moves) => Verify.Rule("blind-side").Given(Fight.Of(start, moves));

    [Fact]
    [Fails("blind-side")]
    public void A_charge_from_behind_has_no_cue() =>
        Judge("left-lead Bruno@6/250", "charge-rear > let-pass-left {stumbles-past}").Finds(1, 1).As(Severity.Unsafe).Measures(180, 60, "degrees");

    [Fact]
    [Passes("blind-side")]
    public void With_a_voice_cue_it_is_expected() => Judge("left-lead Bruno@6/250", "!charge-rear > let-pass-left {stumbles-past}").FindsNothing();

    [Theory]
    [InlineData("2", 0)]
    [InlineData("2:30", 1)]
    [InlineData("10", 0)]
    [InlineData("9:30", 1)]
    public void Sixty_degrees_to_either_side_are_seen(string clock, int findings) =>
        Judge($"left-lead Bruno@{clock}/250", "swing-right > duck {overswings}").Finds(findings, 1);

    [Theory]
    [InlineData(Cue.Sound, 0)]
    [InlineData(Cue.Touch, 1)]
    public void Sound_warns_and_touch_comes_too_late(Cue cue, int findings)
    {
        var fight = Fight.Of("left-lead Bruno@6/250", "charge-rear > let-pass-left {stumbles-past}");
        Verify.Rule("blind-side").Given(fight with { Moves = [fight.Moves[0] with { Cue = cue }] }).Finds(findings, 1);
    }

    /// <summary>A grab at the sleeve needs 0.5 s and has one count, which lasts that long at 120; bringing the hands up takes 0.53 s.</summary>
    [Theory]
    [InlineData("120", 1)]
    [InlineData("113", 0)]
    public void A_short_attack_leaves_no_time_to_react(string tempo, int findings) =>
        Judge($"left-lead Bruno@3/250 tempo={tempo}", "!sleeve-grab-right >").Finds(findings, 1);

    [Fact]
    public void What_nothing_answers_is_judged_too() => Judge("left-lead Bruno@6/250", "charge-rear >").Finds(1, 1);
}
