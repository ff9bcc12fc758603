using Generator.Domain;
using Generator.Rules.Tests.Fights;

namespace Generator.Rules.Tests.Rules;

/// <summary>Ten moves asked for, unless a test says otherwise.</summary>
public sealed class ThinningTests
{
    private const string Jab = "jab-left {rocks-back}";

    private const string Block = "swing-right > outside-block-left {limb-stopped}";

    private static Found Judge(string moves, Domain.Length length, string? last = null) =>
        Verify.Rule("thinning").Given(Fight.Of("left-lead Bruno@12/250 Wanda@2/250", moves).With(b => b with { Judged = [FightRule.Thinning], Length = length, Ending = last is null ? null : new Ending([last], last) }));

    private static string Jabs(string who, int number) => who + ": " + string.Join(" ; ", Enumerable.Repeat(Jab, number));

    /// <summary>Move 6 of 10 begins at 50 %, move 8 at 70 %.</summary>
    [Theory]
    [Fails("thinning")]
    [InlineData(4, 0)]
    [InlineData(5, 1)]
    [InlineData(7, 3)]
    public void The_first_out_comes_late(int before, int points)
    {
        var found = Judge(Jabs("Bruno", before) + " ; finishing-hook-left {out-crumples}", new Domain.Length(null, 10, 4));
        found.Costs(points);
        if (points > 0)
        {
            found.Finds(1, before + 1).Says("This is the first out");
        }
    }

    /// <summary>The uppercut ends at half count 8 + 4 = 12, of 24.</summary>
    [Fact]
    public void Where_the_length_is_in_counts_so_is_the_time() =>
        Judge(Jabs("Bruno", 4) + " ; finishing-uppercut-right {out-flat}", new Domain.Length(12, null, 4)).Says("the first out");

    [Theory]
    [InlineData(9, null, 1)]
    [InlineData(11, null, 3)]
    [InlineData(12, "Bruno", 0)]
    [InlineData(13, "Bruno", 1)]
    public void Somebody_takes_more_blows_than_one_believes(int blows, string? last, int points) => Judge(Jabs("Bruno", blows), new Domain.Length(null, 10, 4), last).Costs(points);

    [Fact]
    public void Where_there_is_room_everybody_has_four_moves() =>
        Judge(Jabs("Bruno", 5) + " ; " + Jabs("Wanda", 1), new Domain.Length(null, 12, 8)).Costs(3).Measures(1, 4, "moves").Concerns("Wanda");

    [Fact]
    [Passes("thinning")]
    public void Everybody_has_a_part_and_one_goes_in_time() =>
        Judge(Jabs("Bruno", 3) + " ; finishing-hook-left {out-crumples} ; " + Jabs("Wanda", 4), new Domain.Length(null, 12, 4)).FindsNothing();

    [Fact]
    public void A_single_attacker_is_last_and_takes_what_there_is() =>
        Verify.Rule("thinning").Given(Fight.Of("left-lead Bruno@12/250", Jabs("Bruno", 15) + " ; finishing-hook-left {out-crumples}").With(b => b with { Judged = [FightRule.Thinning], Length = new Domain.Length(null, 16, 1) })).FindsNothing();

    /// <summary>Four jabs end at half count 8, the attack lands two after it starts: so worn, Bruno needs 4 + 4. With three he is as good as new.</summary>
    [Theory]
    [InlineData(4, "head-back", 5, 1)]
    [InlineData(4, "head-back", 6, 0)]
    [InlineData(5, "head-back", 6, 1)]
    [InlineData(5, "head-back", 7, 0)]
    [InlineData(3, "head-back", 0, 0)]
    [InlineData(4, "rocks-back", 6, 1)]
    [InlineData(4, "rocks-back", 5, 2)]
    [InlineData(3, "rocks-back", 0, 0)]
    public void Blows_wear(int blows, string reaction, int gap, int points) =>
        Judge($"Bruno: {string.Join(" ; ", Enumerable.Repeat(Jab, blows - 1).Append($"jab-left {{{reaction}}}"))} ; +{gap} {Block}", new Domain.Length(null, 10, 4)).Costs(points);

    /// <summary>The last blow only moved him, and the throw after it puts him down.</summary>
    [Fact]
    public void A_throw_beats_as_a_blow_does() =>
        Judge($"{Jabs("Bruno", 4)} ; hip-throw-right {{thrown-over}} ; +12 {Block}", new Domain.Length(null, 10, 4)).FindsNothing();

    /// <summary>Who has attacked since then has shown that they can: only the first attack after a blow is judged.</summary>
    [Fact]
    public void Somebody_worn_goes_on_once_back() =>
        Judge($"Bruno: {string.Join(" ; ", Enumerable.Repeat("jab-left {head-back}", 4))} ; +6 {Block} ; {Block}", new Domain.Length(null, 10, 4)).FindsNothing();

    [Fact]
    public void A_single_attacker_is_not_worn() =>
        Verify.Rule("thinning").Given(Fight.Of("left-lead Bruno@12/250", Jabs("Bruno", 4) + " ; " + Block).With(b => b with { Judged = [FightRule.Thinning], Length = new Domain.Length(null, 10, 1) })).FindsNothing();

    [Fact]
    [Fails("thinning")]
    public void A_worn_attacker_is_named_with_figures() =>
        Judge($"{Jabs("Bruno", 4)} ; +1 {Block}", new Domain.Length(null, 10, 4)).Finds(2, 5).Says("Bruno has taken 4 blows");
}
