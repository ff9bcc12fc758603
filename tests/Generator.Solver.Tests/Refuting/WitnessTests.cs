using System.Globalization;
using Generator.Domain;
using Generator.Rules;
using Generator.Rules.Judging;
using Generator.Solver.Completing;
using Generator.Solver.Proving;
using Generator.Solver.Refuting;
using Generator.Solver.Tests.Constructing;
using Generator.Testing;
using Xunit.Abstractions;

namespace Generator.Solver.Tests.Refuting;

/// <summary>Routines that are there are the witnesses that what they satisfy is not impossible.</summary>
public class WitnessTests(ITestOutputHelper output)
{
    /// <summary>Routines of each kind that are asked for; GENERATOR_WITNESSES asks for more.</summary>
    private static readonly int Routines = int.TryParse(Environment.GetEnvironmentVariable("GENERATOR_WITNESSES"), NumberStyles.None, CultureInfo.InvariantCulture, out var more) ? more : 1;

    /// <summary>Moves up to which a plan round every one of them as a hero moment is made as well.</summary>
    private const int Short = 12;

    [Fact]
    public void No_brief_of_which_a_stored_routine_is_the_witness_is_called_impossible() =>
        Ask(StoredRoutines.All(Drafts.Book).Select((r, i) => (r, i)).Where(r => IsClean(r.r, r.r.Brief)).Take(Routines));

    [Fact]
    public void No_brief_of_which_filled_notes_are_the_witness_is_called_impossible() =>
        Ask(Enumerable.Range(0, Routines).Select(i => (Filled(i), i)).Where(f => f.Item1 is not null).Select(f => (f.Item1!, f.i)));

    [Fact]
    public void No_brief_of_which_a_draft_is_the_witness_is_called_impossible() =>
        Ask(Enumerable.Range(0, 2 * Routines).Select(i => (Drafts.Rounds(Wanted(i), i, 1).Routine, i)).Where(d => d.Routine is not null).Select(d => (d.Routine!, d.i)));

    private void Ask(IEnumerable<(Routine Routine, int Seed)> witnesses)
    {
        var (asked, moments, limits, unclean) = (0, 0, 0, 0);
        foreach (var (routine, seed) in witnesses)
        {
            var chance = new Chance(seed);
            foreach (var exact in Exactly.As(routine, Drafts.Book))
            {
                if (!IsClean(routine, exact))
                {
                    unclean++;
                    continue;
                }

                var strict = Strictest.For(routine, exact, Drafts.Book, chance);
                var scene = new Scene(strict, Drafts.Book);
                var reasons = Refutations.Reasons(scene);
                Assert.True(reasons.Count == 0, $"{seed}, {routine.Brief.Title}: {string.Join(' ', reasons)}");
                if (routine.Moves.Count <= Short)
                {
                    Assert.NotEqual(Fit.Impossible, new Prover().RoundMoments(scene, CancellationToken.None));
                }

                (asked, moments, limits) = (asked + 1, moments + strict.Moments.Count, limits + strict.Hero.Limits.Count + strict.Attackers.Sum(a => a.Limits.Count));
            }
        }

        output.WriteLine($"{asked} briefs with {moments} moments and {limits} limits, {unclean} that the routine does not satisfy");
        Assert.True(asked >= 2 && moments > asked && limits > 0, $"{asked} briefs with {moments} moments and {limits} limits, {unclean} that the routine does not satisfy");
    }

    private static bool IsClean(Routine routine, Brief brief) => Audit.Of(new Scene(brief, Drafts.Book), routine with { Brief = brief }).IsClean;

    /// <summary>The first filling of rough notes.</summary>
    private static Routine? Filled(int number)
    {
        using var stop = new CancellationTokenSource();
        var sketch = RoughNotes.Read(RoughNotes.Names[number % RoughNotes.Names.Count], Drafts.Book).Sketch;
        return Complete.Of(sketch, Drafts.Book, new CompleteOptions { Seed = number + 1, Time = Drafts.Hang }, _ => stop.Cancel(), stop.Token)?.Routine;
    }

    private static Brief Wanted(int seed)
    {
        var chance = new Chance(seed);
        var brief = Drafts.Small(seed);
        return brief with
        {
            Tempo = new Tempo(chance.Whole(60, 160)),
            Moments = chance.List(0, 1, _ => new Moment([new MomentMove(chance.One<string>(["outside-reap", "hip-throw", "leg-pick", "finishing-hook", "side-kick", "hugged-from-behind"]), null, null, null)], null, null)),
            Setbacks = null,
            Attackers = [.. brief.Attackers.Select(a => a with { Skill = chance.Any<Skill>(), Entrance = chance.Percent(30) ? new HalfCounts(chance.Whole(0, 16)) : null })],
        };
    }
}
