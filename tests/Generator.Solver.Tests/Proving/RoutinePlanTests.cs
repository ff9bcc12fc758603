using Generator.Domain;
using Generator.Rules;
using Generator.Rules.Judging;
using Generator.Solver.Engine;
using Generator.Solver.Proving;
using Generator.Solver.Questions;
using Generator.Solver.Tests.Constructing;
using Generator.Solver.Tests.Twin;
using Generator.Testing;
using Google.OrTools.Sat;
using Xunit.Abstractions;

namespace Generator.Solver.Tests.Proving;

public class RoutinePlanTests(ITestOutputHelper output)
{
    private static readonly SearchSettings Quick = Prover.Configurations[0];

    [Fact]
    public void Every_drafted_routine_fits_the_plan()
    {
        var (pinned, moves) = (0, 0);
        for (var seed = 1; seed <= 13; seed++)
        {
            if (Drafts.OfSmall(seed) is { Status: DraftStatus.Found, Routine: { } routine })
            {
                var answer = PlanPin.Of(new Scene(routine.Brief, Drafts.Book), routine, Quick);
                Assert.True(answer is CpAnswer.Optimal or CpAnswer.Feasible, $"seed {seed}: {answer}");
                (pinned, moves) = (pinned + 1, moves + routine.Moves.Count);
            }
        }

        output.WriteLine($"{pinned} routines with {moves} moves");
        Assert.True(pinned >= 7 && moves >= 50, $"only {pinned} routines with {moves} moves");
    }

    [Theory]
    [InlineData(false)]
    [InlineData(true)]
    public void Every_clean_routine_of_tiny_worlds_fits_the_plan(bool seconds)
    {
        var (pinned, worlds, withSecond) = (0, 0, 0);
        for (var seed = 1; seed <= 100; seed++)
        {
            var world = new TinyWorld(seed, seconds);
            var routines = Exhaustive.Routines(world);
            worlds += routines.Count > 0 ? 1 : 0;
            foreach (var routine in routines.Where((_, i) => i % Math.Max(1, routines.Count / 8) == 0))
            {
                var answer = PlanPin.Of(world.Scene, routine, Quick);
                Assert.True(answer is CpAnswer.Optimal or CpAnswer.Feasible, $"world {seed}: {answer}");
                withSecond += Generator.Rules.Replaying.Replay.Of(world.Scene, routine).Any(s => s.Second >= 0) ? 1 : 0;
                pinned++;
            }
        }

        output.WriteLine($"{pinned} routines of {worlds} worlds, {withSecond} with a second attacker");
        Assert.True(pinned >= 60 && worlds >= 10, $"only {pinned} routines of {worlds} worlds");
        Assert.True(!seconds || withSecond >= 5, $"only {withSecond} with a second attacker");
    }

    [Theory]
    [InlineData(false)]
    [InlineData(true)]
    public void Where_the_plan_is_impossible_no_routine_of_a_tiny_world_is_clean(bool seconds)
    {
        var (impossible, possible) = (0, 0);
        for (var seed = 1; seed <= 60; seed++)
        {
            var world = new TinyWorld(seed, seconds);
            var prover = new Prover();
            if (prover.RoundMoments(world.Scene, CancellationToken.None) == Fit.Impossible || prover.Whole(world.Scene, CancellationToken.None) == Fit.Impossible)
            {
                Assert.Empty(Exhaustive.Clean(world));
                impossible++;
            }
            else
            {
                possible++;
            }
        }

        output.WriteLine($"{impossible} impossible, {possible} not");
        Assert.True(impossible >= 3 && possible >= 10, $"{impossible} impossible, {possible} not");
    }

    /// <summary>
    /// Of an audited routine some moves are asked for as hero moments in just their counts, with just its length, setbacks, pauses, entrances and falls:
    /// whatever a plan round the moments leaves out of sight, it must not call that impossible.
    /// </summary>
    [Fact]
    public void What_an_audited_routine_does_is_possible_round_its_moments()
    {
        var (asked, moments) = (0, 0);
        for (var seed = 1; seed <= 3; seed++)
        {
            if (Drafts.Rounds(Drafts.Small(seed), seed, 2) is not { Status: DraftStatus.Found, Routine: { } routine })
            {
                continue;
            }

            var chance = new Chance(seed);
            for (var i = 0; i < 2; i++)
            {
                var brief = Tightened(routine, chance);
                Assert.True(Audit.Of(new Scene(brief, Drafts.Book), routine with { Brief = brief }).IsClean, $"seed {seed}: not what the brief asks for");
                Assert.Equal(Fit.Possible, new Prover().RoundMoments(new Scene(brief, Drafts.Book), CancellationToken.None));
                (asked, moments) = (asked + 1, moments + brief.Moments.Count);
            }
        }

        output.WriteLine($"{asked} briefs with {moments} moments");
        Assert.True(asked >= 4 && moments >= 10, $"only {asked} briefs with {moments} moments");
    }

    private static Brief Tightened(Routine routine, Chance chance)
    {
        var scene = new Scene(routine.Brief, Drafts.Book);
        var steps = Generator.Rules.Replaying.Replay.Of(scene, routine);
        var end = steps[^1].After;
        var moments = new List<Moment>();
        for (var i = chance.Whole(0, 3); i < steps.Count; i += chance.Whole(1, 6))
        {
            var run = steps.Skip(i).Take(chance.Percent(25) ? 2 : 1).ToList();
            moments.Add(new Moment([.. run.Select(s => Wanted(routine, s))], new HalfCounts(run[0].Start), new HalfCounts(run[0].Start)));
        }

        return routine.Brief with
        {
            Moments = moments,
            Length = new Length(end.Time / 2, steps.Count, end.Time % 2),
            Setbacks = steps.Count(s => s.Technique!.Family == Family.Setback),
            Pauses = steps.Count(s => s.Technique!.IsStoryPause),
            Ending = new Ending([.. routine.Brief.Attackers.Where((_, a) => end.Attackers[a].Posture == Posture.Out).Select(a => a.Name)], null),
            Attackers = [.. routine.Brief.Attackers.Select((a, i) => a with { FallsPerRun = end.Attackers[i].Falls, Entrance = routine.Placements[i].Entrance, Bearing = routine.Placements[i].Bearing, Distance = routine.Placements[i].Distance })],
        };
    }

    private static MomentMove Wanted(Routine routine, Generator.Rules.Replaying.Step step) => new(
        step.Technique!.Id,
        step.HasTarget ? routine.Brief.Attackers[step.Row.Attacker].Name : null,
        step.Attack?.Id,
        step.Reaction?.Id);

    [Fact]
    public void Impossible_needs_the_word_of_two_configurations()
    {
        var model = new CpModel();
        Prover Saying(CpAnswer first, CpAnswer second) => new((_, settings, _) => ReferenceEquals(settings, Prover.Configurations[0]) ? first : second);
        Assert.Equal(Fit.Impossible, Saying(CpAnswer.Infeasible, CpAnswer.Infeasible).Ask(model, CancellationToken.None));
        Assert.Equal(Fit.Unknown, Saying(CpAnswer.Infeasible, CpAnswer.Unknown).Ask(model, CancellationToken.None));
        Assert.Equal(Fit.Unknown, Saying(CpAnswer.Unknown, CpAnswer.Infeasible).Ask(model, CancellationToken.None));
        Assert.Equal(Fit.Possible, Saying(CpAnswer.Optimal, CpAnswer.Infeasible).Ask(model, CancellationToken.None));
        Assert.Throws<DisagreementException>(() => Saying(CpAnswer.Infeasible, CpAnswer.Optimal).Ask(model, CancellationToken.None));
    }
}
