using Generator.Domain;
using Generator.Rules.Judging;
using Generator.Rules.Tests.Fights;

namespace Generator.Rules.Tests.Judging;

/// <summary>
/// Ten times as many moves are ten times the work. Counted is memory, which is the same in every run: whoever remembers all moves so far at every move
/// takes ten times as much of it for each.
/// </summary>
public sealed class LinearWorkTests
{
    private static readonly (string? Attack, string Technique, string Reaction)[] Phrase =
    [
        ("swing-right", "outside-block-left", "limb-stopped"),
        (null, "cross-right", "head-back"),
        (null, "body-hook-left", "folds"),
        (null, "knee-to-head-right", "back-fall"),
    ];

    [Fact]
    public void An_audit_takes_as_much_memory_for_each_move_of_a_long_routine_as_of_a_short_one()
    {
        var brief = new Brief
        {
            Hero = new HeroPart { Name = "Ines", Skill = Skill.Stunt },
            Attackers = [.. new[] { "Bruno", "Wanda", "Piet", "Lotte" }.Select(n => new AttackerPart { Name = n, Skill = Skill.Stunt })],
            Cameras = [new Camera("A", new Bearing(12), new Centimetres(500), new Centimetres(150))],
            Length = new Length(600, null, 40),
            Arc = Arc.Rising,
        };
        var scene = new Scene(brief, TheBook.Book);
        BytesForEachMove(scene, 40);
        var few = BytesForEachMove(scene, 400);
        var many = BytesForEachMove(scene, 4000);
        Assert.InRange(many / few, 0.5, 1.5);
    }

    private static double BytesForEachMove(Scene scene, int moves)
    {
        var routine = Of(scene, moves);
        var before = GC.GetAllocatedBytesForCurrentThread();
        var verdict = Audit.Of(scene, routine);
        var bytes = GC.GetAllocatedBytesForCurrentThread() - before;
        Assert.True(verdict.Findings.Count > 0 && bytes > moves);
        return (double)bytes / moves;
    }

    private static Routine Of(Scene scene, int length)
    {
        var moves = new List<Move>();
        var time = 0;
        for (var i = 0; i < length; i++)
        {
            var (attack, technique, reaction) = Phrase[i % Phrase.Length];
            time += attack is not null && i > 0 ? HalfCounts.PerCount : 0;
            moves.Add(new Move { Start = new HalfCounts(time), Attacker = i / Phrase.Length % scene.Cast, Attack = attack, Technique = technique, Reaction = reaction });
            time += scene.Book.Technique(technique).Length.Value;
        }

        return new Routine
        {
            Brief = scene.Brief,
            Placements = [.. Enumerable.Range(0, scene.Cast).Select(a => new Placement(new Bearing(a * 6), new Centimetres(250), HalfCounts.Zero))],
            Moves = moves,
        };
    }
}
