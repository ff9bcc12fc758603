namespace Generator.Rules.Shapes;

/// <summary>Purpose: whatever happens leads to something, and the audience sees it coming with the hero. Common practice, no source.</summary>
internal static class PurposeFigures
{
    private const string Rule = "purpose";

    /// <summary>
    /// idle-holds: holds let go again without a blow, a throw, a fall or a finish from them and without anybody else being fought meanwhile.
    /// punch-bags: exchanges that open, without a blow of the attacker, with a hit on somebody who stands ready.
    /// unseen: attacks from outside the hero's sight by which more than two in five of all so far come from there.
    /// </summary>
    public static IEnumerable<Figure> Of(FightShape shape)
    {
        var nothing = shape.ForNothing;
        yield return Figure.Of(Rule, "idle-holds", "holds for nothing", "holds", nothing.Holds.Count, null, 0, () =>
            $"A hold leads to nothing where it is let go at {Figures.Moves(shape, nothing.Holds)}: strike, throw or shield with it first, or do not take it.");
        yield return Figure.Of(Rule, "punch-bags", "exchanges that open on somebody who stands ready", "exchanges", shape.Exchanges.Count == 0 ? null : nothing.PunchBags.Count, null, 0, () =>
            $"The hero hits somebody who does nothing at {Figures.Moves(shape, nothing.PunchBags)}: let them attack first, or be caught off balance.");
        yield return Figure.Of(Rule, "unseen", "attacks from out of sight beyond two in five so far", "attacks", shape.Attacks == 0 ? null : nothing.Beyond.Count, null, 0, () => FormattableString.Invariant(
            $"{nothing.Unseen.Count} of {shape.Attacks} attacks come from behind, too many by {Figures.Moves(shape, nothing.Beyond)}: turn the hero before, or let the attacker walk round."));
    }
}
