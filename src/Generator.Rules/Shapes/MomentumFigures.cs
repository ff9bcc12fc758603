namespace Generator.Rules.Shapes;

/// <summary>Momentum: a chain goes on with the limb and the way of turning that the last blow frees. Common practice, no source.</summary>
internal static class MomentumFigures
{
    private const string Rule = "momentum";

    /// <summary>
    /// same-limb: blows with the limb that has just hit, of neighbours in one exchange that are both hits of the hero, by which more than one in four of all so far are so.
    /// wound-up: moves for which the hero turns 30° and more, in the gap and in the technique together, after as much the other way in the move before, by which more than one in ten of all neighbours in
    /// one exchange so far are so.
    /// </summary>
    public static IEnumerable<Figure> Of(FightShape shape)
    {
        var chain = shape.Chain;
        yield return Figure.Of(Rule, "same-limb", "blows with the limb that has just hit beyond one in four", "blows", chain.Links == 0 ? null : chain.TooAlike.Count, null, 0, () => FormattableString.Invariant(
            $"{chain.SameLimb.Count} of {chain.Links} blows in a chain come from the limb that has just hit, too many by {Figures.Moves(shape, chain.TooAlike)}: go on with the other hand, or a foot."));
        yield return Figure.Of(Rule, "wound-up", "moves wound up against the turn of the last beyond one in ten", "moves", chain.Neighbours == 0 ? null : chain.TooMuch.Count, null, 0, () =>
            $"The hero turns one way and back again at {Figures.Moves(shape, chain.TooMuch)}: go on the way that the body turns already.");
    }
}
