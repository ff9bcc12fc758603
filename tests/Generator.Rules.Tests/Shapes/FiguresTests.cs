using Generator.Rules.Shapes;
using Generator.Rules.Tests.Fights;

namespace Generator.Rules.Tests.Shapes;

public sealed class FiguresTests
{
    private static IReadOnlyList<Figure> Of(string start, string moves) => Figures.Of(FightShape.Of(Fight.Of(start, moves).Scene, Fight.Of(start, moves).Routine));

    private static readonly IReadOnlyList<Figure> Queue = Of(
        "left-lead Bruno@12/250 Wanda@2/250",
        string.Join(" ; ", Enumerable.Repeat("Bruno: +4 swing-right > outside-block-left {limb-stopped} ; Wanda: +4 swing-right > outside-block-left {limb-stopped}", 10)) + " ; run-off-right {out-flees}");

    [Fact]
    public void Each_of_the_eight_rules_has_figures_and_no_two_are_alike()
    {
        Assert.Equal(["rhythm", "story", "climax", "thinning", "manner", "momentum", "echo", "purpose"], Queue.Select(f => f.Rule).Distinct());
        Assert.Equal(Queue.Count, Queue.Select(f => f.Id).Distinct(StringComparer.Ordinal).Count());
        Assert.All(Queue, f => Assert.True(f.Least is not null || f.Most is not null, f.Id));
    }

    [Fact]
    public void What_is_off_is_told_how_to_be_lifted_and_nothing_else_is() =>
        Assert.All(Queue, f => Assert.Equal((f.IsMet == false, f.IsMet == false), (f.Lift.Length > 0, f.Off > 0)));

    /// <summary>Nineteen exchanges of one move, then one of two: swings at 6, 12, 18 … and the last out at move 21.</summary>
    [Theory]
    [InlineData("equal-lengths", 16)]
    [InlineData("long-exchanges", 0)]
    [InlineData("equal-gaps", 95)]
    [InlineData("flurries", 0)]
    [InlineData("late-setbacks", 0)]
    [InlineData("setback-cost", null)]
    [InlineData("last-short", 0)]
    [InlineData("last-fight", 2)]
    [InlineData("run-offs", 1)]
    [InlineData("first-out", 100)]
    [InlineData("lacking-moves", null)]
    [InlineData("blows", 0)]
    [InlineData("told-apart", 50)]
    [InlineData("same-limb", null)]
    [InlineData("most-returns", 20)]
    [InlineData("idle-holds", 0)]
    [InlineData("punch-bags", 0)]
    [InlineData("unseen", 0)]
    public void Figures_of_a_queue(string id, int? value) => Assert.Equal(value, Queue.Single(f => f.Id == id).Value);

    [Fact]
    public void A_lift_names_moves_and_counts()
    {
        Assert.StartsWith("19 exchanges of 1 move follow one another from move 1 (count 3)", Queue.Single(f => f.Id == "equal-lengths").Lift, StringComparison.Ordinal);
        Assert.Contains("Wanda goes out first, at move 21", Queue.Single(f => f.Id == "first-out").Lift, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(5, null, 3, false, 2)]
    [InlineData(3, null, 3, true, 0)]
    [InlineData(0, 1, null, false, 1)]
    [InlineData(null, 1, null, null, 0)]
    [InlineData(5, 1, 4, false, 1)]
    public void A_band_says_how_far_off(int? value, int? least, int? most, bool? met, int off)
    {
        var figure = new Figure("rhythm", "x", "x", "moves", value, least, most, string.Empty);
        Assert.Equal((met, off), (figure.IsMet, figure.Off));
    }
}
