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
        Assert.True(proof.IsLeast(completed.Price, CancellationToken.None));
        Assert.False(proof.IsLeast(completed.Price + 1, CancellationToken.None));
    }

    /// <summary>A count that is said could hang on who sets off before count 1, which the model does not know; nor does it know every opening distance.</summary>
    [Theory]
    [InlineData("Ash: 12, 3 m\nAsh: jab > slips @4\n")]
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
