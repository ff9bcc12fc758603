using Generator.Domain;

namespace Generator.Rules.Shapes;

/// <summary>Thinning: the crowd gets smaller, unevenly, and everybody has had a part in it. Common practice, no source.</summary>
internal static class ThinningFigures
{
    /// <summary>Most blows that one of them takes before an audience stops believing in them.</summary>
    private const int MostBlows = 8;

    /// <summary>The same of the last one, who may bear more.</summary>
    private const int MostOfLast = 12;

    private const string Rule = "thinning";

    /// <summary>
    /// first-out: which hundredth of the time the end of the move that puts the first one out lies in.
    /// even-outs: half counts by which the longest time from one out to the next exceeds the shortest.
    /// fewest-moves: moves of the attacker who has the fewest.
    /// blows: most blows that anybody takes above what they may: eight, or twelve for who goes out last; 0 where nobody does.
    /// </summary>
    public static IEnumerable<Figure> Of(FightShape shape)
    {
        var (cast, isLong) = (shape.Scene.Cast, shape.Steps.Count >= Figures.LongFrom);
        var spacing = Out.Spacing(shape.Outs);
        var fewest = shape.Wears.Skip(1).MinBy(w => w.Moves);
        var over = shape.Wears.Skip(1).MaxBy(w => Over(shape, w));
        yield return Figure.Of(Rule, "first-out", "when the first goes out", "% of the fight", isLong && cast > 1 && shape.Outs.Count > 0 ? shape.PercentAt(shape.Outs[0].Time) : null, null, 45, () =>
            $"{Figures.Name(shape, shape.Outs[0].Attacker)} goes out first, at {Figures.Move(shape, shape.Outs[0].Move)}: finish somebody before {Figures.At(45 * shape.End / 100)}.");
        yield return Figure.Of(Rule, "even-outs", "longest time between two outs less the shortest", "half counts", spacing.Count < 2 ? null : spacing.Max() - spacing.Min(), 4, null, () =>
            $"Attackers go out every {Words.Counts(spacing.Min())} or so, like a clock, at {Figures.Moves(shape, [.. shape.Outs.Select(o => o.Move)])}: take two soon after one another, and make the next wait.");
        yield return Figure.Of(Rule, "fewest-moves", "moves of who has the fewest", "moves", isLong && shape.Steps.Count >= 6 * cast ? fewest.Moves : null, 4, null, () =>
            $"{Figures.Name(shape, fewest.Performer)} has {Amounts.Many(fewest.Moves, "move")}: give them an exchange more.");
        yield return Figure.Of(Rule, "blows", "blows above what one performer may take", "blows", Over(shape, over), null, 0, () =>
            $"{Figures.Name(shape, over.Performer)} takes {Amounts.Many(over.Blows, "blow")}: let some be blocked, or give them to somebody else.");
    }

    private static int Over(FightShape shape, Wear wear) => Math.Max(0, wear.Blows - (shape.LastFight?.Attacker == wear.Performer ? MostOfLast : MostBlows));
}
