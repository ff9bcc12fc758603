using System.Buffers.Binary;
using Generator.Domain;
using Generator.Figures.Bodies;
using Generator.Figures.Painting;
using Generator.Paperwork.Following;
using Generator.Paperwork.Text;
using Newtonsoft.Json;
using Newtonsoft.Json.Linq;

namespace Generator.Paperwork.Html;

/// <summary>
/// The fight in space for the playback in the round: metres from the hero's first mark, X towards 3 o'clock, Y up, Z towards 6, times in half counts. Bodies are a skeleton at rest, a capsule for
/// each of its parts, and keys; a pose that comes again is written once.
/// </summary>
internal static class RoundData
{
    /// <summary>Bytes of a key: its time in quarters of a half count, the number of its pose, where the hips are in centimetres, how they are turned, and one of nothing.</summary>
    private const int KeyBytes = 15;

    /// <summary>How finely a turn is written: each of its three lesser parts as a number of ten bits.</summary>
    private const int Fine = 1023;

    private const double Centimetre = 100;

    /// <summary>JSON that can stand inside a script element.</summary>
    public static string Of(RoutineView view, Acted acted)
    {
        var (source, poses) = (view.Source, new PoseTable());
        var performers = new JArray(acted.Parts.Select(p => new JArray(Rounded(p.Stature), Convert.ToBase64String([.. p.Keys.SelectMany(k => Key(k, poses))]))));
        var data = new JObject
        {
            ["rig"] = new JArray(Enumerable.Range(0, Skeleton.Joints).Select(i => new JArray(Rig.Parent((Joint)i) is { } parent ? (int)parent : -1, Place(Rig.Offset((Joint)i))))),
            ["body"] = new JArray(Mannequin.AtRest.Select(Capsule)),
            ["belt"] = Capsule(Mannequin.Belt),
            ["cap"] = Capsule(Mannequin.Cap),
            ["hands"] = new JArray(Enum.GetValues<Side>().Select(Skeleton.Arm).Select(a => new JArray((int)a.End, Place(Rig.Offset(a.Tip))))),
            ["tips"] = new JArray(Enum.GetValues<Side>().SelectMany(s => new[] { Skeleton.Arm(s).End, Skeleton.Leg(s).Tip, Skeleton.Arm(s).Middle, Skeleton.Leg(s).Middle }).Select(j => (int)j)),
            ["poses"] = poses.Text,
            ["performers"] = performers,
            ["meetings"] = new JArray(acted.Meetings.Select(m => new JArray(m.Time, (int)m.Kind, Place(m.At)))),
            ["props"] = new JArray(acted.Props.Select(Prop)),
            ["floor"] = Box(source.Brief.Floor, default, default, source.Brief.Floor.Width, source.Brief.Floor.Depth),
            ["mats"] = new JArray(source.Brief.Floor.Mats.Select(m => Box(source.Brief.Floor, m.X, m.Y, m.Width, m.Depth))),
            ["things"] = new JArray(source.Brief.Floor.Obstacles.Select(o =>
                new JArray(Page.Clean(o.Name), Box(source.Brief.Floor, o.X, o.Y, o.Width, o.Depth), Rounded(Stage.HeightOf(source.Scene.Book.Things, o))))),
            ["lens"] = Stage.Lens,
            ["chest"] = Stage.Chest,
            ["lenses"] = new JArray(source.Brief.Cameras.Select(c => Place(Stage.Of(c.Bearing, c.Distance, c.Height)))),
        };
        using var text = new StringWriter { NewLine = "\n" };
        using var writer = new JsonTextWriter(text) { StringEscapeHandling = StringEscapeHandling.EscapeHtml };
        data.WriteTo(writer);
        return text.ToString();
    }

    /// <summary>Its name, how long it is, its outlines along and beside it, and where it is when: from, to (−1 for good), who holds it (−1 nobody), in which hand, how it points, and where it lies.</summary>
    private static JArray Prop(ActedProp prop) => new(
        Page.Clean(prop.Name),
        Rounded(prop.Length),
        new JArray(prop.Kind.Drawn.Select(o => new JArray(o.Select(p => new JArray(Rounded((double)p.Along), Rounded((double)p.Aside)))))),
        new JArray(prop.Stays.Select(s => new JArray(
            s.From, double.IsInfinity(s.To) ? -1 : s.To, Math.Max(-1, s.Holder + 1), (int)s.Hand, new JArray(s.Ways.Select(w => new JArray(Rounded(w.Time), Place(w.Way)))), s.Lies is { } lies ? Place(lies) : new JArray()))));

    /// <summary>Left, far, right and near edge.</summary>
    private static JArray Box(FloorPlan floor, Centimetres x, Centimetres y, Centimetres width, Centimetres depth) => new(
        new[] { x.Value - floor.MarkX.Value, -(y.Value + depth.Value - floor.MarkY.Value), x.Value + width.Value - floor.MarkX.Value, -(y.Value - floor.MarkY.Value) }.Select(c => Rounded(c / Centimetre)));

    /// <summary>The bone with which it turns, both ends from there, both radii, and 1 for a left limb; shares of stature.</summary>
    private static JArray Capsule(Capsule capsule)
    {
        var bone = Rig.AtRest[capsule.Bone];
        return new JArray((int)capsule.Bone, Place(capsule.From - bone), Place(capsule.To - bone), Rounded(capsule.FromRadius), Rounded(capsule.ToRadius), capsule.Banded ? 1 : 0);
    }

    private static byte[] Key(ActedKey key, PoseTable poses)
    {
        var bytes = new byte[KeyBytes];
        var hips = key.Body[Joint.Hips];
        BinaryPrimitives.WriteInt16LittleEndian(bytes, (short)Math.Round(key.Time * 4));
        BinaryPrimitives.WriteUInt16LittleEndian(bytes.AsSpan(2), (ushort)poses.Number(key.Rotations));
        foreach (var (i, value) in new[] { hips.X, hips.Y, hips.Z }.Index())
        {
            BinaryPrimitives.WriteInt16LittleEndian(bytes.AsSpan(4 + (2 * i)), (short)Math.Round(value * Centimetre));
        }

        BinaryPrimitives.WriteUInt32LittleEndian(bytes.AsSpan(10), Packed(key.Rotations[(int)Joint.Hips]));
        return bytes;
    }

    /// <summary>A turn in 32 bits: which of its four parts is the greatest, which is left out and taken to be above 0, and the other three between −√½ and √½.</summary>
    internal static uint Packed(Rotation rotation)
    {
        double[] parts = [rotation.X, rotation.Y, rotation.Z, rotation.W];
        var greatest = Array.IndexOf(parts, parts.MaxBy(Math.Abs));
        var sign = parts[greatest] < 0 ? -1 : 1;
        var packed = (uint)greatest;
        for (var i = 0; i < parts.Length; i++)
        {
            if (i != greatest)
            {
                packed = (packed << 10) | (uint)Math.Clamp(Math.Round(((parts[i] * sign * Math.Sqrt(0.5)) + 0.5) * Fine), 0, Fine);
            }
        }

        return packed;
    }

    private static JArray Place(Vec at) => new(Rounded(at.X), Rounded(at.Y), Rounded(at.Z));

    private static double Rounded(double value) => Math.Round(value, 3) + 0.0;

    /// <summary>Every pose once: how each joint but the hips is turned against its parent.</summary>
    private sealed class PoseTable
    {
        private readonly Dictionary<string, int> numbers = new(StringComparer.Ordinal);

        public string Text => string.Concat(numbers.OrderBy(n => n.Value).Select(n => n.Key));

        public int Number(IReadOnlyList<Rotation> rotations)
        {
            var bytes = new byte[4 * (Skeleton.Joints - 1)];
            for (var i = 1; i < Skeleton.Joints; i++)
            {
                BinaryPrimitives.WriteUInt32LittleEndian(bytes.AsSpan(4 * (i - 1)), Packed(rotations[i]));
            }

            var text = Convert.ToBase64String(bytes);
            numbers.TryAdd(text, numbers.Count);
            return numbers[text];
        }
    }
}
