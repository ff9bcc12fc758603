using Generator.Domain;
using Generator.Rules.Tests.Fights;

namespace Generator.Rules.Tests.Rules;

public sealed class TempoFloorTests
{
    private static Found Judge(string tempo, string moves) => Verify.Rule("tempo-floor").Given(Fight.Of($"left-lead Bruno@12/250 tempo={tempo}", moves));

    /// <summary>The second row starts a whole count, the slip's own, after the first and a gap.</summary>
    private static string Kick(string gap) => $"cross-right > slip-left {{falls-short}} ; {gap} spinning-back-kick-right {{folds}}";

    /// <summary>One count of 60/160 s lasts 0.375 s; the slip needs 0.4 s and lasts 1.5 counts.</summary>
    [Fact]
    [Fails("tempo-floor")]
    public void A_slip_is_cut_short() => Judge("160", Kick("+0")).Finds(1, 2).As(Severity.Unsafe).Measures(-0.5m, 0, "counts").Says("0.19 s");

    [Theory]
    [Passes("tempo-floor")]
    [InlineData("100", "+0")]
    [InlineData("150", "+0")]
    [InlineData("160", "+1")]
    public void It_has_its_time(string tempo, string gap) => Judge(tempo, Kick(gap)).FindsNothing();

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
