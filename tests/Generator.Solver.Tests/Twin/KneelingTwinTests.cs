using Generator.Domain;
using Generator.Rules;
using Generator.Rules.Judging;
using Generator.Solver.Engine;
using Generator.Solver.Questions;
using Generator.Solver.Tests.Constructing;
using Generator.Testing;

namespace Generator.Solver.Tests.Twin;

/// <summary>Attackers who open on a knee: audit, model and search say the same of what they may throw, and when.</summary>
public sealed class KneelingTwinTests
{
    [Theory]
    [InlineData("0 Bruno knee-punch-right kneeling-turn-aside-left caught-on-knees ; 2 Bruno - kneeling-short-punch-right jolts-in-hold ; 4 Bruno - kneeling-arm-lock-left locked-on-knees ; 7 Bruno - submit-left out-gives-up", null)]
    [InlineData("0 Bruno knee-side-blow-right kneeling-duck-left rocks-on-knees ; 4 Bruno - kneeling-push-over-left tips-over ; 8 Bruno - ground-elbow-right jerks-on-floor", null)]
    [InlineData("0 Bruno swing-right bow-under overswings", "answers-attack")]
    [InlineData("0 Bruno knee-side-blow-right kneeling-block-left rocks-on-knees ; 12 Bruno knee-side-blow-right kneeling-block-left rocks-on-knees", "answers-attack")]
    [InlineData("0 Bruno knee-side-blow-right kneeling-block-left rocks-on-knees ; 12 Bruno swing-right bow-under overswings", null)]
    public void Audit_and_model_agree(string moves, string? rule)
    {
        var (scene, routine) = Of(moves, Side.Left);
        var grave = Audit.Of(scene, routine).Findings.Where(f => f.Severity >= Severity.Broken && f.Rule is not ("ending" or "length" or "setbacks")).Select(f => f.Rule).Distinct().ToList();
        Assert.Equal(rule is null ? [] : [rule], grave);
        Assert.Equal(rule is null ? CpAnswer.Optimal : CpAnswer.Infeasible, Pinned.Solve(scene, routine, ["ending", "length", "setbacks"]));
        Assert.Equal(CpAnswer.Optimal, Pinned.Solve(scene, routine, ["ending", "length", "setbacks", "answers-attack"]));
    }

    /// <summary>From the knee comes nobody who never was on it.</summary>
    [Fact]
    public void Who_opens_on_both_feet_does_not_attack_from_the_knee()
    {
        var (scene, routine) = Of("0 Bruno knee-side-blow-right kneeling-duck-left rocks-on-knees", null);
        var told = Assert.Single(Audit.Of(scene, routine).Findings, f => f.Severity >= Severity.Broken && f.Rule is not ("ending" or "length" or "setbacks"));
        Assert.Equal("able", told.Rule);
        Assert.Contains("opens on both feet", told.Message, StringComparison.Ordinal);
    }

    /// <summary>Both searches begin on the knees, and go on from there standing or not.</summary>
    [Theory]
    [InlineData(false)]
    [InlineData(true)]
    public void A_fight_that_opens_on_the_knees_is_drafted_from_there(bool cold)
    {
        using var stop = new CancellationTokenSource();
        var brief = Drafts.Plain() with
        {
            Hero = new HeroPart { Name = "Ines", Skill = Skill.Stunt, Kneels = Side.Left },
            Attackers = [Kneeling(Side.Right)],
            Length = new Length(null, 8, 2),
        };
        var result = Drafting.Draft(brief, Drafts.Book, new DraftOptions { Cold = cold, Rounds = cold ? null : 2, Time = Drafts.Hang }, new StopAtFirst(stop), stop.Token);
        var scene = new Scene(result.Routine!.Brief, Drafts.Book);
        Assert.True(Audit.Of(scene, result.Routine).IsClean);
        var met = Generator.Rules.Replaying.Replay.Of(scene, result.Routine).Where(s => s.HasTarget).ToList();
        Assert.True(met[0].Attack is { FromKnee: true }, result.Routine.Moves[0].Attack);
        Assert.Equal(Posture.Knelt, met[0].TargetPosture);
        Assert.DoesNotContain(met.Skip(1), s => s.Attack is { FromKnee: true });
    }

    private static (Scene Scene, Routine Routine) Of(string moves, Side? knee)
    {
        var brief = new Brief { Acts = [], Hero = new HeroPart { Name = "Ines", Skill = Skill.Stunt, Kneels = Side.Left }, Attackers = [] };
        var routine = WrittenFight.Of(brief, Drafts.Book, "Bruno@12/100", moves);
        routine = routine with { Brief = routine.Brief with { Attackers = [knee is { } side ? Kneeling(side) : routine.Brief.Attackers[0]] } };
        return (new Scene(routine.Brief, Drafts.Book), routine);
    }

    private static AttackerPart Kneeling(Side knee) =>
        new() { Name = "Bruno", Skill = Skill.Stunt, Distance = AttackerPart.NearestOpening, Entrance = HalfCounts.Zero, Kneels = knee };

    private sealed class StopAtFirst(CancellationTokenSource stop) : IProgress<DraftProgress>
    {
        public void Report(DraftProgress value) => stop.Cancel();
    }
}
