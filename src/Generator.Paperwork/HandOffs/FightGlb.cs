using System.Numerics;
using System.Text.Json.Nodes;
using Generator.Domain;
using Generator.Figures.Bodies;
using Generator.Figures.Painting;
using Generator.Paperwork.Following;
using Generator.Paperwork.Text;
using Generator.Rules.Replaying;
using SharpGLTF.Schema2;
using SharpGLTF.Transforms;
using Camera = Generator.Domain.Camera;

namespace Generator.Paperwork.HandOffs;

/// <summary>
/// The fight in space as glTF 2.0 in one binary file: metres, Y up, 12 o'clock along −Z, the hero's mark at the origin. Floor, obstacles, cameras, a skinned body for each performer with
/// the joints of the skeleton, a box for each prop, one animation whose times are those of the click, and what every move is as remarks of the scene.
/// </summary>
internal static class FightGlb
{
    private const double FloorThickness = 0.02;

    /// <summary>Height of a mat in metres. Common practice, no source.</summary>
    private const double MatThickness = 0.05;

    public static byte[] Of(PaperSource source, Acted acted)
    {
        var model = ModelRoot.CreateModel();
        var scene = model.UseScene(source.Head.Title);
        model.DefaultScene = scene;
        model.Asset.Copyright = CardPicture.Caution;
        model.Asset.Generator = "Generator";
        scene.Extras = Remarks(source);
        var paint = new GlbPaint(model);
        Floor(scene, paint, source.Brief.Floor, source.Scene.Book.Things);
        foreach (var camera in source.Brief.Cameras)
        {
            Place(model, scene, camera);
        }

        var animation = model.CreateAnimation("fight");
        var clock = new ShowClock(source.Brief.Pulse);
        List<Node[]> bodies = [.. acted.Parts.Select(p => Perform(scene, animation, paint, p, clock))];
        foreach (var prop in acted.Props)
        {
            GlbProps.Put(scene, animation, paint.Box(Page.Clean(prop.Name), 0xf4f4f4), prop, new(acted, bodies), clock);
        }

        return model.WriteGLB().ToArray();
    }

    /// <summary>What the scene is, and of every move its number, its seconds and what is done.</summary>
    private static JsonObject Remarks(PaperSource source)
    {
        var clock = new ShowClock(source.Brief.Pulse);
        return new JsonObject
        {
            ["caution"] = CardPicture.Caution,
            ["title"] = source.Head.Title,
            ["identity"] = source.Head.Identity,
            ["warning"] = source.Head.Warning,
            ["tempo"] = source.Brief.Pulse.At(0).CountsPerMinute,
            ["lens"] = "assumed: the brief names none",
            ["moves"] = new JsonArray([.. source.Steps.Select(s => (JsonNode)Remark(source, s, clock))]),
        };
    }

    private static JsonObject Remark(PaperSource source, Step step, ShowClock clock) => new()
    {
        ["move"] = step.Index + 1,
        ["count"] = new HalfCounts(step.Start).ToCountText(),
        ["starts"] = Rounded(clock.SecondsFrom(step.Start)),
        ["contact"] = Rounded(clock.SecondsAt(HeroTrail.SoundsAt(step))),
        ["ends"] = Rounded(clock.SecondsAt(step.Over)),
        ["attacker"] = step.HasTarget ? Page.Clean(source.Brief.Attackers[step.Row.Attacker].Name) : string.Empty,
        ["attack"] = step.Attack?.Name ?? string.Empty,
        ["technique"] = step.Technique?.Name ?? string.Empty,
        ["reaction"] = step.Reaction?.Name ?? string.Empty,
    };

    private static void Floor(Scene scene, GlbPaint paint, FloorPlan plan, ThingTable things)
    {
        Box(scene, paint.Box("floor", 0xd9d4c7), "floor", plan.MarkX, plan.MarkY, default, default, plan.Width, plan.Depth, -FloorThickness, FloorThickness);
        foreach (var mat in plan.Mats)
        {
            Box(scene, paint.Box("mat", 0x7f9fb8), Page.Clean(mat.Name), plan.MarkX, plan.MarkY, mat.X, mat.Y, mat.Width, mat.Depth, 0, MatThickness);
        }

        foreach (var thing in plan.Obstacles)
        {
            Box(scene, paint.Box("obstacle", 0x8f7f66), Page.Clean(thing.Name), plan.MarkX, plan.MarkY, thing.X, thing.Y, thing.Width, thing.Depth, 0, Stage.HeightOf(things, thing));
        }
    }

    private static void Box(Scene scene, Mesh mesh, string name, Centimetres markX, Centimetres markY, Centimetres x, Centimetres y, Centimetres width, Centimetres depth, double from, double height)
    {
        var node = scene.CreateNode(name);
        node.Mesh = mesh;
        var middle = new Rules.Bodies.Place(x.Value + (width.Value / 2.0) - markX.Value, y.Value + (depth.Value / 2.0) - markY.Value);
        node.LocalTransform = new AffineTransform(new Vector3(width.Value / 100f, (float)height, depth.Value / 100f), Quaternion.Identity, GlbPaint.Of(Stage.Of(middle, from + (height / 2))));
    }

    private static void Place(ModelRoot model, Scene scene, Camera camera)
    {
        var lens = model.CreateCamera(Page.Clean(camera.Text));
        lens.SetPerspectiveMode(16 / 9f, (float)(Stage.Lens * Math.PI / 180), 0.1f, 500);
        var node = scene.CreateNode(Page.Clean(camera.Text));
        node.Camera = lens;
        var at = Stage.Of(camera.Bearing, camera.Distance, camera.Height);

        // A camera looks along −Z.
        var back = (at - (Vec.Up * Stage.Chest)).Unit;
        var left = Vec.Up.Cross(back).Unit;
        node.LocalTransform = new AffineTransform(Vector3.One, GlbPaint.Of(Rotation.Of(new Turned(left, back.Cross(left), back))), GlbPaint.Of(at));
    }

    private static Node[] Perform(Scene scene, Animation animation, GlbPaint paint, ActedPart part, ShowClock clock)
    {
        var name = Page.Clean(part.Name);
        var root = scene.CreateNode(name);
        root.LocalTransform = new AffineTransform(new Vector3((float)part.Stature), Quaternion.Identity, Vector3.Zero);
        var joints = new Node[Skeleton.Joints];
        var first = part.Keys[0];
        var frames = Frames(part, clock);
        for (var i = 0; i < joints.Length; i++)
        {
            var joint = (Joint)i;
            joints[i] = (Rig.Parent(joint) is { } parent ? joints[(int)parent] : root).CreateNode($"{name} {joint}");
            joints[i].LocalTransform = new AffineTransform(Vector3.One, GlbPaint.Of(first.Rotations[i]), i == 0 ? At(first.Body[Joint.Hips]) : GlbPaint.Of(Rig.Offset(joint)));
        }

        var body = scene.CreateNode(name + " body");
        body.Mesh = part.Attacker < 0 ? paint.Hero : paint.Attacker;
        body.Skin = paint.Skin(name, joints);

        // The same turn can be written in two ways; each key takes the one nearer to the key before, so that nothing spins.
        animation.CreateTranslationChannel(joints[0], Keyed(f => At(f.Hips)), true);
        for (var i = 0; i < joints.Length; i++)
        {
            var last = first.Rotations[i];
            var turns = Keyed(frame => GlbPaint.Of(last = frame.Rotations[i].NearerTo(last)));
            if (turns.Values.Distinct().Count() > 1)
            {
                animation.CreateRotationChannel(joints[i], turns, true);
            }
        }

        return joints;

        Dictionary<float, T> Keyed<T>(Func<Frame, T> value)
        {
            var keys = new Dictionary<float, T>();
            foreach (var frame in frames)
            {
                keys[(float)Rounded(frame.Seconds)] = value(frame);
            }

            return keys;
        }

        Vector3 At(Vec hips) => GlbPaint.Of(hips * (1 / part.Stature));
    }

    /// <summary>The keys of a performer, and two for each hold between which nothing moves.</summary>
    private static List<Frame> Frames(ActedPart part, ShowClock clock)
    {
        var holds = clock.Pulse.Holds.Select(h => h.At.Value).ToList();
        var keys = part.Keys.Where(k => !holds.Exists(h => h == k.Time)).Select(k => new Frame(clock.SecondsAt(k.Time), k.Body[Joint.Hips], k.Rotations));
        var still = holds.SelectMany(h => new[] { clock.SecondsAt(h), clock.SecondsFrom(h) }.Select(s => part.At(h) is var (hips, rotations) ? new Frame(s, hips, rotations) : default));
        return [.. keys.Concat(still).OrderBy(f => f.Seconds)];
    }

    private readonly record struct Frame(double Seconds, Vec Hips, IReadOnlyList<Rotation> Rotations);

    private static double Rounded(double seconds) => Math.Round(seconds, 4);
}
