using Generator.Domain;
using Generator.Rules.Tests.Fights;

namespace Generator.Rules.Tests.Rules;

public sealed class OutStaysOutTests
{
    private const string Out = "swing-right > outside-block-left {limb-stopped} ; finishing-cross-right {out-flat} ; ";

    private static Found Judge(string moves) => Verify.Rule("out-stays-out").Given(Fight.Of("left-lead Bruno@12/250 Wanda@2/350", moves));

    [Theory]
    [Fails("out-stays-out")]
    [InlineData("cross-right {head-back}")]
    [InlineData("+4 swing-right > duck {overswings}")]
    [InlineData("+4 swing-right >")]
    public void Who_is_out_neither_acts_nor_is_acted_on(string then) => Judge(Out + then).Finds(1, 3).As(Severity.Broken).Says("out since count 3");

    [Theory]
    [Passes("out-stays-out")]
    [InlineData("Wanda: +4 swing-right > duck {overswings}")]
    [InlineData("catch-breath")]
    public void Others_go_on(string then) => Judge(Out + then).FindsNothing();
}
