namespace Generator.Rules.Shapes;

/// <summary>
/// Manner: one tells the attackers apart by what they do. Until a brief says how somebody fights, the figure asks only that they differ: for each kind of
/// attack the attacker who throws most of it is guessed, and the guesses that are right are counted (the idea of lambda, Goodman and Kruskal 1954, from memory).
/// </summary>
internal static class MannerFigures
{
    private const string Rule = "manner";

    /// <summary>
    /// told-apart: of a hundred attacks those thrown by whoever throws most of their kind: over all kinds, the sum of the greatest count of one attacker.
    /// The counts of attacker and kind go up move by move; the greatest of each kind is taken at the end.
    /// </summary>
    public static IEnumerable<Figure> Of(FightShape shape)
    {
        var enough = shape.Scene.Cast > 1 && shape.Attacks >= 2 * shape.Scene.Cast;
        yield return Figure.Of(Rule, "told-apart", "attacks whose thrower their kind tells", "%", enough ? 100 * shape.Manners.Told / shape.Attacks : null, 65, null, () => Lift(shape));
    }

    private static string Lift(FightShape shape)
    {
        var attacks = shape.Steps.Where(s => s.Attack is not null && s.HasTarget).ToList();
        var kind = attacks.GroupBy(s => AttackKinds.Of(s.Attack!)).MaxBy(g => g.Select(s => s.Row.Attacker).Distinct().Count() * 100 + g.Count())!;
        var most = kind.GroupBy(s => s.Row.Attacker).MaxBy(g => g.Count())!;
        var others = kind.Where(s => s.Row.Attacker != most.Key).Select(s => s.Index + 1).ToList();
        return $"Everybody comes with everything. {Cap(kind.Key)} might be {Figures.Name(shape, most.Key)}'s own: give the others something else at {Figures.Moves(shape, others)}.";
    }

    private static string Cap(AttackKind kind) => kind switch
    {
        AttackKind.Punch => "Straight punches",
        AttackKind.Swing => "Swung blows",
        AttackKind.Kick => "Kicks",
        AttackKind.Rush => "Rushing in",
        AttackKind.Grab => "Grabs",
        AttackKind.RearGrab => "Grabs from behind",
        _ => "Walking in",
    };
}
