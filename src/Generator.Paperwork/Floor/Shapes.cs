using Generator.Domain;

namespace Generator.Paperwork.Floor;

/// <summary>The outline of each performer's marker, so that nobody is told apart by colour alone.</summary>
public static class Shapes
{
    /// <summary>Radius of a marker in units of the drawing.</summary>
    public const double Radius = 13;

    /// <summary>Width of a body on the floor in centimetres, as the rules have it.</summary>
    private const double Broad = 50;

    private static readonly string[] Attackers =
    [
        Polygon(4, 45, 1.3), Polygon(3, 0, 1.45), Polygon(6, 0, 1.15), Polygon(4, 0, 1.35), Polygon(5, 180, 1.25), Polygon(8, 22.5, 1.1), Polygon(3, 180, 1.45), Bars(),
    ];

    /// <summary>A round body for the hero, a figure with corners for every attacker.</summary>
    public static string Of(int attacker) => attacker < 0 ? Polygon(24, 0, 1) : Attackers[attacker % Attackers.Length];

    /// <summary>The nose in front of a marker that faces up: where somebody faces.</summary>
    public static string Nose { get; } = Svg.Line([new Point(-5, -Radius - 3), new Point(0, -Radius - 10), new Point(5, -Radius - 3)]) + "Z";

    /// <summary>A body on the floor, to scale: 50 cm wide and as long as the performer, the feet half its width above the place and the head far below it on the drawing.</summary>
    public static Box Body(Centimetres height, double scale) => new(-Broad / 2 * scale, -Broad / 2 * scale, Broad * scale, height.Value * scale);

    /// <summary>Degrees by which that body is turned to lie from one point to another.</summary>
    public static double Turned(Point feet, Point head) => Math.Atan2(feet.X - head.X, head.Y - feet.Y) * 180 / Math.PI;

    private static string Polygon(int corners, double turned, double grown) => Svg.Line(Enumerable.Range(0, corners).Select(i =>
    {
        var (sin, cos) = Math.SinCos(((i * 360.0 / corners) + turned) * Math.PI / 180);
        return new Point(Radius * grown * sin, -Radius * grown * cos);
    })) + "Z";

    /// <summary>A broad cross.</summary>
    private static string Bars()
    {
        const double Long = Radius * 1.15;
        const double Short = Radius * 0.62;
        return Svg.Line([
            new(-Short, -Long), new(Short, -Long), new(Short, -Short), new(Long, -Short), new(Long, Short), new(Short, Short),
            new(Short, Long), new(-Short, Long), new(-Short, Short), new(-Long, Short), new(-Long, -Short), new(-Short, -Short),
        ]) + "Z";
    }
}
