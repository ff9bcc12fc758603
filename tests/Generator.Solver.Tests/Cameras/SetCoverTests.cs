using System.Numerics;
using FsCheck;
using FsCheck.Fluent;
using FsCheck.Xunit;
using Generator.Solver.Cameras;

namespace Generator.Solver.Tests.Cameras;

public class SetCoverTests
{
    /// <summary>The naive twin tries every choice of up to eight.</summary>
    [Property(MaxTest = 150)]
    public Property No_other_choice_is_smaller_or_less_disliked() => Prop.ForAll(
        Arb.From(Gen.Choose(1, 8).SelectMany(n => Gen.ListOf(Gen.Choose(0, 127).SelectMany(bits => Gen.Choose(0, 9).Select(d => new Coverage(bits, d))), n))),
        choices =>
        {
            var list = choices.ToList();
            var chosen = SetCover.Of(list)!;
            var all = list.Aggregate(BigInteger.Zero, (sum, c) => sum | c.Covers);
            var best = Enumerable.Range(0, 1 << list.Count)
                .Select(s => Enumerable.Range(0, list.Count).Where(i => (s >> i & 1) == 1).ToList())
                .Where(s => s.Aggregate(BigInteger.Zero, (sum, i) => sum | list[i].Covers) == all)
                .Min(s => (s.Count, s.Sum(i => list[i].Dislike)));
            var covered = chosen.Aggregate(BigInteger.Zero, (sum, i) => sum | list[i].Covers);
            return (covered == all && best == (chosen.Count, chosen.Sum(i => list[i].Dislike))).Classify(chosen.Count > 1, "more than one").Classify(chosen.Count > 2, "more than two");
        });

    /// <summary>Greed takes the set of six first and needs three; two are enough.</summary>
    [Fact]
    public void The_fewest_are_not_found_by_greed() => Assert.Equal([1, 2], SetCover.Of([new Coverage(0b0111_1110, 0), new Coverage(0b0001_1111, 5), new Coverage(0b1110_0000, 5)])!.ToArray());

    [Fact]
    public void Nothing_to_cover_takes_nothing()
    {
        Assert.Empty(SetCover.Of([])!);
        Assert.Empty(SetCover.Of([new Coverage(0, 3)])!);
    }

    [Fact]
    public void A_stop_proves_nothing() => Assert.Null(SetCover.Of([new Coverage(1, 0), new Coverage(2, 0)], new CancellationToken(canceled: true)));
}
