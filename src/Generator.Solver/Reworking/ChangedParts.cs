using Generator.Domain;
using Generator.Library;
using Generator.Rules.Replaying;
using Generator.Solver.Completing;

namespace Generator.Solver.Reworking;

/// <summary>What of a move is another in what it became: the parts of a sketch that gave, one bit each (<see cref="Giving"/>), counts and places apart.</summary>
internal static class ChangedParts
{
    /// <summary>Of two moves that stand in one place; null for one that was put in, or is no more.</summary>
    public static int Of(Book book, Move? was, Move? now) =>
        was is null ? 1 << (int)SketchPart.Added
        : now is null ? Giving.LeftOut
        : Of(
            was.Attacker == now.Attacker,
            Equal(was.Attack, now.Attack),
            Equal(was.Technique, now.Technique) ? null : Equal(BaseOf(was, book), BaseOf(now, book)),
            Equal(was.Reaction, now.Reaction));

    /// <summary>Of two rows that stand in one place.</summary>
    public static int Of(Book book, in Row was, in Row now) => Of(
        was.Attacker == now.Attacker,
        was.Attack == now.Attack,
        was.Technique == now.Technique ? null : was.Technique >= 0 && now.Technique >= 0 && Equal(book.Techniques[was.Technique].BaseId, book.Techniques[now.Technique].BaseId),
        was.Reaction == now.Reaction);

    private static int Of(bool sameAttacker, bool sameAttack, bool? onlySide, bool sameReaction) =>
        (sameAttacker ? 0 : 1 << (int)SketchPart.Attacker)
        | (sameAttack ? 0 : 1 << (int)SketchPart.Attack)
        | (onlySide switch { null => 0, true => 1 << (int)SketchPart.Side, false => 1 << (int)SketchPart.Technique })
        | (sameReaction ? 0 : 1 << (int)SketchPart.Reaction);

    private static string? BaseOf(Move move, Book book) => move.Technique is { } id && book.TechniqueIndex(id) is >= 0 and var t ? book.Techniques[t].BaseId : null;

    private static bool Equal(string? one, string? other) => string.Equals(one, other, StringComparison.Ordinal);
}
