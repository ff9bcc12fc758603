using Generator.Domain;

namespace Generator.Rules.Shapes;

/// <summary>
/// Story: the hero is in trouble late enough to be doubted, it costs something, and something is done otherwise after it. Reversal is common practice; that
/// suspense needs doubt: Zillmann (1980, The Entertainment Functions of Television, from memory).
/// </summary>
internal static class StoryFigures
{
    private const string Rule = "story";

    /// <summary>
    /// late-setbacks: setbacks whose contact lies at 50 to 85 of a hundred of the time from count 1 to the end (50 × end ≤ 100 × moment ≤ 85 × end).
    /// (Only where the brief has no acts.) out-of-act: where it has, setbacks by which an act has more or fewer than it wants, all acts together.
    /// setback-cost: the least half counts from the contact of a setback to the start of the next move with which the hero scores (hit, throw, lock, finish), or to the end.
    /// worn-cost: the same of the third setback and later, by which the hero is worn.
    /// unchanged: setbacks after which the hero next scores with the same family of technique as last before.
    /// </summary>
    public static IEnumerable<Figure> Of(FightShape shape)
    {
        var isLong = shape.Steps.Count >= Figures.LongFrom;
        var plan = shape.Scene.Plan;
        var some = shape.Setbacks.Count > 0;
        yield return Figure.Of(Rule, "late-setbacks", "setbacks at 50 to 85 % of the fight", "setbacks", isLong && plan is null ? shape.Setbacks.Count(s => IsLate(shape, s)) : null, 1, null, () => Late(shape));
        yield return Figure.Of(Rule, "out-of-act", "setbacks too many or too few in an act", "setbacks", plan is null ? null : OutOfAct(shape, plan).Sum(Math.Abs), null, 0, () => Misplaced(shape, plan!));
        yield return Figure.Of(Rule, "setback-cost", "least that a setback costs before the hero scores again", "half counts", some ? shape.Setbacks.Min(s => s.Cost) : null, Setback.Felt, null, () => Cost(shape));
        yield return Figure.Of(Rule, "worn-cost", "least that the third setback or a later one costs", "half counts", shape.Setbacks.Count < Worn.HeroFrom ? null : Worst(shape).Cost, Worn.Felt, null, () =>
            $"The hero scores again {Words.Counts(Worst(shape).Cost)} after the setback of {Figures.Move(shape, Worst(shape).Move)}, and has been hit often by then: let it take {Words.Counts(Worn.Felt)}.");
        yield return Figure.Of(Rule, "unchanged", "setbacks after which the hero goes on as before", "setbacks", some ? shape.Setbacks.Count(s => !s.Otherwise) : null, null, 0, () =>
            $"After {Figures.Moves(shape, [.. shape.Setbacks.Where(s => !s.Otherwise).Select(s => s.Move)])} the hero scores with the same family of technique as before: answer with another (a throw where it was a strike).");
    }

    /// <summary>For each act the setbacks that it has too many or, below 0, too few.</summary>
    private static IEnumerable<int> OutOfAct(FightShape shape, ActPlan plan) => plan.Acts.Select((act, a) =>
        shape.Setbacks.Count(s => plan.ActOf(shape.Steps[s.Move - 1].Start, s.Move - 1) == a) is var there && there > act.MostSetbacks ? there - act.MostSetbacks : Math.Min(0, there - act.FewestSetbacks));

    private static string Misplaced(FightShape shape, ActPlan plan)
    {
        var off = OutOfAct(shape, plan).Select((o, a) => (o, a)).First(p => p.o != 0);
        return FormattableString.Invariant($"Act {off.a + 1} has {Amounts.Many(Math.Abs(off.o), "setback")} too {(off.o > 0 ? "many: let the hero have the better of it there" : "few: let an attack get through there")}.");
    }

    private static bool IsLate(FightShape shape, Setback setback) => 50 * shape.End <= 100 * setback.Time && 100 * setback.Time <= 85 * shape.End;

    private static string Late(FightShape shape)
    {
        var room = $"between {Figures.At(shape.End / 2)} and {Figures.At(85 * shape.End / 100)}";
        return shape.Setbacks.Count == 0
            ? $"The hero is never in trouble: a setback {room} would let the audience doubt."
            : $"Setbacks come at {Figures.Moves(shape, [.. shape.Setbacks.Select(s => s.Move)])}: move one, or add one, {room}.";
    }

    /// <summary>The cheapest of the setbacks of a hero who is worn.</summary>
    private static Setback Worst(FightShape shape) => shape.Setbacks.Skip(Worn.HeroFrom - 1).MinBy(s => s.Cost);

    private static string Cost(FightShape shape)
    {
        var cheapest = shape.Setbacks.MinBy(s => s.Cost);
        return $"The hero scores again {Words.Counts(cheapest.Cost)} after the setback of {Figures.Move(shape, cheapest.Move)}: give the attackers two counts of it, with a second attack, a hold or a fall.";
    }
}
