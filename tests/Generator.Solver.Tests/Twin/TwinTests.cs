using System.Globalization;
using Generator.Domain;
using Generator.Rules.Combining;
using Generator.Rules.Judging;
using Generator.Rules.Replaying;
using Generator.Solver.Engine;
using Generator.Solver.Filling;
using Xunit.Abstractions;

namespace Generator.Solver.Tests.Twin;

/// <summary>CP-SAT and exhaustive enumeration over Replay and the audit's rules know the same routines and the same least points.</summary>
public sealed class TwinTests(ITestOutputHelper output)
{
    private const int Cases = 120;

    /// <summary>So many of them in the plain way.</summary>
    private const int InOneTable = 50;

    /// <summary>Sets with more routines are left out: each routine is a search of its own.</summary>
    private const int MostRoutines = 16;

    private const int EnoughInfeasible = 15;

    /// <summary>Sets that are compared; their worlds are those of other tests, so that they are enumerated once.</summary>
    private const int Compared = 30;

    /// <summary>In this world the solver once said no without its presolve where there are routines.</summary>
    private const int Once = 308;

    /// <summary>The same where a few worlds do.</summary>
    private const int MostCombining = 90;

    /// <param name="inOneTable">The plain way, by which benchmarks compare, says the same.</param>
    [Theory]
    [InlineData(false)]
    [InlineData(true)]
    public void Least_points_and_feasibility_agree(bool inOneTable)
    {
        var (cases, feasible, infeasible) = (inOneTable ? InOneTable : Cases, 0, 0);
        for (var seed = 1; seed <= cases; seed++)
        {
            var world = new TinyWorld(seed);
            var clean = Exhaustive.Clean(world);
            var model = Solved.Model(world, inOneTable);
            model.Cp.Model.Minimize(model.Points);
            using var best = model.Session();
            var answer = best.Solve(Solved.Settings);
            Assert.True(answer == (clean.Count > 0 ? CpAnswer.Optimal : CpAnswer.Infeasible), $"seed {seed}: the solver says {answer}, enumeration finds {clean.Count} routines");
            if (clean.Count == 0)
            {
                infeasible++;
                continue;
            }

            feasible++;
            Assert.True(clean.Values.Min() == best.Objective, $"seed {seed}: least points {clean.Values.Min()} by enumeration, {best.Objective} by the solver");
            var rows = RowReader.Rows(model, best);
            Assert.True(clean.ContainsKey(Exhaustive.Key(rows)), $"seed {seed}: the solver's {Exhaustive.Key(rows)} is not among the routines enumerated");
            Assert.Equal(clean[Exhaustive.Key(rows)], best.Objective);
        }

        output.WriteLine($"{feasible} feasible, {infeasible} infeasible of {cases}");
        Assert.True(feasible >= cases / 5, $"only {feasible} feasible cases");
        Assert.True(infeasible >= cases / 5, $"only {infeasible} infeasible cases");
    }

    [Fact]
    public void The_sets_of_clean_routines_are_the_same()
    {
        var (compared, routines) = (0, 0);
        var points = Enum.GetNames<FightRule>().Append("Music").ToDictionary(r => r, _ => 0, StringComparer.Ordinal);
        for (var seed = 1; seed <= 3 * Cases && compared < Compared; seed++)
        {
            var world = new TinyWorld(seed);
            var clean = Exhaustive.Clean(world);
            if (clean.Count is 0 or > MostRoutines)
            {
                continue;
            }

            compared++;
            routines += clean.Count;
            var solved = Solved.AllOf(Solved.Model(world), clean.Count + 5);
            Assert.True(clean.Keys.ToHashSet(StringComparer.Ordinal).SetEquals(solved.Keys), $"seed {seed}: only enumerated: {string.Join(" | ", clean.Keys.Except(solved.Keys))}; only solved: {string.Join(" | ", solved.Keys.Except(clean.Keys))}");
            Assert.All(solved, s => Assert.Equal(clean[s.Key], s.Value));
            var verdicts = Exhaustive.Routines(world).Select(r => Audit.Of(world.Scene, r)).ToList();
            foreach (var rule in points.Keys)
            {
                points[rule] += verdicts.Count(v => v.PointsByRule[RuleBook.IndexOf(rule.ToLowerInvariant())] > 0);
            }
        }

        output.WriteLine($"{compared} worlds, {routines} routines, with points of {string.Join(", ", points)}");
        Assert.All(points, p => Assert.True(p.Value >= 10, $"{p.Value} routines with points of {p.Key}"));
        Assert.True(compared == Compared, $"only {compared} worlds had a set to compare");
    }

    /// <summary>The same in worlds where reactions bump into a second attacker and a technique takes two.</summary>
    [Fact]
    public void Second_attackers_agree()
    {
        var (feasible, infeasible, bumped, taken, chosen) = (0, 0, 0, 0, 0);
        foreach (var seed in Enumerable.Range(1, 500).Prepend(Once))
        {
            if (bumped >= 40 && taken >= 4 && chosen >= 20 && feasible >= 15 && infeasible >= 15)
            {
                break;
            }

            var world = new TinyWorld(seed, seconds: true);
            var clean = Exhaustive.Clean(world);
            if (clean.Count == 0 && infeasible == EnoughInfeasible)
            {
                continue;
            }

            var model = Solved.Model(world);
            model.Cp.Model.Minimize(model.Points);
            using var best = model.Session();
            var answer = best.Solve(Solved.Settings);
            Assert.True(answer == (clean.Count > 0 ? CpAnswer.Optimal : CpAnswer.Infeasible), $"seed {seed}: the solver says {answer}, enumeration finds {clean.Count} routines");
            (feasible, infeasible) = clean.Count > 0 ? (feasible + 1, infeasible) : (feasible, infeasible + 1);
            if (clean.Count == 0)
            {
                continue;
            }

            Assert.True(clean.Values.Min() == best.Objective, $"seed {seed}: least points {clean.Values.Min()} by enumeration, {best.Objective} by the solver");
            if (clean.Count > 24 || !clean.Keys.Any(k => Involves(world, k, "bumps") || Involves(world, k, "heads")))
            {
                continue;
            }

            var solved = Solved.AllOf(Solved.Model(world), clean.Count + 5);
            Assert.True(clean.Keys.ToHashSet(StringComparer.Ordinal).SetEquals(solved.Keys), $"seed {seed}: only enumerated: {string.Join(" | ", clean.Keys.Except(solved.Keys))}; only solved: {string.Join(" | ", solved.Keys.Except(clean.Keys))}");
            Assert.All(solved, s => Assert.Equal(clean[s.Key], s.Value));
            bumped += clean.Keys.Count(k => Involves(world, k, "bumps"));
            taken += clean.Keys.Count(k => Involves(world, k, "heads"));
            chosen += world.Scene.Cast > 2 ? clean.Count : 0;
        }

        output.WriteLine($"{feasible} feasible, {infeasible} infeasible; {bumped} routines bump into somebody, {taken} take two, {chosen} with a choice of second ones");
        Assert.True(feasible >= 15 && infeasible >= 15, $"{feasible} feasible, {infeasible} infeasible");
        Assert.True(bumped >= 40 && taken >= 4 && chosen >= 20, $"{bumped} bump into somebody, {taken} take two, {chosen} with a choice");
    }

    /// <summary>The same where an attacker should come again at once: which routines have a combination, of two or three attacks, is the same to both.</summary>
    [Fact]
    public void Combinations_agree()
    {
        var (with, without, costs) = (0, 0, new HashSet<int>());
        for (var seed = 1; seed <= 60 && (with < 6 || without < 30); seed++)
        {
            var world = new TinyWorld(seed, combines: true);
            var clean = world.Scene.Combinations.AreWanted ? Exhaustive.Clean(world) : [];
            if (clean.Count is 0 or > MostCombining)
            {
                continue;
            }

            var solved = Solved.AllOf(Solved.Model(world), clean.Count + 5);
            Assert.True(clean.Keys.ToHashSet(StringComparer.Ordinal).SetEquals(solved.Keys), $"seed {seed}: only enumerated: {string.Join(" | ", clean.Keys.Except(solved.Keys))}; only solved: {string.Join(" | ", solved.Keys.Except(clean.Keys))}");
            Assert.All(solved, s => Assert.Equal(clean[s.Key], s.Value));
            foreach (var routine in Exhaustive.Routines(world).Where(r => Audit.Of(world.Scene, r).IsClean))
            {
                var thrown = ThrownCombination.Of(world.Scene, Replay.Of(world.Scene, routine));
                (with, without) = thrown.Count > 0 ? (with + 1, without) : (with, without + 1);
                costs.UnionWith(thrown.Select(t => t.Combination.Attacks.Count));
            }
        }

        output.WriteLine($"{with} routines with a combination, {without} without, of {string.Join(", ", costs)} attacks");
        Assert.True(with >= 6 && without >= 30, $"{with} with a combination, {without} without");
        Assert.Equal([2, 3], costs.Order());
    }

    /// <summary>
    /// A world in which one comes in beside where another enters soon after: with one reaction they stay there and the two meet, with another they are away by then.
    /// What is learnt of the first says nothing of the second.
    /// </summary>
    [Fact]
    public void Who_is_sent_away_in_time_is_not_met_where_the_blow_was()
    {
        var world = new TinyWorld(357, seconds: true);
        var clean = Exhaustive.Clean(world);
        Assert.NotEmpty(clean);
        Assert.Equal(clean.Keys.Order(StringComparer.Ordinal), Solved.AllOf(Solved.Model(world), clean.Count + 5).Keys.Order(StringComparer.Ordinal));
    }

    /// <summary>The routine has a row with this reaction or technique.</summary>
    private static bool Involves(TinyWorld world, string key, string id) => key.Split(" ; ").Select(r => r.Split(' ')).Any(r =>
        world.Book.Techniques[int.Parse(r[3], CultureInfo.InvariantCulture)].Id == id
        || (r[4] != "-1" && world.Book.Reactions[int.Parse(r[4], CultureInfo.InvariantCulture)].Id == id));
}
