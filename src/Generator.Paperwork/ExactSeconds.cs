using System.Globalization;
using System.Numerics;
using Generator.Domain;

namespace Generator.Paperwork;

/// <summary>
/// A length of time in seconds as a fraction in lowest terms: tempo, rehearsal speed and frame rates divide time in thirds and thousandths,
/// and nothing may be lost before a figure is printed.
/// </summary>
public readonly record struct ExactSeconds : IComparable<ExactSeconds>
{
    public static readonly ExactSeconds Zero = new(0, 1);

    /// <param name="numerator">Any whole number.</param>
    /// <param name="denominator">1 and more.</param>
    public ExactSeconds(BigInteger numerator, BigInteger denominator)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(denominator, BigInteger.One);
        var common = BigInteger.GreatestCommonDivisor(numerator, denominator);
        (Numerator, Denominator) = (numerator / common, denominator / common);
    }

    public BigInteger Numerator { get; }

    public BigInteger Denominator { get; }

    /// <summary>A span, or a moment counted from count 1, at a tempo.</summary>
    public static ExactSeconds Of(HalfCounts span, Tempo tempo) => new(span.Value * 30L, tempo.CountsPerMinute);

    /// <summary>From one moment to another, what is held from the first on and before the second among it.</summary>
    /// <param name="pulse">How fast the counts go by.</param>
    /// <param name="from">Half counts from count 1.</param>
    /// <param name="to">The same, not before <paramref name="from"/>.</param>
    public static ExactSeconds Between(Pulse pulse, int from, int to)
    {
        var moving = pulse.Spans(from, to).Aggregate(Zero, (sum, s) => sum + Of(new HalfCounts(s.HalfCounts), s.Tempo));
        return pulse.HoldsIn(from, to).Aggregate(moving, (sum, h) => sum + Of(pulse, h));
    }

    /// <summary>How long a hold lasts.</summary>
    public static ExactSeconds Of(Pulse pulse, MusicHold hold) =>
        hold.Seconds is { } seconds ? new ExactSeconds((BigInteger)(seconds * 1000), 1000) : Of(HalfCounts.FromCounts(hold.Counts ?? 0), pulse.At(hold.At.Value));

    public static ExactSeconds operator +(ExactSeconds left, ExactSeconds right) =>
        new((left.Numerator * right.Denominator) + (right.Numerator * left.Denominator), left.Denominator * right.Denominator);

    /// <summary>The time multiplied by a fraction.</summary>
    public ExactSeconds Times(long numerator, long denominator) => new(Numerator * numerator, Denominator * denominator);

    /// <summary>How many units of <paramref name="perSecond"/>/<paramref name="divisor"/> a second have passed, to the nearest one, halves up.</summary>
    public long Nearest(long perSecond, long divisor = 1)
    {
        var (above, below) = (Numerator * perSecond * 2, Denominator * divisor * 2);
        var sum = above + (Denominator * divisor);
        var whole = BigInteger.DivRem(sum, below, out var rest);
        return (long)(rest.Sign < 0 ? whole - 1 : whole);
    }

    public static bool operator <(ExactSeconds left, ExactSeconds right) => left.CompareTo(right) < 0;

    public static bool operator >(ExactSeconds left, ExactSeconds right) => left.CompareTo(right) > 0;

    public static bool operator <=(ExactSeconds left, ExactSeconds right) => left.CompareTo(right) <= 0;

    public static bool operator >=(ExactSeconds left, ExactSeconds right) => left.CompareTo(right) >= 0;

    public int CompareTo(ExactSeconds other) => (Numerator * other.Denominator).CompareTo(other.Numerator * Denominator);

    /// <summary>With one decimal, halves up: "2.4".</summary>
    public string ToTenths() => (Nearest(10) / 10m).ToString("0.0", CultureInfo.InvariantCulture);

    /// <summary>With three decimals, halves up: "2.400".</summary>
    public string ToThousandths() => (Nearest(1000) / 1000m).ToString("0.000", CultureInfo.InvariantCulture);

    public override string ToString() => ToThousandths() + " s";
}
