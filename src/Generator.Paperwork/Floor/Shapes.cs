using Generator.Domain;
using Generator.Paperwork.Following;

namespace Generator.Paperwork.Floor;

/// <summary>The outline of each performer's marker, so that nobody is told apart by colour alone.</summary>
public static class Shapes
{
    /// <summary>Radius of a marker in units of the drawing.</summary>
    public const double Radius = 13;

    /// <summary>Width of a body on the floor in centimetres, as the rules have it.</summary>
    private const double Broad = 50;

    /// <summary>Half of the stroke round a marker.</summary>
    private const double Stroke = 1;

    /// <summary>How far the cross over somebody who is out, and the bar under somebody who kneels, reach from the middle.</summary>
    private const double Crossed = 18.5;

    private static readonly Point[] Hero = Polygon(24, 0, 1);

    private static readonly Point[][] Attackers =
    [
        Polygon(4, 45, 1.3), Polygon(3, 0, 1.45), Polygon(6, 0, 1.15), Polygon(4, 0, 1.35), Polygon(5, 180, 1.25), Polygon(8, 22.5, 1.1), Polygon(3, 180, 1.45), Bars(),
    ];

    /// <summary>A round body for the hero, a figure with corners for every attacker.</summary>
    public static string Of(int attacker) => Svg.Line(Corners(attacker)) + "Z";

    /// <summary>The room that a marker takes, with its stroke and what is drawn over it.</summary>
    public static Box Around(Marker marker)
    {
        var corners = Corners(marker.Performer);
        var crossed = marker.Style == "out" ? Crossed : 0;
        var (left, right) = (Math.Min(-crossed, corners.Min(c => c.X) - Stroke), Math.Max(crossed, corners.Max(c => c.X) + Stroke));
        var (top, bottom) = (Math.Min(-crossed, corners.Min(c => c.Y) - Stroke), Math.Max(marker.Figure == Figure.Kneeling ? Crossed : crossed, corners.Max(c => c.Y) + Stroke));
        return new Box(marker.At.X + left, marker.At.Y + top, right - left, bottom - top);
    }

    private static Point[] Corners(int attacker) => attacker < 0 ? Hero : Attackers[attacker % Attackers.Length];

    /// <summary>The nose in front of a marker that faces up: where somebody faces.</summary>
    public static string Nose { get; } = Svg.Line([new Point(-5, -Radius - 3), new Point(0, -Radius - 10), new Point(5, -Radius - 3)]) + "Z";

    /// <summary>A body on the floor, to scale: 50 cm wide and as long as the performer, the feet half its width above the place and the head far below it on the drawing.</summary>
    public static Box Body(Centimetres height, double scale) => new(-Broad / 2 * scale, -Broad / 2 * scale, Broad * scale, height.Value * scale);

    /// <summary>Degrees by which that body is turned to lie from one point to another.</summary>
    public static double Turned(Point feet, Point head) => Math.Atan2(feet.X - head.X, head.Y - feet.Y) * 180 / Math.PI;

    private static Point[] Polygon(int corners, double turned, double grown) =>
    [
        .. Enumerable.Range(0, corners).Select(i => Math.SinCos(((i * 360.0 / corners) + turned) * Math.PI / 180)).Select(t => new Point(Radius * grown * t.Sin, -Radius * grown * t.Cos)),
    ];

    /// <summary>A broad cross.</summary>
    private static Point[] Bars()
    {
        const double Long = Radius * 1.15;
        const double Short = Radius * 0.62;
        return
        [
            new(-Short, -Long), new(Short, -Long), new(Short, -Short), new(Long, -Short), new(Long, Short), new(Short, Short),
            new(Short, Long), new(-Short, Long), new(-Short, Short), new(-Long, Short), new(-Long, -Short), new(-Short, -Short),
        ];
    }
}
