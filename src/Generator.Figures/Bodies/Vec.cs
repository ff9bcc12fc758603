namespace Generator.Figures.Bodies;

/// <summary>A point or a way in space: X to a performer's left, Y up, Z ahead. Metres, or shares of stature where a skeleton is meant.</summary>
public readonly record struct Vec(double X, double Y, double Z)
{
    public static readonly Vec Up = new(0, 1, 0);

    public static readonly Vec Ahead = new(0, 0, 1);

    public static readonly Vec Left = new(1, 0, 0);

    public static Vec operator +(Vec a, Vec b) => new(a.X + b.X, a.Y + b.Y, a.Z + b.Z);

    public static Vec operator -(Vec a, Vec b) => new(a.X - b.X, a.Y - b.Y, a.Z - b.Z);

    public static Vec operator *(Vec a, double by) => new(a.X * by, a.Y * by, a.Z * by);

    public double Length => Math.Sqrt(Dot(this));

    /// <summary>One long in the same direction; nothing stays nothing.</summary>
    public Vec Unit => Length is var length && length < 1e-12 ? default : this * (1 / length);

    /// <summary>The same way seen from above.</summary>
    public Vec Level => this with { Y = 0 };

    public Vec Mirrored => this with { X = -X };

    public double Dot(Vec other) => (X * other.X) + (Y * other.Y) + (Z * other.Z);

    public Vec Cross(Vec other) => new((Y * other.Z) - (Z * other.Y), (Z * other.X) - (X * other.Z), (X * other.Y) - (Y * other.X));

    public double To(Vec other) => (other - this).Length;

    /// <summary>"(0.1, 1.6, 0.4)": what a record prints by itself would hold its own <see cref="Unit"/>, and that one its own, without end.</summary>
    public override string ToString() => FormattableString.Invariant($"({X}, {Y}, {Z})");

    /// <summary>What of this way does not go along <paramref name="axis"/>, which is one long.</summary>
    public Vec Beside(Vec axis) => this - (axis * Dot(axis));
}
