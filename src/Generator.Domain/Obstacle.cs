namespace Generator.Domain;

/// <summary>A thing on the floor: an upright rectangle whose corner nearest the origin is at X, Y.</summary>
public sealed record Obstacle(string Name, Centimetres X, Centimetres Y, Centimetres Width, Centimetres Depth)
{
    /// <summary>Id of its kind in the library; null for something that is only in the way.</summary>
    public string? Kind { get; init; }

    /// <summary>How high it is, 5 to 500 cm; null: as is usual for its kind.</summary>
    public Centimetres? Height { get; init; }

    /// <summary>Rated for the weight of those who come onto it, and fixed or weighted.</summary>
    public bool Rated { get; init; }

    /// <summary>The name in a sentence: "the rail".</summary>
    public string InWords => InSentence.Of(Name);

    /// <summary>Padded where somebody meets it.</summary>
    public bool Padded { get; init; }

    /// <summary>How far a place is from it in centimetres, the longer of across and along; 0 inside it. X and y as on the floor.</summary>
    public double Away(double x, double y) =>
        Math.Max(0, Math.Max(Math.Max(X.Value - x, x - X.Value - Width.Value), Math.Max(Y.Value - y, y - Y.Value - Depth.Value)));

    /// <summary>Centimetres from a place to the nearest point of it; 0 inside it. X and y as on the floor.</summary>
    public double To(double x, double y) => Math.Sqrt(Math.Pow(x - NearestX(x), 2) + Math.Pow(y - NearestY(y), 2));

    /// <summary>The nearest point of it to a place, towards 3 o'clock.</summary>
    public double NearestX(double x) => Math.Clamp(x, X.Value, X.Value + Width.Value);

    /// <summary>The nearest point of it to a place, towards 12.</summary>
    public double NearestY(double y) => Math.Clamp(y, Y.Value, Y.Value + Depth.Value);

    /// <summary>The straight way between two places leads through it, grown by a margin in centimetres on every side.</summary>
    public bool IsCrossed(double margin, double fromX, double fromY, double toX, double toY)
    {
        var (left, low) = (X.Value - margin, Y.Value - margin);
        var (enterX, leaveX) = StraightWay.Slab(toX - fromX, left - fromX, left + Width.Value + (2 * margin) - fromX);
        var (enterY, leaveY) = StraightWay.Slab(toY - fromY, low - fromY, low + Depth.Value + (2 * margin) - fromY);
        return Math.Max(Math.Max(enterX, enterY), 0) < Math.Min(Math.Min(leaveX, leaveY), 1);
    }
}
