namespace Generator.Paperwork.Floor;

/// <summary>A point on the drawing: x to the right, y down.</summary>
public readonly record struct Point(double X, double Y)
{
    /// <summary>The point as SVG wants it: "12.5,30".</summary>
    public override string ToString() => Svg.Number(X) + "," + Svg.Number(Y);
}
