using Generator.Domain;
using Generator.Library;

namespace Generator.Testing;

/// <summary>
/// Routines whose every row can be written and read, each from its seed: right words in the right fields. Whether the fight works is another
/// matter; most do not. Some rows stand out of order, lack a reaction or have one that does not suit.
/// </summary>
public static class RandomRoutine
{
    private static readonly string[] Notes = [string.Empty, "slow", "a, b; \"c\"", "two\nlines\r\nmore", " kept as is ", "=1+1", "'=1+1", " -a", "naïve — œuvre 小"];

    /// <summary>The same seed and library give the same routine.</summary>
    public static Routine Of(int seed, Book book)
    {
        var chance = new Chance(seed);
        var brief = RandomBrief.Of(chance.Whole(0, int.MaxValue - 1), book);
        var start = 0;
        return new Routine
        {
            Brief = chance.Percent(80) ? brief : brief with { Length = null },
            LibraryVersion = chance.One([string.Empty, book.Version]),
            Placements = [.. brief.Attackers.Select(_ => new Placement(RandomBrief.Clock(chance), new Centimetres(chance.Whole(100, 2000)), new HalfCounts(chance.Whole(0, 80))))],
            Moves = Hurting(new Chance(~seed), chance.List(0, 12, _ => Move(chance, start = Math.Max(0, start + (chance.Percent(95) ? chance.Whole(0, 6) : -chance.Whole(1, 9))), brief.Attackers.Count, book)), book),
        };
    }

    /// <summary>By chance of its own, so that the routine is otherwise the one that it would be if nothing hurt.</summary>
    private static IReadOnlyList<Move> Hurting(Chance chance, IReadOnlyList<Move> moves, Book book) =>
    [
        .. moves.Select(m => m.Technique is { } id && (book.Technique(id) is { HasNoTarget: false } or { Family: Family.Setback }) && chance.Percent(20)
            ? m with { Hurts = new Hurt(chance.One(BodyPartWords.All), new HalfCounts(m.Start.Value + chance.Whole(1, 40))) }
            : m),
    ];

    private static Move Move(Chance chance, int start, int cast, Book book)
    {
        var technique = chance.Percent(90) ? chance.One([.. book.Techniques.Where(t => t.Travel is null)]) : null;
        var attack = technique is null || chance.Percent(40) ? chance.One(book.Attacks) : null;
        int? attacker = technique is { HasNoTarget: true } && attack is null ? null : chance.Whole(0, cast - 1);
        return new Move
        {
            Start = new HalfCounts(start),
            Attacker = attacker,
            From = attacker is null ? null : chance.Maybe(() => RandomBrief.Clock(chance)),
            Cue = chance.Any<Cue>(),
            Attack = attack?.Id,
            Technique = technique?.Id,
            Reaction = Reaction(chance, technique, book),
            Stance = chance.Percent(20) ? chance.Any<Stance>() : null,
            Linger = new HalfCounts(chance.Percent(50) ? 0 : chance.Whole(0, 120)),
            Note = chance.One(Notes),
        };
    }

    /// <summary>Mostly one that suits. Where only one does, a row without any would be read with it, and is not drawn.</summary>
    private static string? Reaction(Chance chance, Technique? technique, Book book)
    {
        if (technique is not null && chance.Percent(4))
        {
            return chance.One(book.Reactions).Id;
        }

        return technique is null or { Reactions.Count: 0 } || (technique.Reactions.Count > 1 && chance.Percent(5)) ? null : chance.One(technique.Reactions);
    }
}
