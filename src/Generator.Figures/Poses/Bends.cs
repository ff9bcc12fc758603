namespace Generator.Figures.Poses;

/// <summary>Three angles of a part of the body in degrees.</summary>
public readonly record struct Bends(double Forward, double Left, double Turn)
{
    public Bends Mirrored => new(Forward, 0 - Left, 0 - Turn);

    /// <summary>A share of all three.</summary>
    public Bends Of(double share) => new(Forward * share, Left * share, Turn * share);
}
