using Generator.Domain;
using Generator.Domain.Sketches;
using Generator.Rules;
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

    /// <summary>As wide as it gets round the mark, in half hours.</summary>
    private const int AllRound = 12;

    /// <summary>No "impossible" on the word of one configuration alone.</summary>
    private static readonly SearchSettings[] Configurations =
    [
        new() { Seed = 1, Linear = false, Time = TimeSpan.FromHours(1) },
        new() { Seed = 2, Linear = false, Bare = true, Time = TimeSpan.FromHours(1) },
    ];

    private readonly Sketch sketch;
    private readonly Scene scene;
    private readonly IReadOnlyList<SketchStep> steps;

    /// <param name="sketch">What is said.</param>
    /// <param name="steps">Its moves.</param>
    /// <param name="scene">The scene of the search, with the opening places that are said.</param>
    public LeastProof(Sketch sketch, IReadOnlyList<SketchStep> steps, Scene scene) => (this.sketch, this.steps, this.scene) = (sketch, steps, scene);

    /// <summary>
    /// The question can be put so that an answer holds for every routine. The model lets nobody set off before count 1; with no count fixed anywhere a fight in which somebody does is the same as one that
    /// begins so much later.
    /// </summary>
    public bool CanAsk => sketch.Brief is { Length: null or { Counts: null }, Moments.Count: 0 } && sketch.Moves.All(m => !m.IsGap && m.Count is null)
        && scene.Brief.Attackers.All(a => a.Distance is not null && a.Entrance is null or { Value: 0 });

    /// <summary>True when no routine of the brief costs less than so much; false when one may, or time ran out.</summary>
    public bool IsLeast(long price, CancellationToken stop) =>
        Rows(price) is var (fewest, most) && Array.TrueForAll(Configurations, c => !stop.IsCancellationRequested && Ask(price, fewest, most, c, stop) == CpAnswer.Infeasible);

    /// <summary>How many rows a cheaper routine can have; null where that is too many to look at.</summary>
    private (int Fewest, int Most)? Rows(long price)
    {
        var said = steps.Count;
        var opened = steps.Count(MayOpen);
        var asked = sketch.Brief.Length is { Moves: { } moves } length ? (Moves: moves, Tolerance: Generator.Rules.Rules.Length.MovesTolerance(length)) : (Moves: MostRows, Tolerance: MostRows);
        var more = (int)Math.Min((price - 1) / SketchPart.Added.Price(), MostRows) + opened;
        var most = Math.Min(said + more, asked.Moves + asked.Tolerance);
        var fewest = Math.Max(steps.Any(s => MayGo(s, price)) ? 1 : said, asked.Moves - asked.Tolerance);
        return most <= Math.Min(MostRows, said + MostMore) ? (fewest, most) : null;
    }

    private CpAnswer Ask(long price, int fewest, int most, SearchSettings settings, CancellationToken stop)
    {
        if (most < fewest)
        {
            return CpAnswer.Infeasible;
        }

        var bounds = new StagingBounds(scene);
        var model = new MoveModel(scene, Words(price, most), new MoveModelOptions
        {
            Rules = RuleModules.All,
            Rows = most,
            FewestRows = fewest,
            Ends = true,
            MostWalkRound = AllRound,
            Horizon = ((most + 1) * bounds.LongestMove) + ModelBounds.LongestWalk(scene),
        });
        Post(model, price);
        using var session = model.Session();
        return session.Solve(settings, null, stop);
    }

    /// <summary>Only techniques that are said, where nothing else may be done at this price.</summary>
    private Vocabulary Words(long price, int most)
    {
        var closed = most == steps.Count && steps.All(s => s.Move.Technique is not null && !MayGive(s.Move.Technique, SketchPart.Side, price));
        var said = closed ? steps.SelectMany(s => s.Move.Technique!.Ids).ToHashSet(StringComparer.Ordinal) : null;
        return Vocabulary.Of(scene, said is null ? null : t => said.Contains(t.Id), seconds: true);
    }

    /// <summary>What of each move of the sketch gives in the row that fills it, what is left out and put in costs less than so much.</summary>
    private void Post(MoveModel model, long price)
    {
        var (cp, costs) = (model.Cp, new List<LinearExpr>());
        var fills = Fills(model, price, costs);
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
    }

    /// <summary>Which row fills which move, in their order; what is left out and put in has its price.</summary>
    private BoolVar[][] Fills(MoveModel model, long price, List<LinearExpr> costs)
    {
        var (cp, rows) = (model.Cp, model.Slots.Count);
        if (rows == steps.Count && model.Options.FewestRows == rows)
        {
            return [.. steps.Select((_, i) => Enumerable.Range(0, rows).Select(p => p == i ? cp.True : cp.False).ToArray())];
        }

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
            yield return (Kind(attack, SketchPart.Attack), (model, slot) => model.AttackIs(slot, a => thrown.Contains(a.Id), $"attack[{index}]"));
        }

        if (move.Technique is { } technique)
        {
            var done = technique.Ids.ToHashSet(StringComparer.Ordinal);
            var either = done.Concat(technique.Ids.Select(id => steps[index].OtherSideOf(id)).OfType<string>()).ToHashSet(StringComparer.Ordinal);
            yield return (Kind(technique, SketchPart.Technique), (model, slot) => model.UseIs(slot, u => u.Technique is { } t && either.Contains(t.Id), $"technique[{index}]"));
            yield return (Kind(technique, SketchPart.Side), (model, slot) => model.UseIs(slot, u => u.Technique is { } t && (done.Contains(t.Id) || !either.Contains(t.Id)), $"side[{index}]"));
        }
        else if (move.IsSuffered)
        {
            yield return (SketchPart.Technique, (model, slot) => model.UseIs(slot, u => u.Technique is { Family: Family.Setback }, $"suffered[{index}]"));
        }

        if (move.Reaction is { } reaction)
        {
            var sold = reaction.Ids.ToHashSet(StringComparer.Ordinal);
            yield return (Kind(reaction, SketchPart.Reaction), (model, slot) => model.ReactionIs(slot, r => sold.Contains(r.Id), $"reaction[{index}]"));
        }
    }

    private static SketchPart? Kind(SketchCell cell, SketchPart part) => cell.Firmness switch
    {
        Firmness.Fixed => null,
        Firmness.Wish => SketchPart.Wish,
        _ => part,
    };

    private static bool MayGive(SketchCell cell, SketchPart part, long price) => Kind(cell, part) is { } kind && kind.Price() < price;

    private static bool MayGo(SketchStep step, long price) => step.MayGo && step.WhenLeftOut.Price() < price;

    /// <summary>The attack may take hold in a row of its own, at no price.</summary>
    private bool MayOpen(SketchStep step) => step.TakesHoldFirst && Enumerable.Range(0, scene.Cast).Any(a => step.Holds(a).Any());
}
