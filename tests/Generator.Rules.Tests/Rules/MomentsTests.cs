using Generator.Domain;
using Generator.Rules.Tests.Fights;

namespace Generator.Rules.Tests.Rules;

public sealed class MomentsTests
{
    private const string Throw = "cross-right > wrist-catch-left {arm-caught} ; hip-throw-right {thrown-over}";

    private static Found Judge(string moves, params Moment[] moments) =>
        Verify.Rule("moments").Given(Fight.Of("square Bruno@12/250 Wanda@2/250", moves).With(b => b with { Moments = moments }));

    private static MomentMove Move(string technique, string? attacker = null, string? attack = null, string? reaction = null) => new(technique, attacker, attack, reaction);

    private static Moment Any(params MomentMove[] moves) => new(moves, null, null);

    [Fact]
    [Fails("moments")]
    public void The_throw_does_not_come() => Judge("cross-right > wrist-catch-left {arm-caught}", Any(Move("hip-throw", "Bruno"))).Finds(1, 0).As(Severity.Broken).Says("hip-throw on Bruno");

    [Theory]
    [Passes("moments")]
    [InlineData("hip-throw", null, null, null)]
    [InlineData("hip-throw-right", "Bruno", null, "thrown-over")]
    [InlineData("wrist-catch", "Bruno", "cross", "arm-caught")]
    [InlineData("wrist-catch-left", null, "cross-right", null)]
    [InlineData("hip-throw", "Bruno", "none", "thrown-over")]
    public void It_comes(string technique, string? attacker, string? attack, string? reaction) => Judge(Throw, Any(Move(technique, attacker, attack, reaction))).FindsNothing();

    [Theory]
    [InlineData("hip-throw-left", null, null, null)]
    [InlineData("hip-throw", "Wanda", null, null)]
    [InlineData("wrist-catch", null, "cross-left", null)]
    [InlineData("hip-throw", null, "cross", null)]
    [InlineData("wrist-catch", null, "none", null)]
    [InlineData("hip-throw", null, null, "thrown-and-held")]
    public void Something_else_comes(string technique, string? attacker, string? attack, string? reaction) => Judge(Throw, Any(Move(technique, attacker, attack, reaction))).Finds(1, 0);

    /// <summary>The throw starts at count 2, half count 2.</summary>
    [Theory]
    [InlineData(2, 2, 0)]
    [InlineData(3, 9, 1)]
    [InlineData(0, 1, 1)]
    public void It_comes_within_its_counts(int from, int to, int findings) => Judge(Throw, new Moment([Move("hip-throw")], new HalfCounts(from), new HalfCounts(to))).Finds(findings, 0);

    [Fact]
    public void Of_a_run_the_first_move_decides_when() => Judge(Throw, new Moment([Move("wrist-catch"), Move("hip-throw")], null, new HalfCounts(0))).FindsNothing();

    [Theory]
    [InlineData("jab-left ; cross-right ; hook-left", 0)]
    [InlineData("jab-left ; catch-breath ; cross-right ; hook-left", 1)]
    [InlineData("jab-left ; jab-left ; cross-right ; hook-left", 0)]
    public void A_run_stands_together(string moves, int findings) => Judge(moves, Any(Move("jab"), Move("cross"), Move("hook"))).Finds(findings, 0);

    [Fact]
    public void A_run_that_starts_over_within_itself_is_found() => Judge("jab-left ; cross-right ; jab-left ; cross-right ; hook-left", Any(Move("jab"), Move("cross"), Move("jab"), Move("cross"), Move("hook"))).FindsNothing();

    [Fact]
    public void A_later_start_of_a_repeating_run_is_found() => Judge("jab-left ; jab-left ; jab-left ; cross-right", Any(Move("jab"), Move("jab"), Move("cross"))).FindsNothing();

    [Fact]
    public void Each_missing_moment_is_told() => Judge(Throw, Any(Move("duck")), Any(Move("hip-throw")), Any(Move("slip"))).Finds(2, 0);
}
