using Generator.Domain;
using Generator.Rules.Tests.Fights;
using Shape = Generator.Domain.Arc;

namespace Generator.Rules.Tests.Rules;

/// <summary>Weights: jab 1, cross 2, hook 3, swing 4, finishing uppercut 5.</summary>
public sealed class ArcTests
{
    private static Found Judge(Shape arc, Domain.Length? length, string moves) =>
        Verify.Rule("arc").Given(Fight.Of("left-lead Bruno@12/250", moves).With(b => b with { Arc = arc, Length = length }));

    private static Domain.Length Moves(int moves) => new(null, moves, 0);

    [Fact]
    [Fails("arc")]
    public void Too_heavy_too_early() =>
        Judge(Shape.Rising, Moves(6), "finishing-uppercut-right ; jab-left ; cross-right ; jab-left ; swing-right ; jab-left").Finds(1, 1).As(Severity.Rough).Costs(2).Measures(5, 3, "weight");

    [Fact]
    [Passes("arc")]
    public void It_rises() => Judge(Shape.Rising, Moves(6), "jab-left ; hook-left ; cross-right ; swing-right ; finishing-uppercut-right ; jab-left").FindsNothing();

    [Fact]
    public void The_peak_is_missing() => Judge(Shape.Rising, Moves(6), "jab-left ; hook-left ; cross-right ; swing-right ; cross-right ; jab-left").Finds(1, 0).Costs(2).Measures(2, 4, "weight");

    [Theory]
    [InlineData("swing-right ; jab-left ; swing-left", 0)]
    [InlineData("swing-right ; finishing-uppercut-right ; swing-left", 1)]
    public void Even_asks_for_no_peak_and_nothing_above_four(string moves, int points) => Judge(Shape.Even, Moves(3), moves).Costs(points);

    /// <summary>Five parts of one move each.</summary>
    [Theory]
    [InlineData("hook-left ; swing-right ; hook-left ; swing-right ; hook-right", 0)]
    [InlineData("hook-left ; swing-right ; hook-left ; hook-right ; swing-right", 0)]
    [InlineData("hook-left ; hook-right ; hook-left ; swing-right ; hook-right", 1)]
    [InlineData("hook-left ; swing-right ; swing-left ; jab-right ; cross-right", 1 + 2)]
    public void Two_peaks_stand_in_the_second_and_the_last_parts(string moves, int points) => Judge(Shape.TwoPeaks, Moves(5), moves).Costs(points);

    /// <summary>Of 12 counts, 24 half counts, the last third starts at 16: a swing there is the peak, one at 15 is not.</summary>
    [Theory]
    [InlineData(16, 0)]
    [InlineData(15, 4)]
    public void With_counts_given_time_decides(int start, int points) => Judge(Shape.Rising, new Domain.Length(12, 1, 4), $"+{start} swing-right").Costs(points);

    [Fact]
    public void What_runs_over_belongs_to_the_last_part() => Judge(Shape.Rising, new Domain.Length(12, null, 4), "+60 swing-right").FindsNothing();

    [Fact]
    public void A_free_arc_or_no_length_asks_for_nothing()
    {
        Judge(Shape.Free, Moves(2), "finishing-uppercut-right ; jab-left").FindsNothing();
        Judge(Shape.Rising, null, "finishing-uppercut-right ; jab-left").FindsNothing();
        Judge(Shape.Rising, new Domain.Length(null, null, 4), "finishing-uppercut-right ; jab-left").FindsNothing();
    }
}
