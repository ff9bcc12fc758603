using Generator.Domain;
using Generator.Rules;
using Generator.Rules.Judging;
using Generator.Rules.Replaying;
using Generator.Solver.Engine;
using Generator.Solver.Filling;
using Generator.Solver.Rolling;
using Generator.Solver.Tests.Constructing;
using Generator.Testing;
using Xunit.Abstractions;
using RuleModules = Generator.Solver.Rules.RuleModules;

namespace Generator.Solver.Tests.Engine;

/// <summary>
/// A window may let somebody come in later than was known when the moves before it were judged. Every entrance that it may choose it allows exactly where the audit of the whole, with that entrance, finds
/// nobody in the way.
/// </summary>
public sealed class LateEntranceMeetingTests(ITestOutputHelper output)
{
    private const string Blocked = "swing-right outside-block-left limb-stopped";

    private static readonly string[] Floor = ["spacing", "clear-lane", "underfoot"];

    private static readonly SearchSettings Settings = new() { Time = Drafts.Hang, Bare = true, Linear = false };

    /// <param name="how">What is in the way.</param>
    /// <param name="walls">An obstacle or none, and the doors.</param>
    /// <param name="cast">Who opens where; the last one's entrance is put off.</param>
    /// <param name="moves">The last is the window, the others are before it.</param>
    /// <param name="delay">Half counts, at most.</param>
    [Theory]
    [InlineData("who falls in a move before the window", "door 0 800", "Ada@6/250 Bruno@12/150 Wanda@2/300", "8 Bruno " + Blocked + " ; 10 Bruno - step-punch-right back-fall ; 34 Ada " + Blocked, 26)]
    [InlineData("who comes in as late, through the same door", "door 1200 600", "Ada@9/250 Bruno@2/300/20 Wanda@4/300/8", "4 Ada " + Blocked + " ; 24 Ada " + Blocked + " ; 50 Ada " + Blocked, 32)]
    [InlineData("a wall between the door and the place, of who was in from the start", "wall 0 900 1200 20 door 600 1200", "Bruno@6/250 Wanda@12/250", "8 Bruno " + Blocked + " ; 40 Bruno " + Blocked, 12)]
    public void Who_comes_in_later_meets_nobody_before_the_window(string how, string walls, string cast, string moves, int delay)
    {
        var routine = WrittenFight.Of(Brief(walls.Split(' ')), Drafts.Book, cast, moves);
        var scene = new Scene(routine.Brief, Drafts.Book);
        List<Row> rows = [.. routine.Moves.Select(m => Row.Of(m, scene))];
        var draft = Draft.Of(scene, routine.Placements, rows[..^1]);
        Assert.Empty(InTheWay(scene, routine));
        var (clear, met) = (new List<int>(), new List<int>());
        for (var later = 0; later <= delay; later++)
        {
            (InTheWay(scene, draft.With(scene, Only(scene, later), rows[^1..]).ToRoutine(scene)).Any() ? met : clear).Add(later);
            var answer = Solved(scene, draft, rows[^1], later, delay);
            Assert.True(answer == (clear.Contains(later) ? CpAnswer.Optimal : CpAnswer.Infeasible), $"{how}, {later} half counts later: {answer}, by the audit {(clear.Contains(later) ? "clear" : "met")}");
        }

        output.WriteLine($"clear {string.Join(' ', clear)}; met {string.Join(' ', met)}");
        Assert.True(clear.Count > 0 && met.Count > 0, $"{clear.Count} clear, {met.Count} met");
    }

    /// <summary>What the floor's rules say of a whole.</summary>
    private static IEnumerable<Finding> InTheWay(Scene scene, Routine routine) => Audit.Of(scene, routine).Findings.Where(f => f.Severity >= Severity.Broken && Floor.Contains(f.Rule));

    private static int[] Only(Scene scene, int later) => [.. Enumerable.Range(0, scene.Cast).Select(a => a == scene.Cast - 1 ? later : 0)];

    private static CpAnswer Solved(Scene scene, Draft draft, Row row, int later, int delay)
    {
        var model = new MoveModel(scene, Vocabulary.Of(scene, t => scene.Book.TechniqueIndex(t.Id) == row.Technique, keepUnfit: true, seconds: true), new MoveModelOptions
        {
            From = draft.State,
            Past = draft.Past,
            Memory = draft.Score,
            Rules = [.. RuleModules.All.Where(r => Floor.Contains(r.Id))],
            Rows = 1,
            FewestRows = 1,
            Ends = false,
            Horizon = row.Start + 60,
            Delays = Only(scene, delay),
            Total = true,
        });
        Pin.Rows(model, [row]);
        model.Cp.Model.Add(model.Delays[scene.Cast - 1] == later);
        using var session = model.Session();
        return session.Solve(Settings);
    }

    private static Brief Brief(string[] walls)
    {
        var door = Array.IndexOf(walls, "door");
        Centimetres Whole(int at) => new(int.Parse(walls[at], System.Globalization.CultureInfo.InvariantCulture));
        return new Brief
        {
            Floor = new FloorPlan
            {
                Width = new(1200),
                Depth = new(1200),
                MarkX = new(600),
                MarkY = new(600),
                Obstacles = walls[0] == "wall" ? [new Obstacle("the wall", Whole(1), Whole(2), Whole(3), Whole(4))] : [],
                WaysIn = [new WayIn("the door", Whole(door + 1), Whole(door + 2))],
            },
            Hero = new HeroPart { Name = "Ines", Skill = Skill.Stunt },
            Attackers = [],
            Ending = new Ending([], null),
            Length = new Length(null, 3, 2),
        };
    }
}
