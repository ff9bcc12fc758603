namespace Generator.Figures.Bodies;

/// <summary>How something is turned in space: where its own left, up and ahead point.</summary>
public readonly record struct Turned(Vec Left, Vec Up, Vec Ahead)
{
    public static readonly Turned None = new(Vec.Left, Vec.Up, Vec.Ahead);

    /// <summary>First <paramref name="inner"/>, then this.</summary>
    public static Turned operator *(Turned outer, Turned inner) => new(outer * inner.Left, outer * inner.Up, outer * inner.Ahead);

    public static Vec operator *(Turned turned, Vec way) => (turned.Left * way.X) + (turned.Up * way.Y) + (turned.Ahead * way.Z);

    /// <summary>What is up goes ahead; degrees.</summary>
    public static Turned Forward(double degrees)
    {
        var (sin, cos) = Math.SinCos(degrees * Math.PI / 180);
        return new(Vec.Left, new(0, cos, sin), new(0, -sin, cos));
    }

    /// <summary>What is up goes left; degrees.</summary>
    public static Turned Sideways(double degrees)
    {
        var (sin, cos) = Math.SinCos(degrees * Math.PI / 180);
        return new(new(cos, -sin, 0), new(sin, cos, 0), Vec.Ahead);
    }

    /// <summary>What is ahead goes left; degrees.</summary>
    public static Turned Leftwards(double degrees)
    {
        var (sin, cos) = Math.SinCos(degrees * Math.PI / 180);
        return new(new(cos, 0, -sin), Vec.Up, new(sin, 0, cos));
    }

    /// <summary>What undoes it.</summary>
    public Turned Inverse => new(new(Left.X, Up.X, Ahead.X), new(Left.Y, Up.Y, Ahead.Y), new(Left.Z, Up.Z, Ahead.Z));

    /// <summary>Seen in a mirror that stands along the way ahead.</summary>
    public Turned Mirrored => new(Left.Mirrored * -1, Up.Mirrored, Ahead.Mirrored);
}
