using Generator.Domain;
using Generator.Rules;
using Generator.Rules.Judging;
using Generator.Solver.Engine;
using Generator.Solver.Tests.Constructing;
using Generator.Testing;

namespace Generator.Solver.Tests.Twin;

/// <summary>
/// Planted fights at walls, tables and rails: where the audit finds a thing missing the model forbids the rows by that rule alone, and allows them without it; where it does not, the model allows them.
/// </summary>
public sealed class ThingTwinTests
{
    private const string Wall = "wall 400 820 400 20";

    /// <summary>Kind, x, y, width and depth of each thing on 12 by 12 m with the mark in the middle; cast and moves as elsewhere.</summary>
    [Theory]
    [InlineData(true, Wall, "Bruno@12/250", "8 Bruno swing-right outside-block-left limb-stopped ; 10 Bruno - wall-drive hits-wall")]
    [InlineData(false, "wall 400 900 400 20", "Bruno@12/250", "8 Bruno swing-right outside-block-left limb-stopped ; 10 Bruno - wall-drive hits-wall")]
    [InlineData(false, Wall, "Bruno@6/250", "8 Bruno swing-right outside-block-left limb-stopped ; 10 Bruno - wall-drive hits-wall")]
    [InlineData(true, "wall 400 848 400 20", "Bruno@12/250", "8 Bruno swing-right outside-block-left limb-stopped ; 10 Bruno - wall-drive slides-down-wall")]
    [InlineData(false, "wall 400 850 400 20", "Bruno@12/250", "8 Bruno swing-right outside-block-left limb-stopped ; 10 Bruno - wall-drive slides-down-wall")]
    [InlineData(true, "wall 500 500 200 20", "Bruno@12/250", "8 Bruno jab-right cornered presses-on")]
    [InlineData(false, "wall 500 500 200 20", "Bruno@6/250", "8 Bruno jab-right cornered presses-on")]
    [InlineData(true, "table 640 660 60 60", "Bruno@12/250", "8 Bruno swing-right dodge-behind-table falls-short")]
    [InlineData(false, "table 640 660 60 60", "Bruno@9/250", "8 Bruno swing-right dodge-behind-table falls-short")]
    [InlineData(true, "wall 400 900 400 20", "Bruno@12/250", "12 Bruno wall-rush side-step-left falls-short")]
    [InlineData(false, "wall 400 900 400 20", "Bruno@12/150", "12 Bruno wall-rush side-step-left falls-short")]
    [InlineData(true, "table 640 660 60 60", "Bruno@9/250", "8 - - leans-to-breathe -")]
    public void Both_sides_agree(bool serves, string things, string cast, string moves)
    {
        var routine = WrittenFight.Of(
            new Brief
            {
                Floor = new FloorPlan { Width = new(1200), Depth = new(1200), MarkX = new(600), MarkY = new(600), Obstacles = [.. things.Split(" ; ").Select(Of)] },
                Hero = new HeroPart { Name = "Ines", Skill = Skill.Stunt },
                Attackers = [],
                Ending = new Ending([], null),
                Length = new Length(null, moves.Split(';').Length, 0),
            },
            Drafts.Book,
            cast,
            moves);
        var scene = new Scene(routine.Brief, Drafts.Book);
        var grave = Audit.Of(scene, routine).Findings.Where(f => f.Severity >= Severity.Broken).Select(f => f.Rule).Distinct().ToList();
        Assert.DoesNotContain("able", grave);
        Assert.Equal(!serves, grave.Contains("thing"));
        string[] others = [.. grave.Where(r => r != "thing")];
        Assert.Equal(serves ? CpAnswer.Optimal : CpAnswer.Infeasible, Pinned.Solve(scene, routine, others));
        Assert.Equal(CpAnswer.Optimal, Pinned.Solve(scene, routine, [.. others, "thing"]));
    }

    private static Obstacle Of(string thing)
    {
        var words = thing.Split(' ');
        Centimetres Whole(int at) => new(int.Parse(words[at], System.Globalization.CultureInfo.InvariantCulture));
        return new Obstacle("the " + words[0], Whole(1), Whole(2), Whole(3), Whole(4)) { Kind = words[0] };
    }
}
