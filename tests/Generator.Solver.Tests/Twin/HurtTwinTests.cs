using Generator.Domain;
using Generator.Library.Files.Notes;
using Generator.Library.Reading;
using Generator.Rules;
using Generator.Rules.Judging;
using Generator.Rules.Replaying;
using Generator.Solver.Completing;
using Generator.Solver.Engine;
using Generator.Solver.Filling;
using Generator.Solver.Questions;
using Generator.Solver.Repairing;
using Generator.Solver.Rules;
using Generator.Solver.Tests.Constructing;
using Generator.Testing;

namespace Generator.Solver.Tests.Twin;

/// <summary>Parts of the body that are hurt until a count: audit, model and search say the same of what may be done with them, and of acts that ask for it.</summary>
public sealed class HurtTwinTests
{
    private const string Kneed = "0 Bruno cross-right takes-face-hit presses-on ; 6 Bruno cross-right rising-block-left limb-swept-out ; 8 Bruno - knee-left folds";
    private const string Held = "0 Bruno cross-right rising-block-left limb-swept-out ; 2 Bruno - knee-left folds ; 12 Bruno cross-right rising-block-left limb-swept-out";

    private static readonly string[] Others = ["ending", "length", "setbacks"];

    /// <summary>A move, numbered from 0, hurts a part until a moment in half counts.</summary>
    [Theory]
    [InlineData(Kneed, 0, "left-knee", 9, "able")]
    [InlineData(Kneed, 0, "left-knee", 8, null)]
    [InlineData(Kneed, 0, "left-arm", 7, "able")]
    [InlineData(Kneed, 0, "left-arm", 6, null)]
    [InlineData(Kneed, 0, "right-wrist", 90, null)]
    [InlineData(Kneed, 1, "left-knee", 90, null)]
    [InlineData(Kneed, 2, "left-knee", 90, null)]
    [InlineData(Held, 1, "right-shoulder", 13, "able")]
    [InlineData(Held, 1, "right-shoulder", 12, null)]
    [InlineData(Held, 1, "left-shoulder", 90, null)]
    public void Audit_and_model_agree(string moves, int move, string part, int until, string? rule)
    {
        var (scene, routine) = Of(new Brief { Acts = [], Attackers = [] }, moves, move, new Hurt(part, new HalfCounts(until)));
        Assert.Equal(rule is null ? [] : [rule], Grave(scene, routine, Others));
        Assert.Equal(rule is null ? CpAnswer.Optimal : CpAnswer.Infeasible, Solve(scene, routine, Others));
        Assert.Equal(CpAnswer.Optimal, Solve(scene, routine, [.. Others, "able"]));
    }

    /// <summary>The act asks for the left knee until half count 30.</summary>
    [Theory]
    [InlineData(0, "left-knee", 30, true)]
    [InlineData(0, "left-knee", 31, false)]
    [InlineData(0, "right-knee", 30, false)]
    [InlineData(1, "left-knee", 30, false)]
    public void So_they_do_of_an_act_that_asks_for_it(int move, string part, int until, bool isAsAsked)
    {
        const string moves = "0 Bruno cross-right takes-face-hit presses-on ; 6 Bruno cross-right rising-block-left limb-swept-out";
        var brief = new Brief { Attackers = [], Length = new Generator.Domain.Length(8, null, 4), Judged = [], Acts = [new Act(60, HeroStanding.InTrouble, null, new Hurt("left-knee", new HalfCounts(30))), new Act(40, HeroStanding.OnTop)] };
        var (scene, routine) = Of(brief, moves, move, new Hurt(part, new HalfCounts(until)));
        Assert.Equal(isAsAsked ? [] : ["setbacks"], Grave(scene, routine, ["ending", "length"]));
        Assert.Equal(isAsAsked ? CpAnswer.Optimal : CpAnswer.Infeasible, Solve(scene, routine, ["ending", "length"]));
        Assert.Equal(CpAnswer.Optimal, Solve(scene, routine, Others));
    }

    /// <summary>What is hurt before the rows begin is hurt in them.</summary>
    [Theory]
    [InlineData(9, CpAnswer.Infeasible)]
    [InlineData(8, CpAnswer.Optimal)]
    public void Rows_go_on_from_what_is_hurt(int until, CpAnswer answer)
    {
        var (scene, routine) = Of(new Brief { Acts = [], Attackers = [] }, Kneed, 0, new Hurt("left-knee", new HalfCounts(until)));
        var steps = Replay.Of(scene, routine);
        var score = Score.Begin(scene, steps[0].Before).Observe(scene, steps[0]);
        var model = new MoveModel(scene, Vocabulary.Of(scene, t => routine.Moves.Any(m => m.Technique == t.Id), keepUnfit: true, seconds: true), new MoveModelOptions
        {
            Rules = RuleModules.All,
            From = steps[0].After,
            Past = [steps[0].Before],
            Memory = score,
            Rows = 2,
            FewestRows = 2,
            Horizon = 200,
            Total = true,
        });
        Pin.Rows(model, [.. steps.Skip(1).Select(s => s.Row)]);
        using var session = model.Session();
        Assert.Equal(answer, session.Solve(Solved.Settings));
    }

    /// <summary>Both searches let a setback of the act hurt as it asks, and spare the part until the count.</summary>
    [Theory]
    [InlineData(false)]
    [InlineData(true)]
    public void A_draft_hurts_as_the_act_asks(bool cold)
    {
        using var stop = new CancellationTokenSource();
        var asked = new Hurt("left-arm", HalfCounts.FromCounts(16));
        var brief = Drafts.Plain() with
        {
            Attackers = [new AttackerPart { Name = "Bruno", Skill = Skill.Stunt }],
            Length = new Generator.Domain.Length(16, null, 4),
            Acts = [new Act(70, HeroStanding.InTrouble, 1, asked), new Act(30, HeroStanding.OnTop)],
        };
        var result = Drafting.Draft(brief, Drafts.Book, new DraftOptions { Cold = cold, Rounds = cold ? null : 4, Time = Drafts.Hang }, new StopAtFirst(stop), stop.Token);
        var scene = new Scene(result.Routine!.Brief, Drafts.Book);
        Assert.True(Audit.Of(scene, result.Routine).IsClean);
        var hurts = Assert.Single(result.Routine.Moves, m => m.Hurts is not null);
        Assert.Equal(asked, hurts.Hurts);
        Assert.Equal(Family.Setback, Drafts.Book.Technique(hurts.Technique!).Family);
        Assert.Contains(Replay.Of(scene, result.Routine), s => s.Before.Hurts.Count > 0 && s.Start < asked.Until.Value);
    }

    /// <summary>The words say that the left knee is hurt: the strike with it waits until it is not, and where it may not wait, something gives and the hurt does not.</summary>
    [Theory]
    [InlineData("", true)]
    [InlineData(" @5-6", false)]
    public void A_sketch_is_filled_with_what_it_hurts(string count, bool stands)
    {
        var notes = $"Ines: the hero\nBruno: cross > takes face hit, hurts her left knee until 9\nBruno: cross > rising block, knee left{count}\n";
        var read = SketchReader.Parse(new SourceFile("x.notes.txt", notes), Drafts.Book);
        using var stop = new CancellationTokenSource();
        var completed = Complete.Of(read.Value!.Sketch, Drafts.Book, new CompleteOptions { Time = Drafts.Hang, GivesFirst = !stands }, stands ? null : _ => stop.Cancel(), stop.Token)!;
        Assert.Equal("left-knee until 9", completed.Routine.Moves[completed.Rows[0]].Hurts?.Text);
        Assert.True(completed.Verdict.IsClean);
        Assert.Equal(stands, completed.Gave.Count == 0);
    }

    /// <summary>What a routine hurts stays when something else is mended.</summary>
    [Fact]
    public void A_repair_keeps_what_hurts()
    {
        var (_, routine) = Of(new Brief { Acts = [], Attackers = [] }, Kneed, 0, new Hurt("left-knee", new HalfCounts(12)));
        var repaired = Repair.Of(routine, Drafts.Book, new RepairOptions { Time = Drafts.Hang }).Repaired!;
        Assert.True(repaired.Verdict.IsClean);
        Assert.False(repaired.Change.IsNothing);
        Assert.Equal(routine.Moves[0].Hurts, repaired.Routine.Moves[0].Hurts);
    }

    private static CpAnswer Solve(Scene scene, Routine routine, string[] without) => Pinned.Solve(scene, routine, without);

    private static IReadOnlyList<string> Grave(Scene scene, Routine routine, string[] without) =>
        [.. Audit.Of(scene, routine).Findings.Where(f => f.Severity >= Severity.Broken && !without.Contains(f.Rule)).Select(f => f.Rule).Distinct()];

    private static (Scene Scene, Routine Routine) Of(Brief brief, string moves, int move, Hurt hurt)
    {
        var routine = WrittenFight.Of(brief with { Hero = new HeroPart { Name = "Ines", Skill = Skill.Stunt } }, Drafts.Book, "Bruno@12/100", moves);
        routine = routine with { Moves = [.. routine.Moves.Select((m, i) => i == move ? m with { Hurts = hurt } : m)] };
        return (new Scene(routine.Brief, Drafts.Book), routine);
    }

    private sealed class StopAtFirst(CancellationTokenSource stop) : IProgress<DraftProgress>
    {
        public void Report(DraftProgress value) => stop.Cancel();
    }
}
