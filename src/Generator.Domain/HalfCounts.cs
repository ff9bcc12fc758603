using System.Globalization;

namespace Generator.Domain;

/// <summary>
/// Time in half counts of the routine's tempo: either a span, or a moment counted from the first count of the routine
/// (count 1 is moment 0, "1&amp;" is moment 1, count 2 is moment 2). Spans are never negative; a moment may be, before count 1.
/// </summary>
public readonly record struct HalfCounts(int Value) : IComparable<HalfCounts>
{
    public static readonly HalfCounts Zero = new(0);

    /// <summary>Half counts in one count.</summary>
    public const int PerCount = 2;

    public static HalfCounts FromCounts(int counts) => new(counts * PerCount);

    public static HalfCounts operator +(HalfCounts left, HalfCounts right) => new(left.Value + right.Value);

    public static HalfCounts operator -(HalfCounts left, HalfCounts right) => new(left.Value - right.Value);

    public static bool operator <(HalfCounts left, HalfCounts right) => left.Value < right.Value;

    public static bool operator >(HalfCounts left, HalfCounts right) => left.Value > right.Value;

    public static bool operator <=(HalfCounts left, HalfCounts right) => left.Value <= right.Value;

    public static bool operator >=(HalfCounts left, HalfCounts right) => left.Value >= right.Value;

    public int CompareTo(HalfCounts other) => Value.CompareTo(other.Value);

    /// <summary>The moment as a coordinator writes it: "12" or "12&amp;".</summary>
    public string ToCountText()
    {
        var whole = Math.DivRem(Value, PerCount, out var half);
        if (half < 0)
        {
            whole--;
            half += PerCount;
        }

        return (whole + 1).ToString(CultureInfo.InvariantCulture) + (half == 1 ? "&" : string.Empty);
    }

    /// <summary>The span in counts: "3" or "3.5".</summary>
    public string ToSpanText() => (Value / 2m).ToString("0.#", CultureInfo.InvariantCulture);

    /// <summary>Reads a moment written as "12" or "12&amp;" (1 to 9999).</summary>
    public static bool TryParseCount(string? text, out HalfCounts moment)
    {
        moment = Zero;
        var trimmed = text?.Trim() ?? string.Empty;
        var half = trimmed.EndsWith('&');
        if (half)
        {
            trimmed = trimmed[..^1].TrimEnd();
        }

        if (!int.TryParse(trimmed, NumberStyles.None, CultureInfo.InvariantCulture, out var count) || count is < 1 or > 9999)
        {
            return false;
        }

        moment = new HalfCounts(((count - 1) * PerCount) + (half ? 1 : 0));
        return true;
    }

    /// <summary>The span with its unit: "half a count", "1 count", "2.5 counts".</summary>
    public string InWords => Value switch
    {
        1 => "half a count",
        PerCount => "1 count",
        _ => ToSpanText() + " counts",
    };

    public override string ToString() => ToCountText();
}
