using Generator.Domain;
using Generator.Rules;
using Generator.Rules.Judging;
using Generator.Solver.Engine;
using Generator.Solver.Tests.Constructing;
using Generator.Testing;

namespace Generator.Solver.Tests.Twin;

/// <summary>Planted falls on a hard floor with a mat: where the audit finds somebody beside it, the model forbids the rows by that rule alone, and allows them without it; where it does not, the model allows them.</summary>
public sealed class MatTwinTests
{
    private const string Fall = "8 Bruno swing-right outside-block-left limb-stopped ; 10 Bruno - step-punch-right back-fall";
    private const string Throw = "8 Bruno cross-right wrist-catch-left arm-caught ; 11 Bruno - hip-throw-right thrown-over";

    /// <summary>X, y, width and depth of the mat on 12 by 12 m with the mark in the middle; moves as elsewhere.</summary>
    [Theory]
    [InlineData(true, "500 600 200 400", Fall)]
    [InlineData(false, "500 600 200 250", Fall)]
    [InlineData(false, "580 600 200 400", Fall)]
    [InlineData(true, "350 350 500 500", Throw)]
    [InlineData(false, "500 600 200 400", Throw)]
    [InlineData(true, "0 0 5 5", "8 Bruno swing-right outside-block-left limb-stopped ; 10 Bruno - step-punch-right staggers-back")]
    [InlineData(false, "0 0 5 5", Fall)]
    public void Both_sides_agree(bool holds, string mat, string moves)
    {
        var sides = mat.Split(' ').Select(w => new Centimetres(int.Parse(w, System.Globalization.CultureInfo.InvariantCulture))).ToArray();
        var routine = WrittenFight.Of(
            new Brief
            {
                Floor = new FloorPlan { Width = new(1200), Depth = new(1200), MarkX = new(600), MarkY = new(600), Surface = Surface.Hard, Mats = [new Mat("mat", sides[0], sides[1], sides[2], sides[3])] },
                Hero = new HeroPart { Name = "Ines", Skill = Skill.Stunt },
                Attackers = [],
                Ending = new Ending([], null),
                Length = new Length(null, 2, 0),
            },
            Drafts.Book,
            "Bruno@12/250",
            moves);
        var scene = new Scene(routine.Brief, Drafts.Book);
        var grave = Audit.Of(scene, routine).Findings.Where(f => f.Severity >= Severity.Broken).Select(f => f.Rule).Distinct().ToList();
        Assert.Equal(!holds, grave.Contains("able"));
        string[] others = [.. grave.Where(r => r != "able")];
        Assert.Equal(holds ? CpAnswer.Optimal : CpAnswer.Infeasible, Pinned.Solve(scene, routine, others));
        Assert.Equal(CpAnswer.Optimal, Pinned.Solve(scene, routine, [.. others, "able"]));
    }
}
