using Generator.Rules.Shapes;
using Generator.Rules.Tests.Fights;

namespace Generator.Rules.Tests.Shapes;

/// <summary>Every measure of a fight of four moves, worked by hand: hit by a swing (0 to 2), the same swing blocked at 8 (contact 10), a cross (10 to 12), a finish (12 to 14).</summary>
public sealed class FightShapeTests
{
    private const string Moves = "swing-right > takes-face-hit {presses-on} ; +6 swing-right > outside-block-left {limb-stopped} ; cross-right {head-back} ; finishing-hook-left {out-crumples}";

    private static readonly FightShape Shape = Of("left-lead Bruno@12/250", Moves);

    private static FightShape Of(string start, string moves) => FightShape.Of(Fight.Of(start, moves).Scene, Fight.Of(start, moves).Routine);

    [Fact]
    public void Contacts_come_at_the_attack_and_at_the_end_of_a_hit()
    {
        Assert.Equal(14, Shape.End);
        Assert.Equal([new Contact(2, 1, 0, false, true, 2), new Contact(10, 2, 0, false, false, 2), new Contact(12, 3, 0, true, true, 2), new Contact(14, 4, 0, true, true, 4)], Shape.Contacts);
    }

    [Fact]
    public void Who_only_walks_in_makes_no_contact() =>
        Assert.Equal([3], Of("left-lead Bruno@12/250", "+1 walk-in > jab-left {head-back}").Contacts.Select(c => c.Time));

    [Fact]
    public void Exchanges_begin_with_each_attack() => Assert.Equal([new Exchange(1, 1, 0, 0), new Exchange(2, 3, 0, 8)], Shape.Exchanges);

    [Fact]
    public void Exchanges_begin_with_another_attacker() =>
        Assert.Equal([(1, 2), (3, 1)], Of("left-lead Bruno@12/250 Wanda@2/250", "Bruno: swing-right > outside-block-left {limb-stopped} ; cross-right {head-back} ; Wanda: jab-left {head-back}").Exchanges.Select(e => (e.First, e.Moves)));

    [Fact]
    public void Gaps_flurry_and_intensity()
    {
        Assert.Equal([8, 2, 2], Shape.Intervals.Lengths);
        Assert.Equal((2, 1, 60m), (Shape.Intervals.Pairs, Shape.Intervals.EqualPairs, Shape.Intervals.Npvi));
        Assert.Equal([new Flurry(10, 14, 3, null)], Shape.Flurries);
        Assert.Equal([1, 3], Shape.Intensity.Contacts);
        Assert.Equal([2, 8], Shape.Intensity.Weight);
        Assert.Equal([1, 0, 3], Shape.Intensity.Thirds);
    }

    [Fact]
    public void Who_is_on_top() =>
        Assert.Equal([new UpperSpan(Upper.Even, 0, 2), new UpperSpan(Upper.Attackers, 2, 12), new UpperSpan(Upper.Hero, 12, 14)], Shape.OnTop);

    [Fact]
    public void A_setback_costs_until_the_hero_scores_and_its_attack_is_beaten_later() => Assert.Equal([new Setback(1, 2, 8, true, 2)], Shape.Setbacks);

    [Fact]
    public void After_a_setback_the_same_family_is_no_change()
    {
        var again = Of("left-lead Bruno@12/250", "walk-in > jab-left {rocks-back} ; +8 swing-right > takes-face-hit {presses-on} ; cross-right {head-back}");
        Assert.Equal([new Setback(2, 12, 0, false, null)], again.Setbacks);
    }

    [Fact]
    public void The_end_is_told_beside_the_peak()
    {
        Assert.Equal([new Out(0, 4, 14, 4, false)], Shape.Outs);
        Assert.Equal(new LastFight(0, 4, 4, 4, 4), Shape.LastFight);
    }

    [Fact]
    public void A_last_fight_begins_after_the_move_on_anybody_else()
    {
        var shape = Of("left-lead Bruno@12/250 Wanda@2/250", "Wanda: walk-in > jab-left {rocks-back} ; Bruno: +4 swing-right > outside-block-left {limb-stopped} ; run-off-right {out-flees}");
        Assert.Equal((0, 2, 2), (shape.LastFight!.Value.Attacker, shape.LastFight.Value.Moves, shape.LastFight.Value.Weight));
        Assert.True(shape.Outs[0].RunsOff);
    }

    [Fact]
    public void Wear_counts_what_each_does_and_takes()
    {
        var (hero, bruno) = (Shape.Wears[0], Shape.Wears[1]);
        Assert.Equal((-1, 4, 0, 1, 0, 8, 0), (hero.Performer, hero.Moves, hero.Attacks, hero.Blows, hero.Falls, hero.Effort, hero.Way));
        Assert.Equal((0, 4, 2, 2, 2, 1), (bruno.Performer, bruno.Moves, bruno.Attacks, bruno.Blows, bruno.HeadBlows, bruno.Falls));
        Assert.Equal((2 + 2) + (2 + 2) + 2 + 2, bruno.Effort);
        Assert.InRange(bruno.Way, 150, 230);
    }

    [Fact]
    public void Levels_sides_and_areas()
    {
        Assert.Equal(new Levels(0, 0, 2, 1, 1), Shape.Levels);
        Assert.Equal(2, Shape.Areas.Used);
    }

    [Theory]
    [InlineData("tackle > sprawl {front-fall} ; knee-pin-right {pinned} ; let-go {left-lying}", 3)]
    [InlineData("tackle > sprawl {front-fall} ; knee-pin-right {pinned} ; ground-punch-right {jolts-in-hold} ; let-go {left-lying}", 0)]
    public void A_hold_let_go_without_a_blow_is_for_nothing(string moves, int move) =>
        Assert.Equal(move == 0 ? [] : [move], Of("square Bruno@12/250", moves).ForNothing.Holds);

    [Fact]
    public void Punch_bags_and_attacks_out_of_sight()
    {
        var shape = Of("left-lead Bruno@12/250 Wanda@6/250", "Bruno: walk-in > jab-left {rocks-back} ; Wanda: +6 !swing-right > takes-face-hit {presses-on}");
        Assert.Equal([1], shape.ForNothing.PunchBags);
        Assert.Equal([2], shape.ForNothing.Unseen);
    }

    [Fact]
    public void The_same_limb_twice_is_a_broken_chain()
    {
        var chain = Of("left-lead Bruno@12/250", "walk-in > cross-right {head-back} ; elbow-across-right {head-turns} ; hook-left {side-fall}").Chain;
        Assert.Equal(2, chain.Links);
        Assert.Equal([2], chain.SameLimb);
        Assert.Empty(chain.Against);
    }

    [Fact]
    public void What_returns_with_another_ending_is_told()
    {
        var returns = Of("left-lead Bruno@12/250", "walk-in > hook-left {head-turns} ; hook-left {head-turns} ; hook-right {side-fall} ; cross-right").Returns;
        Assert.Equal((2, 4, 3, "hook"), (returns.Techniques, returns.Uses, returns.Most, returns.MostId));
        Assert.Equal([3], returns.Otherwise);
        Assert.Equal(1, returns.Runs);
    }

    [Fact]
    public void A_fight_without_moves_has_a_shape()
    {
        var empty = Of("left-lead Bruno@12/250", string.Empty);
        Assert.Equal(0, empty.End);
        Assert.Null(empty.LastFight);
        Assert.Empty(empty.OnTop);
        Assert.All(Figures.Of(empty), f => Assert.NotEqual(false, f.IsMet));
    }
}
