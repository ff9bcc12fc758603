using Generator.Domain;
using Generator.Library.Words;
using Generator.Rules.Replaying;

namespace Generator.Rules.Shapes;

/// <summary>
/// Manner: one tells the attackers apart by what they do. Until a brief says how somebody fights, the figure asks only that they differ: for each kind of
/// attack the attacker who throws most of it is guessed, and the guesses that are right are counted (the idea of lambda, Goodman and Kruskal 1954, from memory).
/// </summary>
internal static class MannerFigures
{
    private const string Rule = "manner";

    /// <summary>
    /// out-of-manner: attacks out of the attacker's manner, and strikes, kicks, throws and locks out of the hero's.
    /// avoided: techniques and attacks that the brief avoids.
    /// missing: what it favours and never comes.
    /// combinations: attackers whose manner has combinations and who throw none.
    /// told-apart: of a hundred attacks those thrown by whoever throws most of their kind: over all kinds, the sum of the greatest count of one attacker.
    /// The counts of attacker and kind go up move by move; the greatest of each kind is taken at the end.
    /// </summary>
    public static IEnumerable<Figure> Of(FightShape shape)
    {
        var (scene, likings) = (shape.Scene, shape.Scene.Likings);
        IReadOnlyList<int> Where(Func<Step, bool> which) => [.. shape.Steps.Where(which).Select(s => s.Index + 1)];
        var off = Where(s => likings.IsOffAttack(s.Row.Attack, s.Row.Attacker)).Concat(Where(s => likings.IsOffTechnique(s.Row.Technique))).ToList();
        yield return Figure.Of(Rule, "out-of-manner", "attacks and techniques out of manner", "moves", likings.HaveManner ? off.Count : null, null, 0, () =>
            $"Somebody does what is not theirs at {Figures.Moves(shape, [.. off.Order()])}: give it to somebody else, or let them come with what is theirs.");
        var avoided = Where(s => likings.IsAvoidedTechnique(s.Row.Technique)).Concat(Where(s => likings.IsAvoidedAttack(s.Row.Attack))).ToList();
        yield return Figure.Of(Rule, "avoided", "what the brief avoids", "moves", scene.Brief.Avoid.Count == 0 ? null : avoided.Count, null, 0, () =>
            $"What the brief avoids comes at {Figures.Moves(shape, [.. avoided.Order()])}.");
        var missing = scene.Brief.Favour.Where((_, f) => !shape.Steps.Any(s => likings.IsFavouredTechnique(f, s.Row.Technique) || likings.IsFavouredAttack(f, s.Row.Attack))).ToList();
        yield return Figure.Of(Rule, "missing", "what the brief favours and never comes", "things", scene.Brief.Favour.Count == 0 ? null : missing.Count, null, 0, () =>
            $"These never come: {string.Join(", ", missing.Select(m => WishWords.InWords(m, scene.Book)))}.");
        var single = Enumerable.Range(0, scene.Cast).Where(a => scene.Combinations.Wants(a) && shape.Combinations.All(c => c.Attacker != a)).ToList();
        yield return Figure.Of(Rule, "combinations", "attackers whose manner has combinations and who throw none", "attackers", scene.Combinations.AreWanted ? single.Count : null, null, 0, () =>
            $"{Words.Join([.. single.Select(a => Figures.Name(shape, a))], "and")} might come again within a count after an answer that only blocks or slips.");
        var enough = shape.Scene.Cast > 1 && shape.Attacks >= 2 * shape.Scene.Cast;
        yield return Figure.Of(Rule, "told-apart", "attacks whose thrower their kind tells", "%", enough ? 100 * shape.Manners.Told / shape.Attacks : null, 65, null, () => Lift(shape));
    }

    private static string Lift(FightShape shape)
    {
        var attacks = shape.Steps.Where(s => s.Attack is not null && s.HasTarget).ToList();
        var kind = attacks.GroupBy(s => s.Attack!.Kind).MaxBy(g => g.Select(s => s.Row.Attacker).Distinct().Count() * 100 + g.Count())!;
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
