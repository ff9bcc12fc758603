namespace Generator.Solver.Constructing;

/// <summary>A stream of chance that is the same on every machine for the same seed (SplitMix64, Steele et al. 2014).</summary>
internal sealed class Dice(ulong seed)
{
    private ulong state = seed;

    /// <summary>A seed for one of several streams that have nothing to do with one another.</summary>
    public static ulong SeedOf(int seed, int lane, int round)
    {
        var mixed = new Dice(unchecked(((ulong)(uint)seed << 32) ^ ((ulong)(uint)lane << 24) ^ (uint)round));
        return mixed.Bits();
    }

    /// <summary>0 to <paramref name="below"/> − 1.</summary>
    public int Next(int below) => (int)((Bits() >> 33) % (ulong)below);

    /// <summary>0 to just under 1.</summary>
    public double Unit() => (Bits() >> 11) * (1.0 / (1UL << 53));

    /// <summary>True in so many of a hundred throws.</summary>
    public bool Percent(int chance) => Next(100) < chance;

    /// <summary>A step that leads round <paramref name="count"/> places to every one of them.</summary>
    public int Stride(int count)
    {
        while (true)
        {
            var stride = 1 + Next(count);
            if (Coprime(stride, count))
            {
                return stride;
            }
        }
    }

    public void Shuffle(Span<int> items)
    {
        for (var i = items.Length - 1; i > 0; i--)
        {
            var j = Next(i + 1);
            (items[i], items[j]) = (items[j], items[i]);
        }
    }

    private static bool Coprime(int a, int b)
    {
        while (b != 0)
        {
            (a, b) = (b, a % b);
        }

        return a == 1;
    }

    private ulong Bits()
    {
        unchecked
        {
            state += 0x9E3779B97F4A7C15UL;
            var z = state;
            z = (z ^ (z >> 30)) * 0xBF58476D1CE4E5B9UL;
            z = (z ^ (z >> 27)) * 0x94D049BB133111EBUL;
            return z ^ (z >> 31);
        }
    }
}
