using Generator.Domain;
using Generator.Library.Files;
using Generator.Library.Reading;
using Generator.Rules.Judging;
using Generator.Rules.Tests.Fights;
using Generator.Testing;
using Walk = Generator.Rules.Replaying.Replay;

namespace Generator.Rules.Tests.Judging;

/// <summary>Whatever can be read can be audited, and what the reader lets pass for the audit to tell is told.</summary>
public sealed class AnyRoutineTests
{
    private const int Routines = 150;

    [Fact]
    public void What_can_be_read_is_audited_and_its_reactions_and_order_are_told()
    {
        var (missing, foreign, unordered) = (0, 0, 0);
        for (var seed = 0; seed < Routines; seed++)
        {
            var read = RoutineReader.Parse(new SourceFile("x.routine.json", RoutineWriter.Text(RandomRoutine.Of(seed, TheBook.Book))), TheBook.Book);
            Assert.Equal(string.Empty, read.ToText());
            var routine = read.Value!;
            var scene = new Scene(routine.Brief, TheBook.Book);
            var findings = Audit.Of(scene, routine).Findings;
            bool Told(string rule, int move) => findings.Any(f => f.Rule == rule && f.Move == move + 1 && f.Severity >= Severity.Broken && f.Advice.Length > 0);
            var steps = Walk.Of(scene, routine);
            for (var i = 0; i < steps.Count; i++)
            {
                var (move, technique) = (routine.Moves[i], steps[i].Technique);
                if (i > 0 && move.Start < routine.Moves[i - 1].Start)
                {
                    unordered++;
                    Assert.True(Told("tempo-floor", i), $"seed {seed}, move {i}: out of order");
                }

                // Of somebody who is out, out-stays-out speaks.
                var rule = steps[i].TargetPosture == Posture.Out ? "out-stays-out" : "opening";
                if (move.Reaction is null && technique is { Reactions.Count: > 0 })
                {
                    missing++;
                    Assert.True(Told(rule, i), $"seed {seed}, move {i}: no reaction");
                    Assert.Contains(steps[i].Reaction!.Id, technique.Reactions);
                }
                else if (move.Reaction is { } reaction && technique is not null && !technique.Reactions.Contains(reaction))
                {
                    foreign++;
                    Assert.True(Told(rule, i), $"seed {seed}, move {i}: {reaction} does not suit {technique.Id}");
                }
            }
        }

        Assert.True(missing > 10 && foreign > 10 && unordered > 10, $"{missing} without a reaction, {foreign} with one that does not suit, {unordered} out of order");
    }
}
