using System.Globalization;

namespace Generator.Domain;

/// <summary>
/// A clock position seen from above in half hours of 15°, 0 to 23; 0 is 12 o'clock, where the hero faces at the start, and 6 is 3 o'clock.
/// The constructor takes any whole number and wraps it.
/// </summary>
public readonly record struct Bearing
{
    /// <summary>Half hours round the whole clock.</summary>
    public const int Circle = 24;

    public const int DegreesPerHalfHour = 15;

    public Bearing(int halfHours) => HalfHours = Wrapped(halfHours);

    public int HalfHours { get; }

    /// <summary>Degrees clockwise from 12 o'clock, 0 to 345.</summary>
    public int Degrees => HalfHours * DegreesPerHalfHour;

    /// <summary>The way there from the middle of the clock, of length 1: <c>X</c> towards 3 o'clock, <c>Y</c> towards 12.</summary>
    public (double X, double Y) Direction => Math.SinCos(Degrees * Math.PI / 180);

    /// <summary>The same position seen in a mirror through 12 and 6.</summary>
    public Bearing Mirrored => new(-HalfHours);

    public static Bearing operator +(Bearing bearing, Turn turn) => new(bearing.HalfHours + turn.HalfHours);

    /// <summary>The shortest way from this bearing to <paramref name="other"/>: −11 to 12 half hours (straight across is 12, clockwise).</summary>
    public Turn To(Bearing other)
    {
        var difference = new Bearing(other.HalfHours - HalfHours).HalfHours;
        return new Turn(difference > Circle / 2 ? difference - Circle : difference);
    }

    /// <summary>How far apart two bearings lie, 0 to 12 half hours.</summary>
    public int Apart(Bearing other) => Math.Abs(To(other).HalfHours);

    /// <summary>"12", "2:30".</summary>
    public string ToClockText()
    {
        var hour = HalfHours / 2;
        return (hour == 0 ? 12 : hour).ToString(CultureInfo.InvariantCulture) + (HalfHours % 2 == 1 ? ":30" : string.Empty);
    }

    /// <summary>In a sentence: "12 o'clock", "2:30".</summary>
    public string InWords => ToClockText() + (HalfHours % 2 == 0 ? " o'clock" : string.Empty);

    /// <summary>Searches wrap millions of bearings, nearly all less than once round: no division for those.</summary>
    private static int Wrapped(int halfHours)
    {
        if (halfHours is >= -Circle and < 0)
        {
            return halfHours + Circle;
        }

        return halfHours is >= 0 and < Circle ? halfHours : ((halfHours % Circle) + Circle) % Circle;
    }

    /// <summary>Reads "12", "2:30", "2:00" or "0".</summary>
    public static bool TryParse(string? text, out Bearing bearing)
    {
        bearing = default;
        var parts = (text?.Trim() ?? string.Empty).Split(':');
        if (parts.Length > 2 || !int.TryParse(parts[0], NumberStyles.None, CultureInfo.InvariantCulture, out var hour) || hour > 12)
        {
            return false;
        }

        var half = 0;
        if (parts.Length == 2)
        {
            if (parts[1] is not ("00" or "30"))
            {
                return false;
            }

            half = parts[1] == "30" ? 1 : 0;
        }

        bearing = new Bearing((hour * 2) + half);
        return true;
    }

    public override string ToString() => ToClockText();
}
