using Generator.Domain;

namespace Generator.Rules.Shapes;

/// <summary>Echo: something returns and ends otherwise, at most three times (the rule of three; common practice, no source).</summary>
internal static class EchoFigures
{
    private const string Rule = "echo";

    /// <summary>
    /// beaten-later: setbacks whose attack (either side, whoever throws it) comes again and does not hit.
    /// otherwise: heavy techniques (weight 3 and more, no setback or pause) that return, either side, with a reaction that they did not have before.
    /// most-returns: uses of the commonest technique, either side.
    /// </summary>
    public static IEnumerable<Figure> Of(FightShape shape)
    {
        var isLong = shape.Steps.Count >= Figures.LongFrom;
        var most = shape.Steps.FirstOrDefault(s => s.Technique?.BaseId == shape.Returns.MostId);
        yield return Figure.Of(Rule, "beaten-later", "setbacks whose attack is beaten when it returns", "setbacks", isLong && shape.Setbacks.Count > 0 ? shape.Setbacks.Count(s => s.Beaten is not null) : null, 1, null, () => Lift(shape));
        yield return Figure.Of(Rule, "otherwise", "heavy techniques that return and end otherwise", "moves", isLong ? shape.Returns.Otherwise.Count : null, 1, 4, () =>
            shape.Returns.Otherwise.Count == 0
                ? "No heavy technique returns with another ending: let one that was stopped or survived early come again and finish."
                : $"So much returns that nothing stands out ({Figures.Moves(shape, shape.Returns.Otherwise)}): keep one or two.");
        yield return Figure.Of(Rule, "most-returns", "uses of the commonest technique", "moves", isLong ? shape.Returns.Most : null, null, Math.Max(3, shape.Steps.Count / 12), () =>
            $"{Words.Cap(shape.Scene.Book.Techniques.First(t => t.BaseId == shape.Returns.MostId).Name)} comes {Amounts.Many(shape.Returns.Most, "time")}, first at {Figures.Move(shape, most!.Index + 1)}: three times is enough.");
    }

    private static string Lift(FightShape shape)
    {
        var first = shape.Setbacks[0];
        var attack = shape.Steps[first.Move - 1].Attack;
        return attack is null
            ? $"The setback of {Figures.Move(shape, first.Move)} has no attack that could return: give it one."
            : $"The {Words.Low(attack.Name)} that hits at {Figures.Move(shape, first.Move)} never comes back: let it come again later, and be beaten.";
    }
}
