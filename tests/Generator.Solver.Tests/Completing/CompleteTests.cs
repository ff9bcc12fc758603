using Generator.Domain;
using Generator.Domain.Sketches;
using Generator.Library.Files.Notes;
using Generator.Library.Reading;
using Generator.Rules;
using Generator.Rules.Judging;
using Generator.Solver.Completing;
using Generator.Solver.Constructing;
using Generator.Solver.Tests.Constructing;
using Generator.Testing;

namespace Generator.Solver.Tests.Completing;

public class CompleteTests
{
    private static readonly CompleteOptions Patient = new() { Time = Drafts.Hang };

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
        var completed = First(Read("Ash: jab > step back\nAsh: > submit"));
        Assert.NotEmpty(completed.Gave);
        Assert.True(completed.Verdict.IsClean);
        Assert.All(completed.Gave, g => Assert.True(WhyGave.Of(completed, g, new Scene(completed.Routine.Brief, Drafts.Book)) is { Severity: >= Severity.Broken, Message.Length: > 20 }, g.ToString()));
    }

    /// <summary>Fights as they are scribbled down, some with injuries, novices, a narrow floor: whatever has to give, something comes of it. All of them: <c>benchmarks -- rough</c>.</summary>
    [Fact]
    public void Rough_notes_always_come_to_something()
    {
        var (said, stands) = (0, 0);
        foreach (var name in (string[])["attic", "bar", "ferry", "galley", "garage", "market", "office"])
        {
            var completed = First(RoughNotes.Read(name, Drafts.Book).Sketch);
            Assert.True(completed is { Verdict.IsClean: true }, name);
            (said, stands) = (said + completed.Said, stands + completed.Stands);
        }

        Assert.True(stands >= 0.65 * said, $"{stands} of {said} moves stand.");
    }

    /// <summary>Work is counted in moves tried. A step that took no heed went 127, 3192 and 378 over.</summary>
    [Theory]
    [InlineData("garage")]
    [InlineData("office")]
    [InlineData("alley")]
    public void A_search_stops_within_a_step_when_its_work_is_over(string notes)
    {
        var (effort, dice) = (new Effort(3000), new Dice(1));
        var complete = new Complete(RoughNotes.Read(notes, Drafts.Book).Sketch, Drafts.Book, CancellationToken.None);
        complete.Search(dice, 96, effort).Run(complete.Roots(dice, gives: true), long.MaxValue, 2, gives: true);
        Assert.InRange(effort.Spent, 3000, 3100);
    }

    /// <summary>Nobody sits astride of somebody who stands: the hero must be brought down before, which is put in, and what is said stands.</summary>
    [Theory]
    [InlineData("Ash: jab > slips\nAsh: sits astride and chokes > bridges and rolls them off")]
    public void What_leads_up_to_a_move_is_put_in(string notes)
    {
        var completed = Complete.Soon(Read(notes), Drafts.Book, 400_000, enough: 2 * SketchPart.Added.Price());
        Assert.NotNull(completed);
        Assert.NotEmpty(completed.Gave);
        Assert.All(completed.Gave, g => Assert.Equal(SketchPart.Added, g.Part));
    }

    [Fact]
    public void What_must_not_give_does_not()
    {
        var sketch = Read("Ash: jab > step back !\nAsh: > hip throw !");
        var completed = First(sketch);
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

    /// <summary>
    /// The routine itself is a filling, so nothing of what is left need give. A spread of what <c>benchmarks -- fill</c> asks in 500 cases up to forty moves: here of a few
    /// moves, since some of the longer ones take their time.
    /// </summary>
    [Fact]
    public void Nothing_gives_when_cells_of_a_clean_routine_are_erased()
    {
        var (cases, open, gave) = (0, new int[Enum.GetValues<Erasing>().Length], new List<string>());
        for (var seed = 0; seed < 7; seed++)
        {
            if (Drafts.OfSmall(seed).Routine is not { } routine)
            {
                continue;
            }

            Assert.True(Audit.Of(new Scene(routine.Brief, Drafts.Book), routine).IsClean);
            foreach (var erasing in Enum.GetValues<Erasing>())
            {
                foreach (var percent in (ReadOnlySpan<int>)(erasing is Erasing.Mixed or Erasing.Stretch ? [10, 100] : [10, 30, 60, 100]))
                {
                    var sketch = Erased.Of(routine, new Chance((100 * seed) + percent), erasing, percent);
                    var completed = Complete.Of(sketch, Drafts.Book, Patient);
                    cases++;
                    open[(int)erasing] += sketch.Moves.Count(m => m.Attacker is null || m.Technique is not { Ids.Count: 1 } || m.Reaction is null || m.Count is null || (m.Attack is null && !m.FollowsUp));
                    if (completed is not { Gave.Count: 0, Verdict.IsClean: true })
                    {
                        gave.Add($"seed {seed}, {erasing} {percent} %: {(completed is null ? "nothing found" : string.Join(", ", completed.Gave))}");
                    }
                }
            }
        }

        Assert.True(cases >= 100 && open.All(o => o > 14), $"{cases} cases, moves with something open: {string.Join(", ", open)}");
        Assert.True(gave.Count == 0, string.Join("\n", gave));
    }

    /// <summary>Attempts that are each too short for a long sketch come farther together, since every other one goes on from where the best came.</summary>
    [Fact]
    public void An_attempt_goes_on_from_where_the_best_came()
    {
        var routine = StoredRoutines.All(Drafts.Book).First();
        var sketch = Erased.Of(routine, new Chance(30), Erasing.Mixed, 30);
        var complete = new Complete(sketch, Drafts.Book, CancellationToken.None);
        complete.Strictly(0, new Dice(1), 2_000);
        var once = complete.Farthest;
        for (var turn = 1; turn < 12; turn++)
        {
            complete.Strictly(turn, new Dice((ulong)turn), 2_000);
        }

        Assert.InRange(once, 1, routine.Moves.Count / 2);
        Assert.True(complete.Farthest >= once + 4, $"{once} moves filled by one attempt, {complete.Farthest} by twelve");
    }

    /// <summary>The first filling, where a better one would only be looked for until time is up.</summary>
    private static Completed First(Sketch sketch)
    {
        using var first = new CancellationTokenSource();
        return Complete.Of(sketch, Drafts.Book, Patient, _ => first.Cancel(), first.Token)!;
    }

    private static Sketch Read(string notes)
    {
        var read = NotesReader.Parse(new SourceFile("a.notes.txt", notes), Drafts.Book);
        Assert.True(read.IsGood, read.ToText());
        return read.Value.Sketch;
    }
}
