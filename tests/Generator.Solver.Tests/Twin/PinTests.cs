using Generator.Domain;
using Generator.Rules;
using Generator.Rules.Judging;
using Generator.Rules.Replaying;
using Generator.Solver.Engine;
using Generator.Solver.Filling;
using Generator.Solver.Rules;
using Xunit.Abstractions;

namespace Generator.Solver.Tests.Twin;

/// <summary>
/// What the audit calls broken or unsafe by one rule alone, the solver forbids, and forbids by that rule alone; what the audit passes,
/// the solver allows at the same points.
/// </summary>
public sealed class PinTests(ITestOutputHelper output)
{
    private const int Enough = 4;

    /// <summary>Worlds that are looked at; more of them only as long as some rule has not been broken alone at all.</summary>
    private const int Usual = 2500;

    /// <summary>Somebody is in the way of a foot here and nothing else is wrong, as in no other of the first twelve thousand worlds.</summary>
    private const int Rare = 9234;

    private static readonly SearchSettings Settings = new() { Time = Constructing.Drafts.Hang, Bare = true, Linear = false };

    /// <summary>
    /// Rules whose breach a model of these worlds cannot even say (attacks less than a count apart, see below; a technique without the attack it answers, moves that overlap), or
    /// that another module forbids as well: who is out has no posture that any follow-up needs.
    /// </summary>
    private static readonly HashSet<string> Unsayable = new(StringComparer.Ordinal) { "one-contact", "answers-attack", "tempo-floor", "out-stays-out" };

    /// <summary>Nothing stands on the floor of a tiny world and nobody holds anything; <see cref="ThingTwinTests"/> and <see cref="PropTwinTests"/> plant what there is.</summary>
    private static readonly HashSet<string> Planted = new(StringComparer.Ordinal) { "thing", "prop" };

    /// <summary>Rough rules whose points do not come up in worlds as small as these; <see cref="WindowTwinTests"/> compare them.</summary>
    private static readonly HashSet<string> Elsewhere = new(StringComparer.Ordinal) { "share" };

    [Fact]
    public void Each_rule_forbids_what_the_audit_finds_by_it_alone()
    {
        var pinned = RuleBook.All.Where(r => r.Worst >= Severity.Broken && !Planted.Contains(r.Id)).ToDictionary(r => r.Id, _ => 0, StringComparer.Ordinal);
        var worlds = 0;
        foreach (var seed in Enumerable.Range(1, 12000).Prepend(Rare))
        {
            if (pinned.All(p => p.Value >= (worlds < Usual ? Enough : 1) || Unsayable.Contains(p.Key)))
            {
                break;
            }

            worlds++;
            var world = new TinyWorld(seed, beside: seed % 3 == 0);
            var rows = Wander(world, seed);
            if (OnlyRule(world, rows) is not { } rule || pinned[rule] >= Enough)
            {
                continue;
            }

            pinned[rule]++;
            Assert.True(Solve(world, rows).Answer == CpAnswer.Infeasible, $"seed {seed}: {rule} is found by the audit, yet the solver allows {Exhaustive.Key(rows)}");
            if (!Unsayable.Contains(rule))
            {
                Assert.True(Solve(world, rows, rule).Answer == CpAnswer.Optimal, $"seed {seed}: without {rule} the solver still forbids {Exhaustive.Key(rows)}");
            }
        }

        output.WriteLine(string.Join(", ", pinned.Select(p => $"{p.Key} {p.Value}")) + $"; {worlds} worlds");
        Assert.All(pinned.Where(p => !Unsayable.Contains(p.Key)), p => Assert.True(p.Value > 0, $"no routine broke {p.Key} alone"));
    }

    [Fact]
    public void What_the_audit_passes_is_feasible_at_the_same_points()
    {
        var (clean, charged) = (0, new HashSet<string>(StringComparer.Ordinal));
        for (var seed = 1; seed <= 4000 && clean < 80; seed++)
        {
            var world = new TinyWorld(seed);
            var rows = Wander(world, seed);
            var verdict = Audit.Of(world.Scene, ToRoutine(world, rows));
            if (!verdict.IsClean || HasLeadIn(world, rows))
            {
                continue;
            }

            clean++;
            var (answer, points) = Solve(world, rows);
            Assert.True(answer == CpAnswer.Optimal, $"seed {seed}: the audit passes {Exhaustive.Key(rows)}, the solver says {answer}");
            for (var i = 0; i < RuleBook.All.Count; i++)
            {
                var rule = RuleBook.All[i].Id;
                Assert.True(verdict.PointsByRule[i] == points.GetValueOrDefault(rule), $"seed {seed}: {rule} costs {verdict.PointsByRule[i]} in the audit, {points.GetValueOrDefault(rule)} in the solver: {Exhaustive.Key(rows)}");
                if (verdict.PointsByRule[i] > 0)
                {
                    charged.Add(rule);
                }
            }
        }

        output.WriteLine($"{clean} clean routines; points by {string.Join(", ", charged)}");
        Assert.True(clean >= 60, $"only {clean} clean routines");
        var costing = RuleBook.All.Where(r => r.Worst == Severity.Rough && !Elsewhere.Contains(r.Id)).Select(r => r.Id).Append("dead-air").Append("music");
        Assert.All(costing, id => Assert.True(charged.Contains(id), $"No routine here has points of {id}: compare its two sides in a test of its own in Twin/, and add it to {nameof(Elsewhere)}."));
    }

    /// <summary>The last row lingers, which breaks nothing else: as long as the audit finds cause for it the solver may say so, and no longer.</summary>
    [Fact]
    public void Nobody_lingers_in_the_solver_whom_the_audit_sees_standing_about()
    {
        var (allowed, forbidden) = (0, 0);
        for (var seed = 1; seed <= 2000 && (allowed < 10 || forbidden < 10); seed++)
        {
            var world = new TinyWorld(seed);
            var rows = Wander(world, seed);
            var (unhurt, most) = (world.Scene.Settle.LingerUnhurt.Value, world.Brief.Pace.Linger.Value);
            foreach (var linger in new[] { unhurt, unhurt + 1, most })
            {
                List<Row> lingers = [.. rows[..^1], rows[^1] with { Linger = linger }];
                var routine = ToRoutine(world, lingers);
                if (HasLeadIn(world, rows) || rows[^1].Attacker < 0 || Audit.Of(world.Scene, routine) is not { IsClean: true } verdict || !Replay.Of(world.Scene, routine)[^1].After.Attackers[rows[^1].Attacker].IsActive)
                {
                    break;
                }

                var idle = verdict.Findings.Any(f => f.Message.Contains("gives cause for", StringComparison.Ordinal));
                (allowed, forbidden) = idle ? (allowed, forbidden + 1) : (allowed + 1, forbidden);
                var (answer, points) = Solve(world, lingers);
                Assert.True(answer == (idle ? CpAnswer.Infeasible : CpAnswer.Optimal), $"seed {seed}: the audit says idle: {idle}, the solver {answer}: {Exhaustive.Key(lingers)}, lingering {linger}");
                Assert.Equal(idle ? 0 : verdict.Points, points.Values.Sum());
            }
        }

        output.WriteLine($"{allowed} allowed, {forbidden} forbidden");
        Assert.True(allowed >= 10 && forbidden >= 10, $"{allowed} allowed, {forbidden} forbidden");
    }

    /// <summary>Moves of half a count, so that the next attack can land half a count after the one before.</summary>
    [Fact]
    public void Contacts_half_a_count_apart_are_forbidden_by_one_contact_alone()
    {
        var two = new QuickWorld(second: 1);
        var rule = Assert.Single(Audit.Of(two.Scene, ToRoutine(two.Scene, two.Placements, two.Rows)).Findings, f => f.Severity >= Severity.Broken).Rule;
        Assert.Equal("one-contact", rule);
        Assert.Equal(CpAnswer.Infeasible, Solve(two.Scene, two.Placements, two.Rows).Answer);
        Assert.Equal(CpAnswer.Optimal, Solve(two.Scene, two.Placements, two.Rows, "one-contact").Answer);

        // One attacker may throw two in quick succession.
        var one = new QuickWorld(second: 0);
        Assert.True(Audit.Of(one.Scene, ToRoutine(one.Scene, one.Placements, one.Rows)).IsClean);
        Assert.Equal(CpAnswer.Optimal, Solve(one.Scene, one.Placements, one.Rows).Answer);
    }

    /// <summary>Routines in which one attacker is held, or holds the hero, while another is fought: what that asks of a body that must not do it is forbidden by able alone.</summary>
    [Fact]
    public void What_a_hold_asks_while_it_lasts_is_forbidden_as_the_audit_says()
    {
        var arms = new Load { Strain = BodyParts.LeftArm | BodyParts.RightArm };
        var grip = new GripLoad(new AttackLine(LineKind.GrabWrist, LineSide.Left), new Load { Strain = BodyParts.RightArm }, new Load { Strain = BodyParts.LeftArm });
        var holds = new HoldTable(new Load { Strain = BodyParts.LeftArm }, new Dictionary<Posture, Load> { [Posture.HeldArm] = arms }, [grip]);
        var (allowed, forbidden, whom) = (0, 0, new HashSet<string>(StringComparer.Ordinal));
        for (var seed = 1; seed <= 100 && (forbidden < 12 || allowed < 8 || whom.Count < 4); seed++)
        {
            var (world, lenient) = (new TinyWorld(seed, holds: holds), new TinyWorld(seed, holds: HoldTable.Empty));
            var lasting = Exhaustive.Routines(lenient).Where(r => r.Moves.Count == 3 && r.Moves[0].Attacker == r.Moves[2].Attacker && r.Moves[1].Attacker == 1 - r.Moves[0].Attacker).ToList();
            var told = lasting.Select(r => Audit.Of(world.Scene, r with { Brief = world.Brief }).Findings.Where(f => f.Severity >= Severity.Broken).ToList()).ToList();
            foreach (var i in Enumerable.Range(0, lasting.Count).DistinctBy(i => string.Join(' ', told[i].Select(f => f.Who)) + lasting[i].Moves[0].Technique))
            {
                if (told[i].Count == 0 && allowed >= 8)
                {
                    continue;
                }

                var rows = lasting[i].Moves.Select(m => Row.Of(m, world.Scene)).ToList();
                Assert.All(told[i], f => Assert.Equal(("able", 2), (f.Rule, f.Move)));
                Assert.True(Solve(world, rows).Answer == (told[i].Count > 0 ? CpAnswer.Infeasible : CpAnswer.Optimal), $"seed {seed}: the audit has {told[i].Count} findings, the solver disagrees: {Exhaustive.Key(rows)}");
                Assert.True(Solve(world, rows, "able").Answer == CpAnswer.Optimal, $"seed {seed}: without able the solver still forbids {Exhaustive.Key(rows)}");
                (allowed, forbidden) = told[i].Count > 0 ? (allowed, forbidden + 1) : (allowed + 1, forbidden);
                whom.UnionWith(told[i].Select(f => f.Who + " " + lasting[i].Moves[0].Technique));
            }
        }

        output.WriteLine($"{allowed} allowed, {forbidden} forbidden; {string.Join(", ", whom.Order(StringComparer.Ordinal))}");
        Assert.True(allowed >= 8 && forbidden >= 12, $"{allowed} allowed, {forbidden} forbidden");
        Assert.True(whom.Count >= 4, string.Join(", ", whom));
    }

    /// <summary>A random walk that mostly follows what fits, so that few rules break at once.</summary>
    private static List<Row> Wander(TinyWorld world, int seed)
    {
        var dice = new Random(seed);
        var state = Replay.Open(world.Scene, world.Placements);
        var score = Score.Begin(world.Scene, state);
        var rows = new List<Row>();
        while (rows.Count < world.Rows)
        {
            var best = (Row: default(Row), Step: (Step?)null, Score: (Score?)null);
            var tries = dice.Next(4) == 0 ? 2 : 4 + dice.Next(40);
            for (var n = 0; n < tries; n++)
            {
                var row = Draw(world, dice, state);
                var step = Replay.Step(world.Scene, state, row);
                var next = score.Observe(world.Scene, step);
                if (best.Score is null || next.Forbidden < best.Score.Forbidden)
                {
                    best = (row, step, next);
                }
            }

            rows.Add(best.Row);
            (state, score) = (best.Step!.After, best.Score!);
        }

        return rows;
    }

    private static Row Draw(TinyWorld world, Random dice, FightState state)
    {
        var technique = dice.Next(world.Book.Techniques.Count);
        var record = world.Book.Techniques[technique];
        var start = state.Time + dice.Next(5) + (state.Moves == 0 ? 4 : 0) + (dice.Next(20) == 0 ? 13 : 0);
        if (record.HasNoTarget)
        {
            return new Row(start, -1, -1, Cue.None, -1, technique, -1, 0);
        }

        var answers = Enumerable.Range(0, world.Book.Attacks.Count).Where(k => record.Answers.Contains(world.Book.Attacks[k].Line)).ToList();
        var attack = answers.Count > 0 && (record.Family != Family.Escape || dice.Next(2) == 0) ? answers[dice.Next(answers.Count)] : -1;
        return new Row(start, dice.Next(world.Scene.Cast), -1, Cue.Voice, attack, technique, world.Book.ReactionIndex(record.Reactions[dice.Next(record.Reactions.Count)]), 0);
    }

    private static bool HasLeadIn(TinyWorld world, List<Row> rows) => Replay.LeadIn(world.Scene, world.Placements, rows[0]) > 0;

    private static string? OnlyRule(TinyWorld world, List<Row> rows)
    {
        var rules = Audit.Of(world.Scene, ToRoutine(world, rows)).Findings.Where(f => f.Severity >= Severity.Broken).Select(f => f.Rule).Distinct(StringComparer.Ordinal).ToList();
        return rules.Count == 1 && !HasLeadIn(world, rows) ? rules[0] : null;
    }

    private static Routine ToRoutine(TinyWorld world, List<Row> rows) => ToRoutine(world.Scene, world.Placements, rows);

    private static Routine ToRoutine(Scene scene, IReadOnlyList<Placement> placements, IReadOnlyList<Row> rows) =>
        new() { Brief = scene.Brief, Placements = placements, Moves = [.. rows.Select(r => r.ToMove(scene))] };

    private static (CpAnswer Answer, Dictionary<string, int> Points) Solve(TinyWorld world, List<Row> rows, string? without = null) =>
        Solve(world.Scene, world.Placements, rows, without);

    private static (CpAnswer Answer, Dictionary<string, int> Points) Solve(Scene scene, IReadOnlyList<Placement> placements, IReadOnlyList<Row> rows, string? without = null)
    {
        var model = new MoveModel(scene, Vocabulary.Of(scene, null, keepUnfit: true, seconds: true), new MoveModelOptions
        {
            Rules = without is null ? RuleModules.All : RuleModules.Without(without),
            Rows = rows.Count,
            FewestRows = rows.Count,
            Ends = true,
            MostWalkRound = 0,
            Horizon = 120,
            Total = true,
        });
        Pin.Placements(model, placements);
        Pin.Rows(model, rows);
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
}
