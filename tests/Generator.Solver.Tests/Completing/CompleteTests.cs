using Generator.Domain;
using Generator.Domain.Sketches;
using Generator.Library.Files.Notes;
using Generator.Library.Reading;
using Generator.Rules;
using Generator.Rules.Judging;
using Generator.Solver.Completing;
using Generator.Solver.Tests.Constructing;
using Generator.Testing;

namespace Generator.Solver.Tests.Completing;

public class CompleteTests
{
    private static readonly CompleteOptions Patient = new() { Time = TimeSpan.FromSeconds(30) };

    /// <summary>Exchanges of the kind that boxing and karate teach, in plain words; sequences of this kind are published in many handbooks.</summary>
    [Theory]
    [InlineData("Ash: stands off > jab\nAsh: > cross\nAsh: > lead hook\nAsh: > cross")]
    [InlineData("Ash: jab > slips\nAsh: > cross")]
    [InlineData("Ash: step-in punch to the head > rising block\nAsh: > reverse punch to the body")]
    [InlineData("Ash: front kick > down block\nAsh: > reverse punch")]
    [InlineData("Ash: step-in punch to the chest > middle block\nAsh: > hammer fist to the temple")]
    [InlineData("Ash: bear hug from the front over the arms > knee to the groin\nAsh: > pushes the hips back\nAsh: > hip throw")]
    [InlineData("Ash: downward punch at the head > left arm blocks\nAsh: > shoulder throw")]
    public void Plain_words_that_make_a_fight_all_stand(string notes)
    {
        var completed = Complete.Of(Read(notes), Drafts.Book, Patient);
        Assert.NotNull(completed);
        Assert.Empty(completed.Gave);
        Assert.Equal(completed.Said, completed.Stands);
        Assert.True(completed.Verdict.IsClean);
    }

    [Fact]
    public void What_is_said_stands_in_the_routine_as_it_was_said()
    {
        var sketch = Read("Bruno: wide swing > low parry, elbow to the face\nWanda from 3: comes in > push kick\nBruno: jab > slips, cross (head back)\n");
        var completed = Complete.Of(sketch, Drafts.Book, Patient)!;
        Assert.Empty(completed.Gave);
        Assert.All(sketch.Moves.Zip(completed.Rows), p =>
        {
            var move = completed.Routine.Moves[p.Second];
            Assert.Equal(p.First.Attacker, move.Attacker);
            Assert.Contains(move.Technique!, p.First.Technique!.Ids);
            Assert.True(p.First.Attack?.Ids.Contains(move.Attack!, StringComparer.Ordinal) ?? move.Attack is null);
            Assert.True(p.First.Reaction is null || p.First.Reaction.Ids.Contains(move.Reaction!, StringComparer.Ordinal));
        });
        Assert.Equal(new Bearing(6), completed.Routine.Placements[1].Bearing);
    }

    [Fact]
    public void What_cannot_stand_gives_and_the_audit_says_why()
    {
        // Whoever is to submit must be held first.
        var completed = Complete.Of(Read("Ash: jab > step back\nAsh: > submit"), Drafts.Book, new CompleteOptions { Time = TimeSpan.FromSeconds(6) })!;
        Assert.NotEmpty(completed.Gave);
        Assert.True(completed.Verdict.IsClean);
        Assert.All(completed.Gave, g => Assert.True(WhyGave.Of(completed, g, new Scene(completed.Routine.Brief, Drafts.Book)) is { Severity: >= Severity.Broken, Message.Length: > 20 }, g.ToString()));
    }

    [Fact]
    public void What_must_not_give_does_not()
    {
        var sketch = Read("Ash: jab > step back !\nAsh: > hip throw !");
        var completed = Complete.Of(sketch, Drafts.Book, new CompleteOptions { Time = TimeSpan.FromSeconds(6) })!;
        Assert.All(sketch.Moves.Zip(completed.Rows), p => Assert.Contains(completed.Routine.Moves[p.Second].Technique!, p.First.Technique!.Ids));
        Assert.All(completed.Gave, g => Assert.NotEqual(SketchPart.Technique, g.Part));
    }

    [Fact]
    public void The_price_puts_one_technique_above_any_number_of_reactions()
    {
        var technique = new Departure(0, SketchPart.Technique, 0).Price;
        Assert.All(Enum.GetValues<SketchPart>().Where(p => p != SketchPart.Technique), p => Assert.True(60 * new Departure(0, p, 0).Price < technique));
        Assert.Equal(Enum.GetValues<SketchPart>().Order(), Enum.GetValues<SketchPart>().OrderBy(p => new Departure(0, p, 0).Price));
    }

    /// <summary>Cells erased from clean routines are filled again, and next to never does anything that is left give: the beam is not complete.</summary>
    [Fact]
    public void Hardly_anything_that_was_left_standing_gives_when_cells_of_a_clean_routine_are_erased()
    {
        var (cases, open, found, stands) = (0, 0, 0, 0);
        for (var seed = 0; seed < 8; seed++)
        {
            if (Drafts.Draft(Drafts.Small(seed), seed, 3).Routine is not { } routine)
            {
                continue;
            }

            var scene = new Scene(routine.Brief, Drafts.Book);
            Assert.True(Audit.Of(scene, routine).IsClean);
            foreach (var percent in (ReadOnlySpan<int>)[10, 30])
            {
                var sketch = Erased.Of(routine, new Chance((100 * seed) + percent), percent);
                var completed = Complete.Of(sketch, Drafts.Book, new CompleteOptions { Time = TimeSpan.FromSeconds(10) });
                cases++;
                found += completed is null ? 0 : 1;
                open += sketch.Moves.Count(m => m.Technique is null) + sketch.Moves.Count(m => m.Reaction is null);
                stands += completed?.Gave.Count == 0 ? 1 : 0;
                Assert.True(completed?.Verdict.IsClean ?? true, $"seed {seed}, {percent} %: not clean");
            }
        }

        Assert.True(cases >= 12 && open > 30, $"{cases} cases, {open} cells open");
        Assert.True(found >= cases - 2 && stands >= cases - 4, $"{found} found, {stands} of {cases} without a departure");
    }

    private static Sketch Read(string notes)
    {
        var read = NotesReader.Parse(new SourceFile("a.notes.txt", notes), Drafts.Book);
        Assert.True(read.IsGood, read.ToText());
        return read.Value.Sketch;
    }
}
