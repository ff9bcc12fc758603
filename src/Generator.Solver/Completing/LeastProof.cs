using Generator.Domain;
using Generator.Domain.Sketches;
using Generator.Rules;
using Generator.Rules.Judging;
using Generator.Solver.Engine;
using Generator.Solver.Filling;
using Generator.Solver.Staging;
using Google.OrTools.Sat;
using RuleModules = Generator.Solver.Rules.RuleModules;

namespace Generator.Solver.Completing;

/// <summary>
/// Proves that no routine gives up less of a sketch than one that was found: all rows as one CP-SAT model, in which what is said and must not give at that price is fixed, so that its tables hold
/// little else. What it cannot look at in whole it says nothing of: more rows than a few, gaps, counts, opening distances that nobody said.
/// </summary>
internal sealed class LeastProof
{
    /// <summary>Most rows that are looked at, and most of them that nobody wrote.</summary>
    private const int MostRows = 24, MostMore = 4;

    /// <summary>Most ways in which rows fill the moves that are asked one by one.</summary>
    private const int MostShapes = 40;

    /// <summary>As wide as it gets round the mark, in half hours.</summary>
    private const int AllRound = 12;

    /// <summary>No "impossible" on the word of one configuration alone.</summary>
    private static readonly SearchSettings[] Configurations =
    [
        new() { Seed = 1, Linear = false, Time = TimeSpan.FromHours(1) },
        new() { Seed = 2, Linear = false, Bare = true, Time = TimeSpan.FromHours(1) },
    ];

    /// <summary>Rules that only charge points forbid nothing.</summary>
    private static readonly IReadOnlyList<RuleModule> Firm = [.. RuleModules.All.Where(m => RuleBook.All[RuleBook.IndexOf(m.Id)].Worst >= Severity.Broken)];

    private readonly Sketch sketch;
    private readonly Scene scene;
    private readonly IReadOnlyList<SketchStep> steps;
    private readonly IReadOnlyList<HalfCounts?> entrances;

    /// <param name="sketch">What is said.</param>
    /// <param name="steps">Its moves.</param>
    /// <param name="scene">The scene of the search, with the opening places that are said.</param>
    public LeastProof(Sketch sketch, IReadOnlyList<SketchStep> steps, Scene scene)
    {
        (this.sketch, this.steps) = (sketch, steps);
        entrances = [.. scene.Brief.Attackers.Select(a => a.Entrance)];
        this.scene = new Scene(Timeless(scene.Brief with { Length = sketch.Brief.Length }), scene.Book);
    }

    /// <summary>The question can be put so that an answer holds for every routine.</summary>
    public bool CanAsk => sketch.Moves.All(m => !m.IsGap) && scene.Brief.Attackers.All(a => a.Distance is not null);

    /// <summary>True when no routine of the brief costs less than so much; false when one may, or time ran out.</summary>
    public bool IsLeast(long price, CancellationToken stop) =>
        Rows(price) is var (fewest, most) && Shapes(price, fewest, most) is var shapes
            && Array.TrueForAll(Configurations, c => Array.TrueForAll(shapes, s => !stop.IsCancellationRequested && Ask(price, fewest, most, s, c, stop) == CpAnswer.Infeasible));

    /// <summary>
    /// The model lets nobody set off before count 1. A fight in which somebody does is the same as one that begins so much later, with all that is fixed: entrances and counts that are said, see <see cref="Post"/>. What else the brief fixes is left out, which only allows more.
    /// </summary>
    private static Brief Timeless(Brief brief) => brief with
    {
        Length = brief.Length is { Counts: not null } length ? length.Moves is { } moves ? new Length(null, moves, Generator.Rules.Rules.Length.MovesTolerance(length)) : null : brief.Length,
        Attackers = [.. brief.Attackers.Select(a => a.Entrance is { Value: > 0 } ? a with { Entrance = null } : a)],
        Moments = [.. brief.Moments.Select(m => m with { Earliest = null, Latest = null })],
    };

    /// <summary>How many rows a cheaper routine can have; null where that is too many to look at.</summary>
    private (int Fewest, int Most)? Rows(long price)
    {
        var said = steps.Count;
        var opened = steps.Count(MayOpen);
        var asked = sketch.Brief.Length is { Moves: { } moves } length ? (Moves: moves, Tolerance: Generator.Rules.Rules.Length.MovesTolerance(length)) : (Moves: MostRows, Tolerance: MostRows);
        var most = Math.Min(said + MostAdded(price) + opened, asked.Moves + asked.Tolerance);
        var fewest = Math.Max(steps.Any(s => MayGo(s, price)) ? 1 : said, asked.Moves - asked.Tolerance);
        return most <= Math.Min(MostRows, said + MostMore) ? (fewest, most) : null;
    }

    private static int MostAdded(long price) => (int)Math.Min((price - 1) / SketchPart.Added.Price(), MostRows);

    /// <summary>Where nothing may be left out and the ways in which rows fill the moves are few, each of them is a question of its own, in which most is known of each row; else all are one.</summary>
    private LeastShape?[] Shapes(long price, int fewest, int most)
    {
        int[] holds = [.. Enumerable.Range(0, steps.Count).Where(i => MayOpen(steps[i]))];
        var few = steps.Any(s => MayGo(s, price)) ? null : LeastShape.All(steps.Count, holds, fewest, most, MostAdded(price), MostShapes);
        return few is null ? new LeastShape?[1] : [.. few];
    }

    private CpAnswer Ask(long price, int fewest, int most, LeastShape? shape, SearchSettings settings, CancellationToken stop)
    {
        if (most < fewest)
        {
            return CpAnswer.Infeasible;
        }

        var bounds = new StagingBounds(scene);
        var words = shape is null ? null : new LeastWords(scene, steps, shape, price);
        var vocabulary = Vocabulary.Of(scene, words is null ? null : words.MayDo, seconds: true);
        var rows = shape?.Rows.Count ?? most;
        var model = new MoveModel(scene, vocabulary, new MoveModelOptions
        {
            Rules = Firm,
            Rows = rows,
            FewestRows = shape is null ? fewest : rows,
            Ends = true,
            Targets = words?.Targets,
            Words = words?.Of(vocabulary),
            MostWalkRound = AllRound,
            Horizon = ((rows + 1) * bounds.LongestMove) + ModelBounds.LongestWalk(scene),
        });
        Post(model, price, shape);
        using var session = model.Session();
        return session.Solve(settings, null, stop);
    }

    /// <summary>What of each move of the sketch gives in the row that fills it, what is left out and put in costs less than so much.</summary>
    private void Post(MoveModel model, long price, LeastShape? shape)
    {
        var (cp, costs) = (model.Cp, new List<LinearExpr>());
        var fills = shape is null ? Fills(model, price, costs) : Fills(model, shape, costs);
        for (var i = 0; i < steps.Count; i++)
        {
            foreach (var (part, holds) in Parts(i))
            {
                var gives = part is { } kind && kind.Price() < price ? cp.Bool($"gives[{i},{kind}]") : cp.False;
                for (var p = 0; p < model.Slots.Count; p++)
                {
                    if (!cp.IsFalse(fills[i][p]))
                    {
                        cp.Model.AddBoolOr([fills[i][p].Not(), gives, holds(model, model.Slots[p])]);
                    }
                }

                if (!cp.IsFalse(gives))
                {
                    costs.Add(LinearExpr.Term(gives, part!.Value.Price()));
                }
            }
        }

        if (costs.Count > 0)
        {
            cp.Model.Add(LinearExpr.Sum(costs) <= price - 1);
        }

        var before = cp.Int(0, scene.Settle.LeadInMost.Value, "before");
        for (var a = 0; a < entrances.Count; a++)
        {
            if (entrances[a] is { Value: > 0 } entrance)
            {
                cp.Model.Add(model.Entrances[a] == before + entrance.Value);
            }
        }

        if (price <= SketchPart.Count.Price())
        {
            Counts(model, fills, before);
        }
    }

    /// <summary>
    /// No count gives: each is kept, but for the time that somebody sets off before count 1, or is later or sooner by as much as all from some move on. (Where counts may give nothing is asked of them.)
    /// </summary>
    private void Counts(MoveModel model, BoolVar[][] fills, IntVar before)
    {
        var cp = model.Cp;
        var shift = cp.Int(-model.Options.Horizon, model.Options.Horizon, "shift");
        for (var i = 0; i < steps.Count; i++)
        {
            if (steps[i].Move.Count is not { } count)
            {
                continue;
            }

            var shifted = cp.Bool($"shifted[{i}]");
            for (var p = 0; p < model.Slots.Count; p++)
            {
                if (!cp.IsFalse(fills[i][p]))
                {
                    var start = model.Slots[p].Start - before;
                    cp.Model.AddLinearConstraint(start, count.First.Value, count.Last.Value).OnlyEnforceIf([fills[i][p], shifted.Not()]);
                    cp.Model.AddLinearConstraint(start - shift, count.First.Value, count.Last.Value).OnlyEnforceIf([fills[i][p], shifted]);
                }
            }
        }
    }

    /// <summary>Which row fills which move is known; what is put in has its price.</summary>
    private BoolVar[][] Fills(MoveModel model, LeastShape shape, List<LinearExpr> costs)
    {
        costs.Add(LinearExpr.Constant(shape.Rows.Count(r => r < 0) * SketchPart.Added.Price()));
        return [.. steps.Select((_, i) => shape.Rows.Select((r, p) => r == i && !shape.IsHold(p) ? model.Cp.True : model.Cp.False).ToArray())];
    }

    /// <summary>Which row fills which move, in their order; what is left out and put in has its price.</summary>
    private BoolVar[][] Fills(MoveModel model, long price, List<LinearExpr> costs)
    {
        var (cp, rows) = (model.Cp, model.Slots.Count);
        BoolVar[][] fills = [.. steps.Select((_, i) => cp.Bools(rows, $"fills[{i}]"))];
        for (var i = 0; i < steps.Count; i++)
        {
            var isLeftOut = MayGo(steps[i], price) ? cp.Bool($"leftout[{i}]") : cp.False;
            cp.Model.AddExactlyOne([.. fills[i], isLeftOut]);
            if (!cp.IsFalse(isLeftOut))
            {
                costs.Add(LinearExpr.Term(isLeftOut, steps[i].WhenLeftOut.Price()));
            }
        }

        for (var p = 0; p < rows; p++)
        {
            cp.Model.AddAtMostOne([.. fills.Select(f => f[p])]);
            for (var i = 0; i < steps.Count; i++)
            {
                cp.Model.AddImplication(fills[i][p], model.Slots[p].Used);
                for (var j = i + 1; j < steps.Count; j++)
                {
                    for (var q = 0; q < p; q++)
                    {
                        cp.Model.AddBoolOr([fills[i][p].Not(), fills[j][q].Not()]);
                    }
                }
            }
        }

        var putIn = cp.Int(0, rows, "putin");
        cp.Model.Add(putIn >= Cp.Sum(model.Slots.Select(s => s.Used)) - Cp.Sum(fills.SelectMany(f => f)) - steps.Count(MayOpen));
        costs.Add(LinearExpr.Term(putIn, SketchPart.Added.Price()));
        return fills;
    }

    /// <summary>What a move says, each with its kind (null where it must not give) and when a row keeps it. Of lead and rear, of places and of attacks that may take hold first nothing is asked: that only allows more.</summary>
    private IEnumerable<(SketchPart? Part, Func<MoveModel, SlotVars, ILiteral> Holds)> Parts(int index)
    {
        var (move, book) = (steps[index].Move, scene.Book);
        if (move.Attacker is { } who)
        {
            yield return (SketchPart.Attacker, (_, slot) => slot.Targets[who]);
        }

        if (move.FollowsUp)
        {
            yield return (SketchPart.Attack, (_, slot) => slot.NoAttack);
        }
        else if (move.Attack is { } attack && !MayOpen(steps[index]))
        {
            var thrown = attack.Ids.ToHashSet(StringComparer.Ordinal);
            yield return (SketchPrices.Kind(attack, SketchPart.Attack), (model, slot) => model.AttackIs(slot, a => thrown.Contains(a.Id), $"attack[{index}]"));
        }

        if (move.Technique is { } technique)
        {
            var done = technique.Ids.ToHashSet(StringComparer.Ordinal);
            var either = done.Concat(technique.Ids.Select(id => steps[index].OtherSideOf(id)).OfType<string>()).ToHashSet(StringComparer.Ordinal);
            yield return (SketchPrices.Kind(technique, SketchPart.Technique), (model, slot) => model.UseIs(slot, u => u.Technique is { } t && either.Contains(t.Id), $"technique[{index}]"));
            yield return (SketchPrices.Kind(technique, SketchPart.Side), (model, slot) => model.UseIs(slot, u => u.Technique is { } t && (done.Contains(t.Id) || !either.Contains(t.Id)), $"side[{index}]"));
        }
        else if (move.IsSuffered)
        {
            yield return (SketchPart.Technique, (model, slot) => model.UseIs(slot, u => u.Technique is { Family: Family.Setback }, $"suffered[{index}]"));
        }

        if (move.Reaction is { } reaction)
        {
            var sold = reaction.Ids.ToHashSet(StringComparer.Ordinal);
            yield return (SketchPrices.Kind(reaction, SketchPart.Reaction), (model, slot) => model.ReactionIs(slot, r => sold.Contains(r.Id), $"reaction[{index}]"));
        }
    }

    private static bool MayGo(SketchStep step, long price) => step.MayGo && step.WhenLeftOut.Price() < price;

    /// <summary>The attack may take hold in a row of its own, at no price.</summary>
    private bool MayOpen(SketchStep step) => step.TakesHoldFirst && Enumerable.Range(0, scene.Cast).Any(a => step.Holds(a).Any());
}
