using FsCheck.Xunit;
using Generator.Solver.Explaining;

namespace Generator.Solver.Tests.Explaining;

public class ClashesTests
{
    /// <summary>
    /// Five statements of O'Sullivan, Papadopoulos, Faltings and Pu 2007 (Representative Explanations for Over-Constrained Problems): a budget of
    /// 3000, options of 500, 500, 500 and 2600, the first two of which exclude each other.
    /// </summary>
    private static Answer Options(ulong set)
    {
        bool Has(int c) => (set & (1UL << (c - 1))) != 0;
        var cost = (Has(2) ? 500 : 0) + (Has(3) ? 500 : 0) + (Has(4) ? 500 : 0) + (Has(5) ? 2600 : 0);
        return (Has(1) && cost > 3000) || (Has(2) && Has(3)) ? Answer.Impossible : Answer.Solvable;
    }

    [Fact]
    public void All_published_conflicts_and_ways_out_are_found()
    {
        var report = new Clashes(5, Options).Report();
        Assert.Equal(Sets([2, 3], [1, 2, 5], [1, 3, 5], [1, 4, 5]), report.Clashes.Order());
        Assert.Equal(Sets([2, 3, 4], [3, 5], [2, 5], [1, 3], [1, 2]), report.GiveUps.Order());
        Assert.True(report.Proven && report.Complete);
    }

    [Theory]
    [InlineData(new[] { 1, 2, 3, 4, 5 }, new[] { 1, 4, 5 }, new[] { 2, 3 })]
    [InlineData(new[] { 2, 1, 3, 4, 5 }, new[] { 2, 3 }, new[] { 1, 4, 5 })]
    public void Which_conflict_is_found_depends_on_the_order(int[] order, int[] other, int[] found)
    {
        var shrunk = new Clashes(5, Options).Shrink(0b11111, order.Select(c => c - 1));
        Assert.Equal(Set(found), shrunk);
        Assert.NotEqual(Set(other), shrunk);
    }

    /// <summary>Options of 500, 500, 800, 500 and 2600 within 3000, as in Junker 2004 (QuickXplain).</summary>
    [Fact]
    public void Every_conflict_is_the_dear_option_and_one_other()
    {
        int[] costs = [500, 500, 800, 500, 2600];
        var report = new Clashes(5, set => Enumerable.Range(0, 5).Where(i => (set & (1UL << i)) != 0).Sum(i => costs[i]) > 3000 ? Answer.Impossible : Answer.Solvable).Report();
        Assert.Equal(Sets([1, 5], [2, 5], [3, 5], [4, 5]), report.Clashes.Order());
    }

    [Property(MaxTest = 200)]
    public bool The_naive_twin_finds_the_same(int seed)
    {
        var dice = new Random(seed);
        var count = 2 + dice.Next(6);
        var forbidden = Enumerable.Range(0, 1 + dice.Next(5)).Select(_ => (ulong)(1 + dice.Next((1 << count) - 1))).ToList();
        bool Holds(ulong set) => !forbidden.Any(f => (f & set) == f);
        var report = new Clashes(count, set => Holds(set) ? Answer.Solvable : Answer.Impossible).Report();
        var all = Enumerable.Range(0, 1 << count).Select(s => (ulong)s).ToList();
        var everything = (1UL << count) - 1;
        var clashes = all.Where(s => !Holds(s) && Inside(s).All(Holds)).Order();
        var giveUps = all.Where(s => Holds(everything & ~s) && Inside(s).All(t => !Holds(everything & ~t))).Order();
        return report.Clashes.Order().SequenceEqual(clashes) && report.GiveUps.Order().SequenceEqual(giveUps) && report.Proven;
    }

    [Fact]
    public void What_is_not_known_is_never_told_as_proven()
    {
        var unknown = new Clashes(3, set => set == 0b111 ? Answer.Unknown : Answer.Solvable).Report();
        Assert.Equal(Answer.Unknown, unknown.All);
        Assert.False(unknown.Proven);
        Assert.Equal([0b111UL], unknown.Clashes);

        var mixed = new Clashes(3, set => (set & 0b011) == 0b011 ? Answer.Impossible : set == 0b110 ? Answer.Unknown : Answer.Solvable).Report();
        Assert.True(mixed.Proven);
        Assert.Equal([0b011UL], mixed.Clashes);
        Assert.False(mixed.Complete);
    }

    private static IEnumerable<ulong> Inside(ulong set) => Enumerable.Range(0, 64).Where(i => (set & (1UL << i)) != 0).Select(i => set & ~(1UL << i));

    private static ulong Set(int[] members) => members.Aggregate(0UL, (set, c) => set | (1UL << (c - 1)));

    private static IEnumerable<ulong> Sets(params int[][] sets) => sets.Select(Set).Order();
}
