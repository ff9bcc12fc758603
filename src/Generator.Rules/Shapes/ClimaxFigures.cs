using Generator.Domain;

namespace Generator.Rules.Shapes;

/// <summary>Climax: the end is the peak. What people keep of an experience is its peak and its end (Kahneman, Fredrickson, Schreiber and Redelmeier 1993, from memory).</summary>
internal static class ClimaxFigures
{
    private const string Rule = "climax";

    /// <summary>
    /// last-short: by how much the weight of the move that puts the last one out falls short of the heaviest move before or at it.
    /// last-fight: moves with a target up to the last out that are on nobody but who goes out last.
    /// run-offs: attackers who leave the floor by the agreed exit.
    /// </summary>
    public static IEnumerable<Figure> Of(FightShape shape)
    {
        var last = shape.LastFight;
        yield return Figure.Of(Rule, "last-short", "weight by which the last finish falls short of the heaviest move", "weight", last?.Heaviest - last?.Weight, null, 0, () => Short(shape, last!.Value));
        yield return Figure.Of(Rule, "last-fight", "moves of the last fight", "moves", Figures.IsJudged(shape, FightRule.Climax) ? last?.Moves : null, LastFight.FewestMoves, null, () =>
            $"{Figures.Name(shape, last!.Value.Attacker)} is last, and gets {Amounts.Many(last.Value.Moves, "move")} at the end: stay with them for three before {Figures.Move(shape, shape.Outs[^1].Move)}.");
        yield return Figure.Of(Rule, "run-offs", "attackers who run off", "attackers", shape.Outs.Count == 0 ? null : shape.Outs.Count(o => o.RunsOff), null, Out.MostRunOffs, () =>
            $"{Words.Join([.. shape.Outs.Where(o => o.RunsOff).Select(o => $"{Figures.Name(shape, o.Attacker)} at {Figures.Move(shape, o.Move)}")], "and")} run off: let one go, and finish the others.");
    }

    private static string Short(FightShape shape, LastFight last) => FormattableString.Invariant(
        $"The last finish, {Figures.Move(shape, shape.Outs[^1].Move)}, weighs {last.Weight}; the heaviest is {Words.Low(shape.Steps[last.HeaviestMove - 1].Technique!.Name)} at {Figures.Move(shape, last.HeaviestMove)} with {last.Heaviest}: end on one as heavy, or make that one lighter.");
}
