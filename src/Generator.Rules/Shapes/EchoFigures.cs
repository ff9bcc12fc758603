using Generator.Domain;

namespace Generator.Rules.Shapes;

/// <summary>Echo: something returns and ends otherwise, at most three times (the rule of three; common practice, no source).</summary>
internal static class EchoFigures
{
    private const string Rule = "echo";

    /// <summary>
    /// beaten-later: setbacks whose attack (either side, whoever throws it) comes again and does not hit.
    /// signature: how often the signature of the brief comes. signature-alike: 1 where it comes twice or more and always ends the same.
    /// otherwise: heavy techniques (weight 3 and more, no setback or pause) that return, either side, with a reaction that they did not have before.
    /// most-returns: uses of the commonest technique, either side.
    /// </summary>
    public static IEnumerable<Figure> Of(FightShape shape)
    {
        var isLong = shape.Steps.Count >= Figures.LongFrom;
        var most = shape.Steps.FirstOrDefault(s => s.Technique?.BaseId == shape.Returns.MostId);
        yield return Figure.Of(Rule, "beaten-later", "setbacks whose attack is beaten when it returns", "setbacks", Figures.IsJudged(shape, FightRule.Echo) && shape.Setbacks.Any(s => shape.Steps[s.Move - 1].Attack is not null) ? shape.Setbacks.Count(s => s.Beaten is not null) : null, 1, null, () => Lift(shape));
        var signed = shape.Steps.Where(s => Rules.Echo.IsSignature(shape.Scene, s)).ToList();
        yield return Figure.Of(Rule, "signature", "times that the signature comes", "times", shape.Scene.Brief.Signature is null ? null : signed.Count, Rules.Echo.Fewest, Rules.Echo.Most, () =>
            signed.Count < Rules.Echo.Fewest ? "The signature hardly comes: let it come early, and again towards the end." : $"The signature comes too often, at {Figures.Moves(shape, [.. signed.Select(s => s.Index + 1)])}.");
        yield return Figure.Of(Rule, "signature-alike", "signatures that always end the same", "signatures", signed.Count < Rules.Echo.Fewest ? null : signed.Select(s => Rules.Echo.OutcomeOf(shape.Scene, s)).Distinct().Count() == 1 ? 1 : 0, null, 0, () =>
            $"The signature ends the same at {Figures.Moves(shape, [.. signed.Select(s => s.Index + 1)])}: let it be stopped or survived at first.");
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
