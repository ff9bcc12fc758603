namespace Generator.Domain;

/// <summary>Speed of the routine in counts per minute, 40 to 200; 100 (one count every 0.6 s) when nothing is said.</summary>
/// <exception cref="ArgumentOutOfRangeException">The value lies outside 40 to 200.</exception>
public readonly record struct Tempo
{
    /// <summary>Slowest tempo that makes sense for counted movement.</summary>
    public const int Slowest = 40;

    /// <summary>Fastest tempo that makes sense for counted movement.</summary>
    public const int Fastest = 200;

    /// <summary>100 counts a minute.</summary>
    public static readonly Tempo Default = new(100);

    public Tempo(int countsPerMinute)
    {
        if (countsPerMinute is < Slowest or > Fastest)
        {
            throw new ArgumentOutOfRangeException(nameof(countsPerMinute), countsPerMinute, $"A tempo lies between {Slowest} and {Fastest} counts a minute.");
        }

        CountsPerMinute = countsPerMinute;
    }

    public int CountsPerMinute { get; }

    /// <summary>Length of a span in seconds, exact.</summary>
    public decimal SecondsIn(HalfCounts span) => span.Value * 30m / CountsPerMinute;

    /// <summary>The shortest span of whole half counts that lasts at least <paramref name="seconds"/> (never rounds down: a person needs the time).</summary>
    public HalfCounts AtLeast(decimal seconds) => new((int)Math.Ceiling(seconds * CountsPerMinute / 30m));

    /// <summary>
    /// How long something lasts: its own counts, or the next half count that gives it its fewest seconds. This is the one place where a duration
    /// comes from.
    /// </summary>
    public HalfCounts Lasting(HalfCounts own, decimal fewestSeconds) => new(Math.Max(own.Value, AtLeast(fewestSeconds).Value));
}
