using Generator.Domain;
using Generator.Rules.Tests.Fights;

namespace Generator.Rules.Tests.Rules;

public sealed class LengthTests
{
    /// <summary>Three moves of a count each; the routine ends a count after the last one starts.</summary>
    private static Found Judge(Domain.Length? length, int lastGap = 0) =>
        Verify.Rule("length").Given(Fight.Of("left-lead Bruno@12/250", $"jab-left ; cross-right ; +{lastGap} jab-left").With(b => b with { Length = length }));

    [Theory]
    [Fails("length")]
    [InlineData(6, 0)]
    [InlineData(5, 7)]
    public void Too_short_or_too_long(int asked, int gap) => Judge(new(asked, null, 1), gap).Finds(1, 0).As(Severity.Broken);

    [Theory]
    [Passes("length")]
    [InlineData(4, 0)]
    [InlineData(3, 0)]
    [InlineData(5, 6)]
    public void Within_the_tolerance(int asked, int gap) => Judge(new(asked, null, 1), gap).FindsNothing();

    [Fact]
    public void Half_a_count_over_the_tolerance_is_over() => Judge(new(5, null, 1), 7).Measures(6.5m, 6, "counts");

    [Theory]
    [InlineData(3, 0, 0)]
    [InlineData(4, 0, 1)]
    [InlineData(5, 2, 0)]
    [InlineData(6, 2, 1)]
    public void Moves_alone_have_the_tolerance(int asked, int tolerance, int findings) => Judge(new(null, asked, tolerance)).Finds(findings, 0);

    [Theory]
    [InlineData(4, 0)]
    [InlineData(2, 0)]
    [InlineData(5, 1)]
    public void With_counts_too_moves_may_be_one_off(int asked, int findings) => Judge(new(3, asked, 4)).Finds(findings, 0);

    [Fact]
    public void Both_are_told() => Judge(new(20, 20, 1)).Finds(2, 0);

    [Fact]
    public void Without_a_length_any_will_do() => Judge(null).FindsNothing();
}
