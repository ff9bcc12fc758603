using Generator.Domain;
using Generator.Rules;
using Generator.Solver.Engine;
using Generator.Solver.Proving;
using Generator.Solver.Tests.Constructing;
using Generator.Solver.Tests.Twin;
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
        for (var seed = 1; seed <= 40; seed++)
        {
            if (Drafts.Draft(Drafts.Small(seed), seed, 2) is { Status: DraftStatus.Found, Routine: { } routine })
            {
                var answer = PlanPin.Of(new Scene(routine.Brief, Drafts.Book), routine, Quick);
                Assert.True(answer is CpAnswer.Optimal or CpAnswer.Feasible, $"seed {seed}: {answer}");
                (pinned, moves) = (pinned + 1, moves + routine.Moves.Count);
            }
        }

        output.WriteLine($"{pinned} routines with {moves} moves");
        Assert.True(pinned >= 20 && moves >= 150, $"only {pinned} routines with {moves} moves");
    }

    [Theory]
    [InlineData(false)]
    [InlineData(true)]
    public void Every_clean_routine_of_tiny_worlds_fits_the_plan(bool seconds)
    {
        var (pinned, worlds, withSecond) = (0, 0, 0);
        for (var seed = 1; seed <= 160; seed++)
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
            var fit = new Prover().Ask(world.Scene, CancellationToken.None);
            if (fit == Fit.Impossible)
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
