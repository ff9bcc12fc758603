using System.Globalization;

namespace Generator.Domain;

/// <summary>A turn, or a way round the clock, in half hours of 15°: positive is clockwise seen from above; −23 to 23.</summary>
public readonly record struct Turn(int HalfHours)
{
    public static readonly Turn None = new(0);

    /// <summary>Half a circle: through the mark to the far side.</summary>
    public static readonly Turn About = new(12);

    /// <summary>The same turn seen in a mirror: half a circle by the left becomes half a circle by the right.</summary>
    public Turn Mirrored => new(-HalfHours);

    /// <summary>The half hours; the text of a record would print its mirror, and that its own, for ever.</summary>
    public override string ToString() => HalfHours.ToString(CultureInfo.InvariantCulture);
}
