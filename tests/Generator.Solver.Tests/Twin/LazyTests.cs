using Generator.Solver.Engine;
using Generator.Solver.Filling;
using Generator.Solver.Rules;
using Google.OrTools.Sat;
using Xunit.Abstractions;

namespace Generator.Solver.Tests.Twin;

/// <summary>A rule that only refutes answers gives the same routines and the same least points as one that is posted beforehand.</summary>
public sealed class LazyTests(ITestOutputHelper output)
{
    [Fact]
    public void Posted_before_or_by_refuting_a_rule_gives_the_same_answers()
    {
        var (feasible, infeasible, dearer, refuted, routines) = (0, 0, 0, 0, 0);
        for (var seed = 1; seed <= 100; seed++)
        {
            var world = new TinyWorld(seed);
            var all = Exhaustive.Clean(world);
            var kept = all.Where(r => Toy.Keeps(r.Key)).ToDictionary(StringComparer.Ordinal);
            if (all.Count == 0)
            {
                continue;
            }

            var (early, _) = Least(Solved.Model(world, false, new Toy(false)));
            var (late, times) = Least(Solved.Model(world, false, new Toy(true)));
            Assert.True(early == (kept.Count > 0 ? kept.Values.Min() : null), $"seed {seed}: {early} posted, {kept.Count} routines enumerated");
            Assert.True(late == early, $"seed {seed}: {early} posted, {late} by refuting");
            (feasible, infeasible) = kept.Count > 0 ? (feasible + 1, infeasible) : (feasible, infeasible + 1);
            dearer += late > all.Values.Min() ? 1 : 0;
            refuted += times;
            if (all.Count <= 16)
            {
                routines += kept.Count;
                Assert.Equal(kept.Keys.Order(StringComparer.Ordinal), Solved.AllOf(Solved.Model(world, false, new Toy(true)), kept.Count + 5).Keys.Order(StringComparer.Ordinal));
            }
        }

        output.WriteLine($"{feasible} feasible, {infeasible} made infeasible, {dearer} dearer by the rule; {refuted} answers refuted; {routines} routines compared one by one");
        Assert.True(feasible >= 20 && infeasible >= 3 && dearer >= 3 && refuted >= 25 && routines >= 25, $"{feasible} feasible, {infeasible} infeasible, {dearer} dearer, {refuted} refuted, {routines} routines");
    }

    [Fact]
    public void All_solves_together_keep_to_the_limit_of_work_and_a_refuted_answer_is_none()
    {
        var model = new CpModel();
        var numbers = Enumerable.Range(0, 2000).Select(i => model.NewIntVar(0, 1_000_000, $"n{i}")).ToArray();
        model.Add(LinearExpr.Sum(numbers) >= 17);
        using var session = new CpSession(model, value =>
        {
            model.Add(numbers[0] != value(numbers[0]));
            return true;
        });

        Assert.Equal(CpAnswer.Unknown, session.Solve(new SearchSettings { Time = TimeSpan.FromMinutes(1), Work = 0.01, Bare = true, Linear = false }));
        Assert.True(session.Refuted > 1, $"{session.Refuted} refuted");
        Assert.True(session.Work is > 0.009 and < 0.02, $"{session.Work} work");
        Assert.Throws<InvalidOperationException>(() => session.Value(numbers[0]));
    }

    private static (long? Points, int Refuted) Least(MoveModel model)
    {
        model.Cp.Model.Minimize(model.Points);
        using var session = model.Session();
        var answer = session.Solve(Solved.Settings);
        Assert.True(answer is CpAnswer.Optimal or CpAnswer.Infeasible, answer.ToString());
        return (session.HasSolution ? session.Objective : null, session.Refuted);
    }

    /// <summary>Allows a third of all pairs of starts of neighbouring moves.</summary>
    private sealed class Toy(bool refutes) : RuleModule
    {
        public override string Id => "toy";

        public static bool Keeps(string key)
        {
            var starts = key.Split(" ; ").Select(r => int.Parse(r.Split(' ')[0], System.Globalization.CultureInfo.InvariantCulture)).ToList();
            return starts.Zip(starts.Skip(1)).All(p => Allows(p.First, p.Second));
        }

        public override void Post(MoveModel model)
        {
            for (var i = 1; i < model.Slots.Count && !refutes; i++)
            {
                var ((low, high), (least, most)) = (Cp.Range(model.Slots[i - 1].Start), Cp.Range(model.Slots[i].Start));
                for (var first = low; first <= high; first++)
                {
                    for (var second = Math.Max(first, least); second <= most; second++)
                    {
                        if (!Allows(first, second))
                        {
                            model.Cp.Model.AddBoolOr(Clause(model, i, first, second));
                        }
                    }
                }
            }
        }

        public override IEnumerable<IReadOnlyList<ILiteral>> Refute(ModelAnswer answer)
        {
            var (model, value) = (answer.Model, answer.Value);
            for (var i = 1; i < model.Slots.Count && refutes; i++)
            {
                var (first, second) = (value(model.Slots[i - 1].Start), value(model.Slots[i].Start));
                if (value(model.Slots[i].Used) == 1 && !Allows(first, second))
                {
                    yield return Clause(model, i, first, second);
                }
            }
        }

        private static bool Allows(long first, long second) => ((7 * first) + (5 * second)) % 3 == 0;

        private static ILiteral[] Clause(MoveModel model, int i, long first, long second)
        {
            var (before, after) = (model.Slots[i - 1], model.Slots[i]);
            return
            [
                after.Used.Not(), model.Cp.UpTo(before.Start, first).Not(), model.Cp.UpTo(before.Start, first - 1),
                model.Cp.UpTo(after.Start, second).Not(), model.Cp.UpTo(after.Start, second - 1),
            ];
        }
    }
}
