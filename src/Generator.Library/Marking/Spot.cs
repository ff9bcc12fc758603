namespace Generator.Library.Marking;

/// <summary>A place on the floor at which a mark might be, in centimetres from the corner between 6 and 9.</summary>
internal readonly record struct Spot(int X, int Y)
{
    /// <summary>Centimetres to another.</summary>
    public double To(Spot other) => To(other.X, other.Y);

    /// <summary>Centimetres to a place.</summary>
    public double To(double x, double y) => Math.Sqrt(((X - x) * (X - x)) + ((Y - y) * (Y - y)));
}
