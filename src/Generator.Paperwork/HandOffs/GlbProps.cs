using System.Numerics;
using Generator.Domain;
using Generator.Figures.Bodies;
using Generator.Paperwork.Following;
using Generator.Paperwork.Text;
using SharpGLTF.Schema2;
using SharpGLTF.Transforms;

namespace Generator.Paperwork.HandOffs;

/// <summary>
/// Props in a scene in space: for each stay in a hand, or on the floor, a box as long as the prop and as broad as it is drawn; a box of one stay has no size while it is another's turn.
/// </summary>
internal static class GlbProps
{
    /// <summary>How thick every prop is, and how broad one is that is not drawn; metres. Common practice, no source.</summary>
    private const double Thin = 0.03;

    /// <summary>The scale of what is not there; a matrix of nothing at all could not be undone.</summary>
    private const double Nothing = 0.0001;

    /// <param name="scene">The scene.</param>
    /// <param name="animation">Of the whole fight.</param>
    /// <param name="box">A box one metre each way.</param>
    /// <param name="prop">What is put in.</param>
    /// <param name="fight">Everybody, and their joints in the scene.</param>
    /// <param name="clock">When half counts come.</param>
    public static void Put(Scene scene, Animation animation, Mesh box, ActedProp prop, (Acted Acted, List<Node[]> Joints) fight, ShowClock clock)
    {
        var broad = prop.Kind.Drawn.SelectMany(o => o).Select(p => 2 * Math.Abs((double)p.Aside) * prop.Length).Append(Thin).Max();
        foreach (var (i, stay) in prop.Stays.Index())
        {
            var (name, metre, hand) = ($"{Page.Clean(prop.Name)} {i + 1}", 1.0, stay.Lies ?? default);
            Node node;
            if (stay.Lies is null)
            {
                var (_, _, wrist, tip) = Skeleton.Arm(stay.Hand);
                metre = 1 / fight.Acted.Parts[stay.Holder + 1].Stature;
                hand = Rig.Offset(tip);
                node = fight.Joints[stay.Holder + 1][(int)wrist].CreateNode(name);
            }
            else
            {
                node = scene.CreateNode(name);
            }

            node.Mesh = box;
            var full = new Vector3((float)(broad * metre), (float)(prop.Length * metre), (float)(Thin * metre));
            node.LocalTransform = new AffineTransform(full, Turn(stay.Ways[0].Way), Middle(stay.Ways[0].Way));
            var (begins, ends) = (Seconds(Math.Max(stay.From, fight.Acted.From)), Seconds(Math.Min(stay.To, fight.Acted.To)));
            var shown = new SortedDictionary<float, Vector3> { [begins] = full };
            shown.TryAdd(0, full * (float)Nothing);
            if (stay.To < fight.Acted.To)
            {
                shown[ends] = full * (float)Nothing;
            }

            animation.CreateScaleChannel(node, new Dictionary<float, Vector3>(shown), false);
            if (stay.Ways.Count > 1)
            {
                animation.CreateRotationChannel(node, Keyed(w => Turn(w)), true);
                animation.CreateTranslationChannel(node, Keyed(Middle), true);
            }

            Vector3 Middle(Vec way) => GlbPaint.Of(hand + (way * (metre / 2)));
            Dictionary<float, T> Keyed<T>(Func<Vec, T> of) => stay.Ways.DistinctBy(w => Seconds(w.Time)).ToDictionary(w => Seconds(w.Time), w => of(w.Way));
        }

        float Seconds(double time) => (float)Math.Max(0, Math.Round(clock.SecondsAt(time), 4));
    }

    /// <summary>What is up goes along the way.</summary>
    private static Quaternion Turn(Vec way)
    {
        var up = way.Unit;
        var left = (Math.Abs(up.X) < 0.9 ? Vec.Left : Vec.Ahead).Beside(up).Unit;
        return GlbPaint.Of(Rotation.Of(new Turned(left, up, left.Cross(up))));
    }
}
