using Generator.Domain;
using Generator.Rules.Tests.Fights;

namespace Generator.Rules.Tests.Rules;

public sealed class SetbacksTests
{
    private const string Moves = "swing-right > takes-face-hit {presses-on} ; +4 swing-right > knocked-down {presses-on} ; get-up ; catch-breath";

    private static Found Judge(int? setbacks, int? pauses) =>
        Verify.Rule("setbacks").Given(Fight.Of("left-lead Bruno@12/250", Moves).With(b => b with { Setbacks = setbacks, Pauses = pauses }));

    [Theory]
    [Fails("setbacks")]
    [InlineData(1, null)]
    [InlineData(3, null)]
    [InlineData(0, null)]
    [InlineData(null, 0)]
    [InlineData(null, 2)]
    public void More_or_fewer_than_asked_for(int? setbacks, int? pauses) => Judge(setbacks, pauses).Finds(1, 0).As(Severity.Broken);

    [Theory]
    [Passes("setbacks")]
    [InlineData(2, 1)]
    [InlineData(2, null)]
    [InlineData(null, null)]
    public void As_many_as_asked_for(int? setbacks, int? pauses) => Judge(setbacks, pauses).FindsNothing();

    [Fact]
    public void Getting_up_is_no_pause_of_the_story() => Judge(null, 2).Measures(1, 2, "pauses");
}
