using Generator.Rules.Replaying;

namespace Generator.Rules.Memories;

/// <summary>What spacing remembers to have told, a bit for two people: 8 a + b for the attackers a and b, 9 a for the hero and a, and one that pairs leave free for the ally and a.</summary>
internal static class SpacingBits
{
    private const int Row = 8;

    public static ulong Known(object? memory) => memory is ulong known ? known : 0UL;

    /// <summary>Of two attackers, the lower number first; of the hero and one, that number twice.</summary>
    public static ulong Bit(int a, int b) => 1UL << ((Row * a) + b);

    /// <summary>Of an attacker and whoever makes the move.</summary>
    public static ulong With(Step step, int attacker) => step.IsByAlly ? OfAlly(attacker) : Bit(attacker, attacker);

    /// <summary>Everything that is remembered of one attacker.</summary>
    public static ulong Of(int attacker)
    {
        var bits = Bit(attacker, attacker) | OfAlly(attacker);
        for (var other = 0; other < Row; other++)
        {
            bits |= other < attacker ? Bit(other, attacker) : Bit(attacker, other);
        }

        return bits;
    }

    /// <summary>One of the bits below the diagonal.</summary>
    private static ulong OfAlly(int attacker) => attacker < Row - 1 ? Bit(attacker + 1, attacker) : Bit(attacker, 0);
}
