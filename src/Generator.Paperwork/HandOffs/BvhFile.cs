using System.Globalization;
using System.Text;
using Generator.Domain;
using Generator.Figures.Bodies;
using Generator.Figures.Painting;
using Generator.Paperwork.Following;

namespace Generator.Paperwork.HandOffs;

/// <summary>
/// One performer as motion capture would have recorded them (BVH): centimetres, Y up, Z towards 6 o'clock, at rest with the arms out to the sides. The format has no place for a
/// remark, so an empty joint at the hips bears the caution as its name.
/// </summary>
public static class BvhFile
{
    /// <summary>The end of a foot beyond its last joint, for show; share of stature.</summary>
    private const double ToeTip = 0.02;

    private const double Centimetre = 100;

    /// <summary>The text of a <c>.bvh</c> file; its first frame is the start of the timecode.</summary>
    /// <param name="part">Who it is.</param>
    /// <param name="pulse">How fast the counts of the routine go by.</param>
    /// <param name="to">Half count with which it ends.</param>
    /// <param name="rate">Frames a second.</param>
    public static string Of(ActedPart part, Pulse pulse, int to, FrameRate rate)
    {
        var text = new StringBuilder("HIERARCHY\n");
        Joint(text, part.Stature, Figures.Bodies.Joint.Hips, 0);
        var perSecond = (double)rate.Frames / rate.Seconds;
        var clock = new ShowClock(pulse);
        var last = (int)Math.Floor(clock.SecondsAt(to) * perSecond);
        text.Append(CultureInfo.InvariantCulture, $"MOTION\nFrames: {last + 1}\nFrame Time: {1 / perSecond:0.00000000}\n");
        for (var frame = 0; frame <= last; frame++)
        {
            var (hips, rotations) = part.At(clock.MomentAt(frame / perSecond));
            text.Append(CultureInfo.InvariantCulture, $"{hips.X * Centimetre:0.00} {hips.Y * Centimetre:0.00} {hips.Z * Centimetre:0.00}");
            for (var i = 0; i < rotations.Count; i++)
            {
                var (z, y, x) = Angles(rotations[i].Turned);
                text.Append(CultureInfo.InvariantCulture, $" {z:0.00} {y:0.00} {x:0.00}");
                text.Append(i == 0 ? " 0 0 0" : string.Empty);
            }

            text.Append('\n');
        }

        return text.ToString();
    }

    /// <summary>Degrees about Z, then about the turned Y, then about the turned X.</summary>
    private static (double Z, double Y, double X) Angles(Turned turned)
    {
        var y = Math.Asin(Math.Clamp(-turned.Left.Z, -1, 1));
        var (z, x) = Math.Abs(turned.Left.Z) < 0.999999
            ? (Math.Atan2(turned.Left.Y, turned.Left.X), Math.Atan2(turned.Up.Z, turned.Ahead.Z))
            : (Math.Atan2(-turned.Up.X, turned.Up.Y), 0);
        return (Degrees(z), Degrees(y), Degrees(x));

        static double Degrees(double angle) => angle * 180 / Math.PI;
    }

    private static void Joint(StringBuilder text, double stature, Joint joint, int depth)
    {
        var root = Rig.Parent(joint) is null;
        Open(text, depth, (root ? "ROOT " : "JOINT ") + joint, Rig.Offset(joint) * (stature * Centimetre));
        Line(text, depth + 1, root ? "CHANNELS 6 Xposition Yposition Zposition Zrotation Yrotation Xrotation" : "CHANNELS 3 Zrotation Yrotation Xrotation");
        if (root)
        {
            Open(text, depth + 1, "JOINT " + Caution, default);
            Line(text, depth + 2, "CHANNELS 3 Zrotation Yrotation Xrotation");
            End(text, depth + 2, Vec.Up * 1);
            Line(text, depth + 1, "}");
        }

        var children = Enum.GetValues<Joint>().Where(j => Rig.Parent(j) == joint).ToList();
        foreach (var child in children.Where(c => (int)c < Skeleton.Joints))
        {
            Joint(text, stature, child, depth + 1);
        }

        if (children.All(c => (int)c >= Skeleton.Joints))
        {
            End(text, depth + 1, (children.Count > 0 ? Rig.Offset(children[0]) : Vec.Ahead * ToeTip) * (stature * Centimetre));
        }

        Line(text, depth, "}");
    }

    private static string Caution => CardPicture.Caution.TrimEnd('.').Replace(", ", "_", StringComparison.Ordinal).Replace(' ', '_');

    private static void End(StringBuilder text, int depth, Vec offset)
    {
        Open(text, depth, "End Site", offset);
        Line(text, depth, "}");
    }

    private static void Open(StringBuilder text, int depth, string head, Vec offset)
    {
        Line(text, depth, head);
        Line(text, depth, "{");
        Line(text, depth + 1, string.Create(CultureInfo.InvariantCulture, $"OFFSET {offset.X:0.0000} {offset.Y:0.0000} {offset.Z:0.0000}"));
    }

    private static void Line(StringBuilder text, int depth, string line) => text.Append('\t', depth).Append(line).Append('\n');
}
