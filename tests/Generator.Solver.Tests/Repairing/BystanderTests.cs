using Generator.Domain;
using Generator.Domain.Sketches;
using Generator.Rules;
using Generator.Rules.Judging;
using Generator.Solver.Completing;
using Generator.Solver.Repairing;
using Generator.Solver.Tests.Constructing;
using Xunit.Abstractions;

namespace Generator.Solver.Tests.Repairing;

/// <summary>Two centimetres never cost a throw where whoever stands by may as well stand elsewhere: every move stays, and somebody stands, comes or starts otherwise.</summary>
public sealed class BystanderTests(ITestOutputHelper output)
{
    /// <summary>The way or the place where the thrown one ends is short by no more than this, in metres.</summary>
    private const decimal Short = 0.02m;

    private const int Bruno = 0, Wanda = 1;

    [Theory]
    [InlineData("hip-throw-right", "thrown-over")]
    [InlineData("shoulder-throw-right", "thrown-over")]
    [InlineData("outside-reap-right", "back-fall")]
    public void The_throw_stays(string technique, string reaction)
    {
        var near = Near(technique, reaction).DistinctBy(r => r.Placements[Wanda].Bearing).Take(3).ToList();
        Assert.NotEmpty(near);
        foreach (var routine in near)
        {
            using var enough = new CancellationTokenSource();
            var repaired = Repair.Of(routine, Drafts.Book, new RepairOptions { Time = Drafts.Hang }, r => EndIf(r.Change.Changed == 0, enough), enough.Token).Repaired!;
            Assert.Equal(routine.Moves.Select(m => (m.Attack, m.Technique, m.Reaction)), repaired.Routine.Moves.Select(m => (m.Attack, m.Technique, m.Reaction)));
            Assert.True(repaired.Verdict.IsClean && repaired.Change.Changed == 0);

            var sketch = Sketch.Of(routine) with { Placements = [routine.Placements[Bruno], null] };
            var completed = Complete.Of(sketch, Drafts.Book, new CompleteOptions { Time = Drafts.Hang });
            output.WriteLine($"{routine.Placements[Wanda]}; repaired {repaired.Routine.Placements[Wanda]}, shifted by {repaired.Change.Shift}; completed {completed?.Routine.Placements[Wanda]}, Bruno from {completed?.Routine.Moves[0].From}");
            Assert.True(completed is { Verdict.IsClean: true, Gave.Count: 0 }, completed is null ? "nothing found" : string.Join(", ", completed.Gave.Select(g => g.Part)));
            Assert.NotEqual((routine.Placements[Wanda], routine.Moves[0].From), (completed!.Routine.Placements[Wanda], completed.Routine.Moves[0].From));

            var fixedBearing = routine.Brief.Attackers[Wanda] with { Bearing = routine.Placements[Wanda].Bearing };
            var brief = routine.Brief with { Attackers = [routine.Brief.Attackers[Bruno], fixedBearing], Length = new Length(24, null, 6), Moments = [new Moment([new MomentMove(technique, "Bruno", null, reaction)], null, null)] };
            Assert.Contains(Drafts.Rounds(brief, 1, 3).Routine!.Moves, m => m.Technique == technique && m.Attacker == Bruno);
        }

    }

    private static void EndIf(bool done, CancellationTokenSource search)
    {
        if (done)
        {
            search.Cancel();
        }
    }

    /// <summary>Bruno swings, is blocked and thrown; Wanda waits wherever the throw just comes too near to her, and nothing else is wrong.</summary>
    private static IEnumerable<Routine> Near(string technique, string reaction)
    {
        var brief = new Brief
        {
            Length = new Length(null, 2, 0),
            Hero = new HeroPart { Name = "Ines", Skill = Skill.Stunt },
            Attackers = [new AttackerPart { Name = "Bruno", Skill = Skill.Stunt, Bearing = new Bearing(0), Distance = new Centimetres(120) }, new AttackerPart { Name = "Wanda", Skill = Skill.Stunt }],
            Ending = new Ending([], null),
        };
        Move[] moves =
        [
            new() { Start = new HalfCounts(4), Attacker = Bruno, Attack = "swing-right", Technique = "outside-block-left", Reaction = "limb-stopped" },
            new() { Start = new HalfCounts(6), Attacker = Bruno, Technique = technique, Reaction = reaction },
        ];
        var scene = new Scene(brief, Drafts.Book);
        return from bearing in Enumerable.Range(0, Bearing.Circle)
               from distance in Enumerable.Range(120, 280)
               let routine = new Routine { Brief = brief, LibraryVersion = Drafts.Book.Version, Moves = moves, Placements = [new Placement(new Bearing(0), new Centimetres(120), HalfCounts.Zero), new Placement(new Bearing(bearing), new Centimetres(distance), HalfCounts.Zero)] }
               let grave = Grave(routine, scene)
               where grave.Count > 0 && grave.All(f => f is { Rule: "clear-lane" or "spacing" or "underfoot", Move: 2 } && f.Allowed - f.Measured <= Short)
               select routine;
    }

    private static IReadOnlyList<Finding> Grave(Routine routine, Scene scene) => [.. Audit.Of(scene, routine).Findings.Where(f => f.Severity >= Severity.Broken)];
}
