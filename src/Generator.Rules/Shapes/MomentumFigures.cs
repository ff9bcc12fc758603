namespace Generator.Rules.Shapes;

/// <summary>Momentum: a chain goes on with the limb and the way of turning that the last blow frees. Common practice, no source.</summary>
internal static class MomentumFigures
{
    private const string Rule = "momentum";

    /// <summary>
    /// same-limb: of a hundred neighbours in one exchange that are both hits of the hero, those whose second uses the limb that has just hit.
    /// wound-up: of a hundred neighbours in one exchange (any moves with a target) those for whose first the hero turns 30° and more, in the gap and in the technique together, and for whose second as much back.
    /// </summary>
    public static IEnumerable<Figure> Of(FightShape shape)
    {
        var chain = shape.Chain;
        yield return Figure.Of(Rule, "same-limb", "blows in a chain with the limb that has just hit", "%", Figure.PercentUp(chain.SameLimb.Count, chain.Links), null, 25, () =>
            $"The same limb hits twice in a row at {Figures.Moves(shape, chain.SameLimb)}: go on with the other hand, or a foot.");
        yield return Figure.Of(Rule, "wound-up", "moves in an exchange wound up against the turn of the last", "%", Figure.PercentUp(chain.Against.Count, chain.Neighbours), null, 10, () =>
            $"The hero turns one way and back again at {Figures.Moves(shape, chain.Against)}: go on the way that the body turns already.");
    }
}
