using FsCheck;
using FsCheck.Fluent;
using Generator.Domain;

namespace Generator.Testing;

/// <summary>Tells FsCheck how to make routines: <c>[Property(Arbitrary = [typeof(Routines)])]</c>. They use the words of <see cref="TinyBook"/>.</summary>
public static class Routines
{
    public static Arbitrary<Routine> Routine() => Arb.From(Briefs.Seeds().Select(s => RandomRoutine.Of(s, TinyBook.Book)), Smaller);

    /// <summary>The same routine with one move less.</summary>
    private static IEnumerable<Routine> Smaller(Routine routine) =>
        Enumerable.Range(0, routine.Moves.Count).Select(i => routine with { Moves = [.. routine.Moves.Where((_, n) => n != i)] });
}
