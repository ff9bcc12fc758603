namespace Generator.Rules.Shapes;

/// <summary>Purpose: whatever happens leads to something, and the audience sees it coming with the hero. Common practice, no source.</summary>
internal static class PurposeFigures
{
    private const string Rule = "purpose";

    /// <summary>
    /// idle-holds: holds let go again without a blow, a throw, a fall or a finish from them and without anybody else being fought meanwhile.
    /// punch-bags: of a hundred exchanges those that open, without a blow of the attacker, with a hit on somebody who stands ready.
    /// unseen: of a hundred attacks those from outside the hero's sight.
    /// </summary>
    public static IEnumerable<Figure> Of(FightShape shape)
    {
        var nothing = shape.ForNothing;
        yield return Figure.Of(Rule, "idle-holds", "holds for nothing", "holds", nothing.Holds.Count, null, 0, () =>
            $"A hold leads to nothing where it is let go at {Figures.Moves(shape, nothing.Holds)}: strike, throw or shield with it first, or do not take it.");
        yield return Figure.Of(Rule, "punch-bags", "exchanges that open on somebody who stands ready", "%", Figure.PercentUp(nothing.PunchBags.Count, shape.Exchanges.Count), null, 5, () =>
            $"The hero hits somebody who does nothing at {Figures.Moves(shape, nothing.PunchBags)}: let them attack first, or be caught off balance.");
        yield return Figure.Of(Rule, "unseen", "attacks from out of sight", "%", Figure.PercentUp(nothing.Unseen.Count, shape.Attacks), null, 40, () => FormattableString.Invariant(
            $"{nothing.Unseen.Count} of {shape.Attacks} attacks come from behind ({Figures.Moves(shape, nothing.Unseen)}): turn the hero before, or let the attacker walk round."));
    }
}
