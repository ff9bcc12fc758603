using Generator.Domain.Sketches;
using Generator.Library.Files.Notes;
using Generator.Library.Reading;
using Generator.Solver.Completing;
using Generator.Solver.Tests.Constructing;

namespace Generator.Solver.Tests.Completing;

public class LeastProofTests
{
    /// <summary>Whoever is to submit must be held first: something is put in. What was found is itself a routine that costs less than one more, so that is never proven.</summary>
    [Fact]
    public void What_gives_is_proven_to_be_the_least_and_nothing_that_is_more()
    {
        var sketch = Read("Ash: 12, 3 m\nAsh: jab > slips\nAsh: > submit\n");
        var completed = Complete.Soon(sketch, Drafts.Book, 6_000_000, SketchPart.Added.Price())!;
        Assert.Equal([SketchPart.Added], completed.Gave.Select(g => g.Part));
        var proof = new Complete(sketch, Drafts.Book, CancellationToken.None).Proof;
        Assert.True(proof.CanAsk);
        Assert.True(proof.Below(completed.Price, CancellationToken.None).IsLeast);
        var (isLeast, less) = proof.Below(completed.Price + 1, CancellationToken.None);
        Assert.False(isLeast);
        Assert.Equal(completed.Price, less!.Whole.Price);
    }

    /// <summary>Three blows in a count: at least one of their counts gives, however all of them are moved.</summary>
    [Fact]
    public void Counts_that_cannot_be_kept_are_proven_not_to_be()
    {
        var sketch = Read("Ash: 12, 3 m\nAsh: jab > slips @4\nAsh: > cross @6\nAsh: > lead hook @6&\nAsh: > cross @7\n");
        var completed = Complete.Soon(sketch, Drafts.Book, 1_000_000, SketchPart.Count.Price())!;
        Assert.NotEmpty(completed.Gave);
        Assert.All(completed.Gave, g => Assert.Equal(SketchPart.Count, g.Part));
        var proof = new Complete(sketch, Drafts.Book, CancellationToken.None).Proof;
        Assert.True(proof.Below(SketchPart.Count.Price(), CancellationToken.None).IsLeast);
        Assert.False(proof.Below(completed.Price + 1, CancellationToken.None).IsLeast);
    }

    /// <summary>Counts by which a routine goes are kept by it: nothing is proven to give, also where somebody sets off before count 1.</summary>
    [Theory]
    [InlineData("Ash: 12, 3 m\nAsh: jab > slips @1\n")]
    [InlineData("Ash: 12, 4 m\nAsh: jab > slips @4\nAsh: > cross @6-8\n")]
    public void Counts_that_can_be_kept_are_not_proven_to_give(string notes)
    {
        var sketch = Read(notes);
        Assert.Equal(0, Complete.Soon(sketch, Drafts.Book, 1_000_000)!.Price);
        Assert.False(new Complete(sketch, Drafts.Book, CancellationToken.None).Proof.Below(1, CancellationToken.None).IsLeast);
    }

    [Theory]
    [InlineData(3, new int[0], 3, 3, 0, 1)]
    [InlineData(3, new int[0], 3, 4, 1, 5)]
    [InlineData(3, new int[0], 4, 4, 1, 4)]
    [InlineData(3, new[] { 1 }, 3, 4, 0, 2)]
    [InlineData(2, new[] { 0, 1 }, 2, 4, 1, 13)]
    public void All_ways_in_which_rows_fill_moves_are_looked_at(int moves, int[] holds, int fewest, int most, int added, int ways)
    {
        var all = LeastShape.All(moves, holds, fewest, most, added, 100)!;
        Assert.Equal(ways, all.Select(s => string.Join(' ', s.Rows)).Distinct().Count());
        Assert.Equal(ways, all.Count);
        Assert.All(all, s => Assert.Equal(Enumerable.Range(0, moves), s.Rows.Where(r => r >= 0).Distinct()));
        Assert.Null(LeastShape.All(moves, holds, fewest, most, added, ways - 1));
    }

    /// <summary>The model does not know every opening distance, nor any number of moves.</summary>
    [Theory]
    [InlineData("Ash: jab > slips\n")]
    [InlineData("Ash: 12, 3 m\nAsh: jab > slips\n...\nAsh: > submit\n")]
    public void Where_the_model_does_not_know_every_routine_nothing_is_asked(string notes) =>
        Assert.False(new Complete(Read(notes), Drafts.Book, CancellationToken.None).Proof.CanAsk);

    private static Sketch Read(string notes)
    {
        var read = NotesReader.Parse(new SourceFile("a.notes.txt", notes), Drafts.Book);
        Assert.True(read.IsGood, read.ToText());
        return read.Value.Sketch;
    }
}
