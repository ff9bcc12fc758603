namespace Generator.Figures.Bodies;

/// <summary>How something is turned in space as a unit quaternion: what other programs store, and what is blended between two instants.</summary>
public readonly record struct Rotation(double X, double Y, double Z, double W)
{
    /// <summary>From where left, up and ahead point.</summary>
    public static Rotation Of(Turned turned)
    {
        // Columns of the matrix are the three ways; the largest of four sums is divided by, so that nothing is lost (Shepperd's method).
        var (l, u, a) = (turned.Left, turned.Up, turned.Ahead);
        var trace = l.X + u.Y + a.Z;
        if (trace > 0)
        {
            var s = Math.Sqrt(trace + 1) * 2;
            return new((u.Z - a.Y) / s, (a.X - l.Z) / s, (l.Y - u.X) / s, s / 4);
        }

        if (l.X > u.Y && l.X > a.Z)
        {
            var s = Math.Sqrt(1 + l.X - u.Y - a.Z) * 2;
            return new(s / 4, (u.X + l.Y) / s, (a.X + l.Z) / s, (u.Z - a.Y) / s);
        }

        if (u.Y > a.Z)
        {
            var s = Math.Sqrt(1 + u.Y - l.X - a.Z) * 2;
            return new((u.X + l.Y) / s, s / 4, (a.Y + u.Z) / s, (a.X - l.Z) / s);
        }

        var last = Math.Sqrt(1 + a.Z - l.X - u.Y) * 2;
        return new((a.X + l.Z) / last, (a.Y + u.Z) / last, last / 4, (l.Y - u.X) / last);
    }

    public static Rotation operator -(Rotation rotation) => new(-rotation.X, -rotation.Y, -rotation.Z, -rotation.W);

    public double Dot(Rotation other) => (X * other.X) + (Y * other.Y) + (Z * other.Z) + (W * other.W);

    /// <summary>The same turn, written so that it lies nearer to another.</summary>
    public Rotation NearerTo(Rotation other) => Dot(other) < 0 ? -this : this;

    /// <summary>A share of the way to another, the shorter way round at an even pace.</summary>
    public Rotation Towards(Rotation other, double share)
    {
        var near = other.NearerTo(this);
        var cos = Math.Min(1, Dot(near));
        var angle = Math.Acos(cos);
        var (one, two) = angle < 1e-6 ? (1 - share, share) : (Math.Sin((1 - share) * angle) / Math.Sin(angle), Math.Sin(share * angle) / Math.Sin(angle));
        var sum = new Rotation((X * one) + (near.X * two), (Y * one) + (near.Y * two), (Z * one) + (near.Z * two), (W * one) + (near.W * two));
        var length = Math.Sqrt(sum.Dot(sum));
        return new(sum.X / length, sum.Y / length, sum.Z / length, sum.W / length);
    }

    /// <summary>Where left, up and ahead point.</summary>
    public Turned Turned => new(
        new(1 - (2 * ((Y * Y) + (Z * Z))), 2 * ((X * Y) + (Z * W)), 2 * ((X * Z) - (Y * W))),
        new(2 * ((X * Y) - (Z * W)), 1 - (2 * ((X * X) + (Z * Z))), 2 * ((Y * Z) + (X * W))),
        new(2 * ((X * Z) + (Y * W)), 2 * ((Y * Z) - (X * W)), 1 - (2 * ((X * X) + (Y * Y)))));
}
