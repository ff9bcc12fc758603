using Generator.Domain;
using Generator.Rules.Tests.Fights;

namespace Generator.Rules.Tests.Rules;

public sealed class TempoFloorTests
{
    private static Found Judge(string tempo, string moves) => Verify.Rule("tempo-floor").Given(Fight.Of($"left-lead Bruno@12/250 tempo={tempo}", moves));

    private const string Kick = "cross-right > slip-left {falls-short} ; spinning-back-kick-right {folds}";

    /// <summary>Two counts of 60/125 s last 0.96 s; the kick needs 1.05 s.</summary>
    [Fact]
    [Fails("tempo-floor")]
    public void A_turning_kick_is_rushed() => Judge("125", Kick).Finds(1, 2).As(Severity.Unsafe).Measures(0.96m, 1.05m, "s");

    [Theory]
    [Passes("tempo-floor")]
    [InlineData("100")]
    [InlineData("114")]
    public void It_has_its_time(string tempo) => Judge(tempo, Kick).FindsNothing();

    /// <summary>A charge needs 1 s and has 2 counts; at 121 they last 0.99 s. Letting pass needs less.</summary>
    [Fact]
    public void An_attack_has_its_fewest_seconds_too() =>
        Verify.Rule("tempo-floor").Given(Fight.Of("left-lead Bruno@6/250 tempo=121", "!charge-rear > let-pass-left {stumbles-past}")).Finds(1, 1).Says("charge rear has 0.99 s");

    [Fact]
    public void A_move_does_not_start_before_the_last_is_over() =>
        Judge("100", "cross-right > slip-left {falls-short} ; -1 cross-right {head-back}").Finds(1, 2).As(Severity.Unsafe).Measures(-0.5m, 0, "counts");

    /// <summary>The swing at 1, the cross written below it at 4, then a row at 3: two counts back from the cross, whose end is at 5.</summary>
    [Theory]
    [InlineData("cross-right {head-back}")]
    [InlineData("swing-left >")]
    public void Rows_are_in_order_of_count(string late) =>
        Judge("100", $"cross-right > slip-left {{falls-short}} ; +4 cross-right {{head-back}} ; -4 {late} ; +9 cross-right {{head-back}}")
            .Finds(1, 3).As(Severity.Unsafe).Says("Count 3 stands below count 4").Measures(-1, 0, "counts");

    [Fact]
    public void A_second_attack_may() => Judge("100", "cross-right > slip-left {falls-short} ; & swing-left >").FindsNothing();
}
