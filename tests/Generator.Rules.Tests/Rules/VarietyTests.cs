using Generator.Domain;
using Generator.Rules.Tests.Fights;

namespace Generator.Rules.Tests.Rules;

public sealed class VarietyTests
{
    private static Found Judge(string moves) => Verify.Rule("variety").Given(Fight.Of("left-lead Bruno@12/250", moves));

    [Theory]
    [Fails("variety")]
    [InlineData("cross-right ; cross-right")]
    [InlineData("cross-right ; cross-left")]
    [InlineData("catch-breath ; catch-breath")]
    public void The_same_technique_twice_in_a_row(string moves) => Judge(moves).Finds(1, 2).As(Severity.Rough).Costs(3);

    [Fact]
    [Passes("variety")]
    public void Twice_with_another_between() => Judge("cross-right ; knee-left ; cross-right ; body-hook-left").FindsNothing();

    [Fact]
    public void A_third_time_within_eight_moves() =>
        Judge("cross-right ; knee-left ; cross-right ; catch-breath ; hook-left ; body-punch-left ; rise ; cross-right").Finds(1, 8).Costs(1);

    [Fact]
    public void A_third_time_within_nine_is_well() =>
        Judge("cross-right ; knee-left ; cross-right ; catch-breath ; hook-left ; body-punch-left ; rise ; low-hammer-left ; cross-right").FindsNothing();

    [Fact]
    public void Four_hits_at_one_height() => Judge("cross-right ; hook-left ; palm-heel-right ; back-fist-left").Finds(1, 4).Costs(1).Says("height");

    [Fact]
    public void A_defence_between_breaks_the_run_of_hits() => Judge("cross-right ; hook-left ; sway-back ; palm-heel-right ; back-fist-left").FindsNothing();

    [Fact]
    public void Four_hits_on_one_side() => Judge("cross-right ; body-punch-right ; palm-heel-right ; low-round-kick-right").Finds(1, 4).Costs(1).Says("side");

    [Fact]
    public void What_has_no_side_breaks_the_run() => Judge("cross-right ; body-punch-right ; duck ; outside-block-right ; knee-right").FindsNothing();

    [Fact]
    public void Points_add_up() => Judge("cross-right ; body-punch-right ; cross-right ; cross-right").Finds(3, 4).Costs(3 + 1 + 1);

    [Fact]
    public void An_attack_that_nothing_answers_is_passed_over() => Judge("cross-right ; swing-right > ; cross-right").Finds(1, 3).Costs(3);
}
