using Generator.Domain;
using Generator.Library;
using Generator.Solver.Reworking;

namespace Generator.Solver.Repairing;

/// <summary>
/// How much of a routine a repair gives up, its counts apart: the number of moves first; of as many, rather a reaction than a side, rather that than who attacks
/// and with what, and a technique last of all.
/// </summary>
public static class Mildness
{
    /// <summary>What one move more counts for.</summary>
    public const long OneMove = 1L << (3 * Bits);

    /// <summary>For each kind of thing given up: the most that are told apart is 127.</summary>
    private const int Bits = 7;

    /// <summary>The less the milder.</summary>
    public static long Of(Book book, Routine before, Routine after, RoutineChange changes)
    {
        var (techniques, attacks, sides) = (0, 0, 0);
        foreach (var change in changes.Moves.Where(m => m.Kind >= ChangeKind.Changed))
        {
            var was = change.Old < 0 ? null : before.Moves[change.Old];
            var now = change.Now < 0 ? null : after.Moves[change.Now];
            var sameTechnique = Equal(was?.Technique, now?.Technique);
            var keeps = was is null || (now is not null && (sameTechnique || Equal(BaseOf(was, book), BaseOf(now, book))));
            techniques += keeps ? 0 : 1;
            attacks += keeps && was is not null && (was.Attacker != now!.Attacker || !Equal(was.Attack, now.Attack)) ? 1 : 0;
            sides += keeps && was is not null && !sameTechnique ? 1 : 0;
        }

        return (changes.Changed * OneMove) + Digit(techniques, 2) + Digit(attacks, 1) + Digit(sides, 0);
    }

    public static long Of(Reworked reworked) => Of(reworked.Scene.Book, reworked.Old, reworked.Routine, reworked.Change);

    private static long Digit(int count, int place) => (long)Math.Min(count, (1 << Bits) - 1) << (place * Bits);

    private static string? BaseOf(Move move, Book book) => move.Technique is { } id && book.TechniqueIndex(id) is >= 0 and var t ? book.Techniques[t].BaseId : null;

    private static bool Equal(string? one, string? other) => string.Equals(one, other, StringComparison.Ordinal);
}
