using Generator.Domain;
using Generator.Rules.Tests.Fights;

namespace Generator.Rules.Tests.Rules;

public sealed class EndingTests
{
    private const string BrunoOut = "Bruno: swing-right > outside-block-left {limb-stopped} ; finishing-cross-right {out-flat}";

    private const string WandaOut = "Wanda: +2 swing-right > outside-block-left {limb-stopped} ; finishing-cross-right {out-flat}";

    private static Found Judge(string moves, string? last, params string[] names) =>
        Verify.Rule("ending").Given(Fight.Of("left-lead Bruno@12/250 Wanda@2/250", moves).With(b => b with { Ending = new Domain.Ending(names, last) }));

    [Fact]
    [Fails("ending")]
    public void Wanda_is_still_in() => Judge(BrunoOut, null, "Bruno", "Wanda").Finds(1, 0).As(Severity.Broken).Concerns("Wanda");

    [Fact]
    [Passes("ending")]
    public void All_are_out() => Judge(BrunoOut + " ; " + WandaOut, "Wanda", "Bruno", "Wanda").FindsNothing();

    [Fact]
    public void The_last_is_not_the_one_asked_for() => Judge(BrunoOut + " ; " + WandaOut, "Bruno", "Bruno", "Wanda").Finds(1, 0).Says("Wanda goes out no sooner");

    [Fact]
    public void The_last_must_go_out_even_when_not_named_among_the_others() => Judge(BrunoOut, "Wanda", "Bruno").Finds(1, 0).Says("must go out last");

    [Fact]
    public void Who_is_not_out_is_told_once() => Judge(BrunoOut, "Wanda", "Bruno", "Wanda").Finds(1, 0);

    [Fact]
    public void Only_a_finish_counts() =>
        Judge("swing-right > outside-block-left {limb-stopped} ; cross-right {out-flat}", null, "Bruno").Finds(1, 0).Says("not by a finish");

    [Fact]
    public void Two_taken_together_are_both_out_but_neither_is_last()
    {
        const string Both = "Wanda: swing-right > outside-block-left {limb-stopped} ; body-punch-right {folds} ; Bruno: !swing-right > outside-block-left {limb-stopped} ; heads-together {out-crumples}";
        var fight = Fight.Of("square Bruno@12/250 Wanda@2/250", Both);
        Verify.Rule("ending").Given(fight.With(b => b with { Ending = new Domain.Ending(["Bruno", "Wanda"], null) })).FindsNothing();
        Verify.Rule("ending").Given(fight.With(b => b with { Ending = new Domain.Ending(["Bruno", "Wanda"], "Bruno") })).Finds(1, 0);
    }

    [Fact]
    public void An_open_ending_asks_for_nothing() => Verify.Rule("ending").Given(Fight.Of("left-lead Bruno@12/250", BrunoOut)).FindsNothing();
}
