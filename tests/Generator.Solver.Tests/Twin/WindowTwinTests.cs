using Generator.Domain;
using Generator.Rules;
using Generator.Rules.Combining;
using Generator.Rules.Judging;
using Generator.Rules.Replaying;
using Generator.Solver.Engine;
using Generator.Solver.Filling;
using Generator.Solver.Questions;
using Generator.Solver.Rolling;
using Generator.Solver.Tests.Constructing;
using Xunit.Abstractions;
using RuleModules = Generator.Solver.Rules.RuleModules;

namespace Generator.Solver.Tests.Twin;

/// <summary>
/// A model that begins in the middle of a routine knows what came before: audited routines are cut, their next rows are pinned as they stand or with one thing changed, and what the
/// model allows and charges, rule by rule, is what the audit says of those rows in the whole routine.
/// </summary>
public sealed class WindowTwinTests(ITestOutputHelper output)
{
    private const int Rows = 3;

    private static readonly SearchSettings Settings = new() { Time = Drafts.Hang, Bare = true, Linear = false };

    private readonly Dictionary<string, int> charged = new(StringComparer.Ordinal);

    private readonly Dictionary<string, int> forbidden = new(StringComparer.Ordinal);

    [Fact]
    public void Windows_of_long_routines_are_judged_as_in_the_whole()
    {
        var (allowed, refused, n) = (0, 0, 0);
        foreach (var seed in (int[])[1, 2, 3, 4, 5])
        {
            if (Drafts.Rounds(seed % 2 == 0 ? Drafts.Small(seed) : Long(seed), seed, 1) is not { Status: DraftStatus.Found, Routine: { } routine })
            {
                continue;
            }

            var scene = new Scene(routine.Brief, Drafts.Book);
            var rows = routine.Moves.Select(m => Row.Of(m, scene)).ToList();

            // The last rows, where what is counted over the whole is charged, and two windows on the way.
            foreach (var cut in new[] { rows.Count / 4, rows.Count / 2, rows.Count - Rows })
            {
                n++;
                var draft = Draft.Of(scene, routine.Placements, rows[..cut]);
                foreach (var window in new[] { rows.GetRange(cut, Rows), Later(rows.GetRange(cut, Rows), new Random(n)), Repeated(scene, draft, rows, cut) })
                {
                    var ends = cut + Rows == rows.Count;
                    var verdict = Judged(scene, draft, window, ends);
                    var (answer, points) = Solved(scene, draft, window, ends);
                    var where = $"seed {seed}, cut before move {cut + 1}: {string.Join("; ", window.Select(r => $"{r.Start} {r.Attacker} {(r.Technique < 0 ? "-" : scene.Book.Techniques[r.Technique].Id)}"))}";
                    if (verdict.Forbids.Count > 0)
                    {
                        Assert.True(answer == CpAnswer.Infeasible, $"{string.Join(", ", verdict.Forbids)} of the audit forbids what the model allows: {where}");
                        Count(forbidden, verdict.Forbids);
                        refused++;
                        continue;
                    }

                    Assert.True(answer == CpAnswer.Optimal, $"the audit passes what the model says is {answer}: {where}");
                    foreach (var (rule, cost) in verdict.Costs)
                    {
                        Assert.True(cost == points.GetValueOrDefault(rule), $"{rule} costs {cost} in the audit, {points.GetValueOrDefault(rule)} in the model: {where}");
                    }

                    Count(charged, verdict.Costs.Where(c => c.Cost > 0).Select(c => c.Rule));
                    allowed++;
                }
            }
        }

        output.WriteLine($"{allowed} windows allowed, points by {Told(charged)}; {refused} refused, by {Told(forbidden)}");
        Assert.True(allowed >= 24 && refused >= 9, $"{allowed} allowed, {refused} refused");
        Assert.Superset(new HashSet<string>(["no-waiting", "dead-air", "share"], StringComparer.Ordinal), charged.Keys.ToHashSet(StringComparer.Ordinal));
    }

    /// <summary>
    /// A technique that was done a few moves before the cut is done twice more after it, whatever other rules say of that: the third time within eight moves costs a point, also where
    /// the first was before the cut.
    /// </summary>
    [Fact]
    public void Repeats_are_counted_across_the_cut()
    {
        var routine = Drafts.Rounds(Long(1), 1, 1).Routine!;
        var scene = new Scene(routine.Brief, Drafts.Book);
        var rows = routine.Moves.Select(m => Row.Of(m, scene)).ToList();
        var (compared, costs) = (0, new HashSet<int>());
        for (var cut = 8; cut + Rows <= rows.Count; cut += 3)
        {
            var draft = Draft.Of(scene, routine.Placements, rows[..cut]);
            for (var back = 1; back <= 7; back++)
            {
                var repeated = rows[cut - back];
                if (scene.Book.Techniques[repeated.Technique].HasNoTarget)
                {
                    continue;
                }

                var window = rows.GetRange(cut, Rows).Select((r, i) => i == 1 ? r : repeated with { Start = r.Start, From = -1, Linger = 0 }).ToList();
                if (Compared("variety", scene, draft, window, ends: false, $"cut before move {cut + 1}, {back} back") is { } cost)
                {
                    compared++;
                    costs.Add(cost);
                }
            }
        }

        output.WriteLine($"{compared} windows, costs {string.Join(", ", costs.Order())}");
        Assert.True(compared >= 15 && costs.Count >= 2, $"{compared} windows, costs {string.Join(", ", costs.Order())}");
    }

    /// <summary>A combination counts though the cut goes through it, and does not where a window begins too late or with somebody else.</summary>
    [Fact]
    public void Combinations_are_seen_across_the_cut()
    {
        var boxer = new Brief { Length = new Length(32, null, 4), Attackers = [new AttackerPart { Name = "Bruno", Skill = Skill.Stunt, Manner = "boxer" }], Judged = [FightRule.Manner] };
        var (compared, costs) = (0, new HashSet<int>());
        for (var seed = 1; seed <= 4; seed++)
        {
            var routine = Drafts.Rounds(boxer, seed, 1).Routine!;
            var scene = new Scene(routine.Brief, Drafts.Book);
            var rows = routine.Moves.Select(m => Row.Of(m, scene)).ToList();
            var first = Assert.Single(ThrownCombination.Of(scene, Replay.Of(scene, routine)).Take(1)).First - 1;
            foreach (var cut in new[] { first - 1, first, first + 1, first + 2 }.Where(c => c > 0 && c + Rows <= rows.Count))
            {
                var draft = Draft.Of(scene, routine.Placements, rows[..cut]);
                foreach (var late in new[] { 0, 1, 2 })
                {
                    var window = rows.GetRange(cut, Rows).Select(r => r with { Start = r.Start + late }).ToList();
                    var cost = Compared("manner", scene, draft, window, ends: true, $"seed {seed}, cut before move {cut + 1}, {late} later");
                    Assert.NotNull(cost);
                    compared++;
                    costs.Add(cost.Value);
                }
            }
        }

        output.WriteLine($"{compared} windows, costs {string.Join(", ", costs.Order())}");
        Assert.True(compared >= 20 && costs.Count >= 2, $"{compared} windows, costs {string.Join(", ", costs.Order())}");
    }

    /// <summary>Blows before the cut wear whoever took them: a fight drafted without a thought of it is judged by thinning alone, attacks as early as they are and later.</summary>
    [Fact]
    public void Who_was_worn_before_the_cut_is_worn_after_it()
    {
        var two = new Brief { Length = new Length(64, null, 4), Acts = [], Judged = [], Attackers = [.. new[] { "Bruno", "Wanda" }.Select(n => new AttackerPart { Name = n, Skill = Skill.Stunt })] };
        var (compared, costs) = (0, new HashSet<int>());
        for (var seed = 1; seed <= 6; seed++)
        {
            var routine = Drafts.Rounds(two, seed, 1).Routine!;
            var scene = new Scene(routine.Brief with { Length = null, Judged = [FightRule.Thinning] }, Drafts.Book);
            var rows = routine.Moves.Select(m => Row.Of(m, scene)).ToList();
            var worn = Replay.Of(scene, routine).Where(s => s.Attack is not null && s.Index >= 8 && s.Index + 2 < rows.Count).Select(s => s.Index).ToList();
            foreach (var cut in worn.SelectMany(i => new[] { i - 1, i }).Distinct())
            {
                var draft = Draft.Of(scene, routine.Placements, rows[..cut]);
                foreach (var late in new[] { 0, 3 })
                {
                    var window = rows.GetRange(cut, Rows).Select((r, i) => i == 0 ? r : r with { Start = r.Start + late }).ToList();
                    var cost = Compared("thinning", scene, draft, window, ends: false, $"seed {seed}, cut before move {cut + 1}, {late} later");
                    Assert.NotNull(cost);
                    compared++;
                    costs.Add(cost.Value);
                }
            }
        }

        output.WriteLine($"{compared} windows, costs {string.Join(", ", costs.Order())}");
        Assert.True(compared >= 40 && costs.Count >= 3, $"{compared} windows, costs {string.Join(", ", costs.Order())}");
    }

    /// <summary>Four attackers, setbacks, pauses, an arc and a wish for the share of the first.</summary>
    private static Brief Long(int seed) => new()
    {
        Length = new Length(48, null, 4),
        Arc = seed % 4 == 1 ? Arc.Rising : Arc.TwoPeaks,
        Setbacks = 2,
        Pauses = 1,
        Attackers = [.. new[] { "Bruno", "Wanda", "Piet", "Lotte" }.Select((name, i) => new AttackerPart { Name = name, Skill = Skill.Stunt, SharePercent = i == 0 && seed % 4 == 1 ? 50 : null })],
    };

    /// <summary>The last rows come later.</summary>
    private static List<Row> Later(List<Row> window, Random dice)
    {
        var (at, later) = (dice.Next(Rows), 1 + dice.Next(10));
        return [.. window.Select((r, i) => i < at ? r : r with { Start = r.Start + later })];
    }

    /// <summary>A row is done with the technique of one shortly before: best one that the audit lets pass at a cost for it.</summary>
    private static List<Row> Repeated(Scene scene, Draft draft, List<Row> rows, int cut)
    {
        var ways = (from at in Enumerable.Range(0, Rows)
                    let row = rows[cut + at]
                    from other in rows.Take(cut + at).TakeLast(8)
                    where row.Attacker >= 0 && other.Attacker >= 0 && other.Attack < 0 == row.Attack < 0 && other.Technique != row.Technique && scene.Book.Techniques[other.Technique] is { HasNoTarget: false, IsStoryPause: false, Family: not Family.Setback }
                    select rows.GetRange(cut, Rows).Select((r, i) => i == at ? r with { Technique = other.Technique, Reaction = other.Reaction, Attack = other.Attack, Linger = 0 } : r).ToList()).ToList();
        return ways.Find(w => Judged(scene, draft, w, ends: false) is { Forbids.Count: 0 } verdict && verdict.Costs.Any(c => c is { Rule: "variety", Cost: > 0 })) ?? ways.LastOrDefault() ?? rows.GetRange(cut, Rows);
    }

    /// <summary>What one rule alone costs in a window, of which both sides must say the same; null where the model has no answer.</summary>
    private static int? Compared(string rule, Scene scene, Draft draft, List<Row> window, bool ends, string where)
    {
        var (answer, points) = Solved(scene, draft, window, ends, rule);
        if (answer != CpAnswer.Optimal)
        {
            return null;
        }

        var cost = Judged(scene, draft, window, ends).Costs.Single(c => c.Rule == rule).Cost;
        Assert.True(cost == points.GetValueOrDefault(rule), $"{where}: {cost} in the audit, {points.GetValueOrDefault(rule)} in the model");
        return cost;
    }

    private static (IReadOnlyCollection<string> Forbids, IReadOnlyList<(string Rule, int Cost)> Costs) Judged(Scene scene, Draft draft, List<Row> window, bool ends)
    {
        var (state, score, told) = (draft.State, draft.Score, new List<Finding>());
        foreach (var row in window)
        {
            var step = Replay.Step(scene, state, row);
            score = score.Observe(scene, step, told);
            state = step.After;
        }

        score = ends ? score.Close(scene, state, told) : score;
        return (
            [.. told.Where(f => f.Severity >= Severity.Broken).Select(f => f.Rule).Distinct(StringComparer.Ordinal)],
            [.. RuleBook.All.Select((r, i) => (r.Id, score.PointsByRule[i] - draft.Score.PointsByRule[i]))]);
    }

    private static (CpAnswer Answer, Dictionary<string, int> Points) Solved(Scene scene, Draft draft, List<Row> window, bool ends, string? only = null)
    {
        var used = window.Select(r => r.Technique).ToHashSet();
        var words = Vocabulary.Of(scene, t => used.Contains(scene.Book.TechniqueIndex(t.Id)), keepUnfit: true, seconds: true);
        var model = new MoveModel(scene, words, new MoveModelOptions
        {
            From = draft.State,
            Past = draft.Past,
            Memory = draft.Score,
            Rules = only is null ? RuleModules.All : [RuleModules.All.Single(r => r.Id == only)],
            Rows = Rows,
            FewestRows = Rows,
            Ends = ends,
            Horizon = window[^1].Start + 60,
            MostWalkRound = Bearing.Circle / 2,
            Total = true,
        });
        Pin.Rows(model, window);
        model.Cp.Model.Minimize(model.Points);
        using var session = model.Session();
        var answer = session.Solve(Settings);
        var points = new Dictionary<string, int>(StringComparer.Ordinal);
        foreach (var (rule, charge) in session.HasSolution ? model.PointsByRule : [])
        {
            points[rule] = points.GetValueOrDefault(rule) + (int)session.Value(charge);
        }

        return (answer, points);
    }

    private static void Count(Dictionary<string, int> seen, IEnumerable<string> rules)
    {
        foreach (var rule in rules)
        {
            seen[rule] = seen.GetValueOrDefault(rule) + 1;
        }
    }

    private static string Told(Dictionary<string, int> seen) => string.Join(", ", seen.OrderBy(s => s.Key, StringComparer.Ordinal).Select(s => $"{s.Key} {s.Value}"));
}
