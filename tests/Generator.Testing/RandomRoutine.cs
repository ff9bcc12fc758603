using Generator.Domain;
using Generator.Library;

namespace Generator.Testing;

/// <summary>
/// Routines whose every row can be written and read, each from its seed: right words in the right fields, in order of time. Whether
/// the fight works is another matter; most do not.
/// </summary>
public static class RandomRoutine
{
    private static readonly string[] Notes = [string.Empty, "slow", "a, b; \"c\"", "two\nlines\r\nmore", " kept as is ", "=1+1", "naïve — œuvre 小"];

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
            Moves = chance.List(0, 12, _ => Move(chance, start += chance.Whole(0, 6), brief.Attackers.Count, book)),
        };
    }

    private static Move Move(Chance chance, int start, int cast, Book book)
    {
        var technique = chance.Percent(90) ? chance.One(book.Techniques) : null;
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
            Reaction = technique is { Reactions.Count: > 0 } ? chance.One(technique.Reactions) : null,
            Linger = new HalfCounts(chance.Percent(50) ? 0 : chance.Whole(0, 120)),
            Note = chance.One(Notes),
        };
    }
}
