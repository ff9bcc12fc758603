using Generator.Domain;
using Generator.Rules;
using Generator.Rules.Judging;
using Generator.Solver.Engine;
using Generator.Solver.Tests.Constructing;
using Generator.Testing;

namespace Generator.Solver.Tests.Twin;

/// <summary>
/// Planted fights with props: where the audit finds one missing, or a full hand at work, or somebody on what lies about, the model forbids the rows by that rule alone, and allows them without it; where it does not, the
/// model allows them.
/// </summary>
public sealed class PropTwinTests
{
    private const string Caught = "12 Bruno prop-flank-swing-right prop-catch-wrist-left arm-caught ; 14 Bruno - ";

    /// <summary>Kind and holder (h, b, or x,y in centimetres) of each prop, which is in the right hand or in both.</summary>
    [Theory]
    [InlineData(true, "stick h ; club b", "12 Bruno prop-downward-right prop-roof-right limb-stopped")]
    [InlineData(false, "club b", "12 Bruno prop-downward-right prop-roof-right limb-stopped")]
    [InlineData(false, "stick h", "12 Bruno prop-downward-right prop-roof-right limb-stopped")]
    [InlineData(true, "stick h", "12 Bruno swing-right outside-block-left limb-stopped")]
    [InlineData(false, "stick h", "12 Bruno swing-left outside-block-right limb-stopped")]
    [InlineData(false, "club b", "12 Bruno swing-right duck overswings")]
    [InlineData(true, "club b", Caught + "prop-lock-and-take-left to-one-knee ; 17 Bruno - prop-finish-right out-sinks")]
    [InlineData(false, "club b", Caught + "prop-lock-and-shake-left disarmed-clutch ; 17 Bruno - prop-finish-right out-sinks")]
    [InlineData(false, "club b ; umbrella h", Caught + "prop-lock-and-take-left to-one-knee")]
    [InlineData(true, "sugar-bottle b", "12 Bruno prop-bottle-swing-right prop-takes-bottle-left presses-on")]
    [InlineData(false, "sugar-bottle b", "12 Bruno prop-bottle-swing-right prop-takes-bottle-left presses-on ; 22 Bruno prop-bottle-swing-right prop-takes-bottle-left presses-on")]
    [InlineData(false, "sugar-bottle b", "12 Bruno prop-bottle-swing-right prop-takes-bottle-left presses-on ; 22 Bruno swing-left drop-to-knee-right overswings")]
    [InlineData(true, "sugar-bottle b", "12 Bruno prop-bottle-swing-right prop-takes-bottle-left presses-on ; 22 Bruno swing-left duck overswings")]
    [InlineData(false, "sugar-bottle b", "12 Bruno prop-bottle-swing-right prop-takes-bottle-left presses-on ; 22 Bruno swing-left duck overswings ; 25 Bruno - cross-right to-one-knee")]
    [InlineData(true, "staff 690,600", "4 - - prop-pick-up-long -")]
    [InlineData(false, "staff 720,600", "4 - - prop-pick-up-long -")]
    [InlineData(true, "stick 600,900", "12 Bruno jab-right duck overswings")]
    [InlineData(false, "stick 600,697", "12 Bruno jab-right duck overswings")]
    [InlineData(false, "stick 600,850", "12 Bruno jab-right duck overswings")]
    public void Both_sides_agree(bool allowed, string props, string moves)
    {
        var routine = WrittenFight.Of(
            new Brief
            {
                Floor = new FloorPlan { Width = new(1200), Depth = new(1200), MarkX = new(600), MarkY = new(600) },
                Hero = new HeroPart { Name = "Ines", Skill = Skill.Stunt },
                Attackers = [],
                Ending = new Ending([], null),
                Length = new Length(null, moves.Split(';').Length, 0),
                Props = [.. props.Split(" ; ").Select((p, i) => Of(p, i))],
            },
            Drafts.Book,
            "Bruno@12/250",
            moves);
        var scene = new Scene(routine.Brief, Drafts.Book);
        var grave = Audit.Of(scene, routine).Findings.Where(f => f.Severity >= Severity.Broken).Select(f => f.Rule).Distinct().ToList();
        Assert.Equal(!allowed, grave.Contains("prop") || grave.Contains("able"));
        string[] others = [.. grave.Where(r => r != "prop")];
        Assert.Equal(allowed || !grave.Contains("prop") ? CpAnswer.Optimal : CpAnswer.Infeasible, Pinned.Solve(scene, routine, others));
        Assert.Equal(CpAnswer.Optimal, Pinned.Solve(scene, routine, [.. others, "prop"]));
    }

    private static PropPart Of(string text, int index)
    {
        var words = text.Split(' ');
        var kind = Drafts.Book.Props.Find(words[0])!;
        var part = new PropPart($"{kind.Id} {index}", kind.Id) { Hand = kind.Hands == 2 ? PropHand.Both : PropHand.Right };
        return words[1] switch
        {
            "h" => part with { With = -1 },
            "b" => part with { With = 0 },
            _ => words[1].Split(',') is var at ? part with { X = new(int.Parse(at[0], System.Globalization.CultureInfo.InvariantCulture)), Y = new(int.Parse(at[1], System.Globalization.CultureInfo.InvariantCulture)) } : part,
        };
    }
}
