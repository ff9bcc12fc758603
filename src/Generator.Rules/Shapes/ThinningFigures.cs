using Generator.Domain;
using Generator.Rules.Memories;

namespace Generator.Rules.Shapes;

/// <summary>Thinning: the crowd gets smaller, unevenly, and everybody has had a part in it. Common practice, no source.</summary>
internal static class ThinningFigures
{
    private const string Rule = "thinning";

    /// <summary>
    /// first-out: of a hundred of the length asked for, or of the fight where none is, when the move ends that puts the first of several out.
    /// even-outs: half counts by which the longest time from one out to the next exceeds the shortest.
    /// lacking-moves: moves that attackers lack of four, where the length asked for has six for each.
    /// blows: blows that attackers take beyond eight, or twelve for who is to go out last; a single one may take any number.
    /// worn-rest: of several attackers, attacks of who has taken four blows or more that land sooner than two counts and half a count for each blow after the last.
    /// worn-light: such attacks before which nothing since the last attack beat them.
    /// </summary>
    public static IEnumerable<Figure> Of(FightShape shape)
    {
        var (scene, isJudged) = (shape.Scene, Figures.IsJudged(shape, FightRule.Thinning));
        var spacing = Out.Spacing(shape.Outs);
        int[] moves = [.. Enumerable.Range(0, scene.Cast).Select(a => shape.Steps.Count(s => s.Concerns(a)))];
        var fewest = Array.IndexOf(moves, moves.DefaultIfEmpty().Min());
        var (soon, light) = (new List<int>(), new List<int>());
        Comebacks(shape, soon, light);
        var over = shape.Wears.Skip(1).MaxBy(w => Over(scene, w));
        yield return Figure.Of(Rule, "first-out", "when the first goes out", "% of the fight", isJudged && scene.Cast > 1 && shape.Outs.Count > 0 ? FirstOut(shape) : null, null, Thin.FirstOut, () =>
            $"{Figures.Name(shape, shape.Outs[0].Attacker)} goes out first, at {Figures.Move(shape, shape.Outs[0].Move)}: finish somebody before {Figures.At(Thin.FirstOut * shape.End / 100)}.");
        yield return Figure.Of(Rule, "even-outs", "longest time between two outs less the shortest", "half counts", spacing.Count < 2 ? null : spacing.Max() - spacing.Min(), 4, null, () =>
            $"Attackers go out every {Words.Counts(spacing.Min())} or so, like a clock, at {Figures.Moves(shape, [.. shape.Outs.Select(o => o.Move)])}: take two soon after one another, and make the next wait.");
        yield return Figure.Of(Rule, "lacking-moves", "moves that somebody lacks of four", "moves", isJudged && Thin.HasRoom(scene) ? moves.Sum(m => Math.Max(0, Thin.FewestMoves - m)) : null, null, 0, () =>
            $"{Figures.Name(shape, fewest)} has {Amounts.Many(moves[fewest], "move")}: give them an exchange more.");
        yield return Figure.Of(Rule, "blows", "blows beyond what one believes", "blows", shape.Wears.Skip(1).Sum(w => Over(scene, w)), null, 0, () =>
            $"{Figures.Name(shape, over.Performer)} takes {Amounts.Many(over.Blows, "blow")}: let some be blocked, or give them to somebody else.");
        yield return Figure.Of(Rule, "worn-rest", "attacks of somebody worn that come too soon after a blow", "attacks", scene.Cast == 1 ? null : soon.Count, null, 0, () =>
            $"Whoever attacks at {Figures.Moves(shape, soon)} has taken four blows or more: let them stay away for longer.");
        yield return Figure.Of(Rule, "worn-light", "attacks of somebody worn whom nothing beat since the last", "attacks", scene.Cast == 1 ? null : light.Count, null, 0, () =>
            $"Whoever attacks at {Figures.Moves(shape, light)} has taken four blows or more: sell the blow before it as one that beats them.");
    }

    /// <summary>The moves, from 1, in which somebody worn attacks too soon, or unbeaten.</summary>
    private static void Comebacks(FightShape shape, List<int> soon, List<int> light)
    {
        var parts = ThinningMemory.Fresh(shape.Scene.Cast).Parts;
        foreach (var step in shape.Steps.Where(s => s.HasTarget))
        {
            var part = parts[step.Row.Attacker];
            if (step.Attack is not null && step.Contact - part.HitAt < Worn.RestOf(shape.Scene, part))
            {
                soon.Add(step.Index + 1);
            }

            if (step.Attack is not null && Worn.IsUnbeaten(shape.Scene, part))
            {
                light.Add(step.Index + 1);
            }

            parts = [.. parts.Select((p, a) => Worn.After(p, step, a))];
        }
    }

    private static int Over(Scene scene, Wear wear) => Math.Max(0, wear.Blows - Thin.MostBlows(scene, wear.Performer));

    private static int FirstOut(FightShape shape) => shape.Scene.Brief.Length is null ? shape.PercentAt(shape.Outs[0].Time) : Thin.PercentAt(shape.Scene, shape.Outs[0].Time, shape.Outs[0].Move - 1);
}
