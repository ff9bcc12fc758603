using System.Buffers.Binary;
using System.Numerics;
using Generator.Figures.Bodies;
using Generator.Figures.Painting;
using SharpGLTF.Memory;
using SharpGLTF.Schema2;

namespace Generator.Paperwork.HandOffs;

/// <summary>Meshes and materials of a scene in space, each made once.</summary>
internal sealed class GlbPaint
{
    /// <summary>Places are rounded to a hundredth of a millimetre, and turns as finely, so that every machine writes the same bytes.</summary>
    private const int Digits = 5;

    private readonly ModelRoot model;
    private readonly Dictionary<string, Mesh> boxes = new(StringComparer.Ordinal);
    private readonly Lazy<(Accessor At, Accessor Out, Accessor Index)> cube;
    private readonly Lazy<Mesh> hero;
    private readonly Lazy<Mesh> attacker;

    public GlbPaint(ModelRoot model)
    {
        this.model = model;
        cube = new(Cube);
        var body = new Lazy<(Accessor At, Accessor Out, Accessor Bone, Accessor Share, Accessor Index)>(() => Skinned(BodyMesh.Body()));
        hero = new(() => Dressed("hero", body.Value, Painted("hero", 0x2f3b52), Skinned(BodyMesh.Belt()), Painted("belt", 0xf4f4f4)));
        attacker = new(() => Dressed("attacker", body.Value, Painted("attacker", 0xe8d3ac), Skinned(BodyMesh.Cap()), Painted("cap", 0x2b2b2b)));
    }

    /// <summary>The body of a hero, dark and with a belt.</summary>
    public Mesh Hero => hero.Value;

    /// <summary>The body of an attacker, light and with a cap.</summary>
    public Mesh Attacker => attacker.Value;

    public static Vector3 Of(Vec at) => new(Rounded(at.X), Rounded(at.Y), Rounded(at.Z));

    public static Quaternion Of(Rotation turn) => Quaternion.Normalize(new Quaternion(Rounded(turn.X), Rounded(turn.Y), Rounded(turn.Z), Rounded(turn.W)));

    /// <summary>A box one metre each way round its middle.</summary>
    /// <param name="name">Of mesh and material; boxes of one name are one.</param>
    /// <param name="colour">Red, green and blue, a byte each.</param>
    public Mesh Box(string name, int colour)
    {
        if (!boxes.TryGetValue(name, out var mesh))
        {
            mesh = model.CreateMesh(name);
            var part = mesh.CreatePrimitive();
            part.SetVertexAccessor("POSITION", cube.Value.At);
            part.SetVertexAccessor("NORMAL", cube.Value.Out);
            part.SetIndexAccessor(cube.Value.Index);
            part.Material = Painted(name, colour);
            boxes.Add(name, mesh);
        }

        return mesh;
    }

    /// <summary>Binds the joints of a performer to the body at rest.</summary>
    public Skin Skin(string name, IReadOnlyList<Node> joints)
    {
        var skin = model.CreateSkin(name);
        skin.BindJoints([.. joints.Select((j, i) => (j, Matrix4x4.CreateTranslation(Of(Rig.AtRest[(Joint)i] * -1))))]);
        return skin;
    }

    private Material Painted(string name, int colour)
    {
        var material = model.CreateMaterial(name);
        material.InitializePBRMetallicRoughness();
        var channel = material.FindChannel("BaseColor")!.Value;
        channel.Color = new Vector4(Linear(colour >> 16), Linear((colour >> 8) & 0xff), Linear(colour & 0xff), 1);
        var rough = material.FindChannel("MetallicRoughness")!.Value;
        rough.SetFactor("MetallicFactor", 0);
        rough.SetFactor("RoughnessFactor", 0.9f);
        return material;

        // What is stored is light, not what a screen is told (IEC 61966-2-1, near enough).
        static float Linear(int part) => Rounded(Math.Pow(part / 255.0, 2.2));
    }

    private Mesh Dressed(
        string name, (Accessor At, Accessor Out, Accessor Bone, Accessor Share, Accessor Index) body, Material skin, (Accessor At, Accessor Out, Accessor Bone, Accessor Share, Accessor Index) mark, Material dress)
    {
        var mesh = model.CreateMesh(name);
        foreach (var (surface, material) in new[] { (body, skin), (mark, dress) })
        {
            var part = mesh.CreatePrimitive();
            part.SetVertexAccessor("POSITION", surface.At);
            part.SetVertexAccessor("NORMAL", surface.Out);
            part.SetVertexAccessor("JOINTS_0", surface.Bone);
            part.SetVertexAccessor("WEIGHTS_0", surface.Share);
            part.SetIndexAccessor(surface.Index);
            part.Material = material;
        }

        return mesh;
    }

    private (Accessor At, Accessor Out, Accessor Bone, Accessor Share, Accessor Index) Skinned(BodyMesh surface) => (
        Vectors([.. surface.Corners.Select(c => Of(c.At))]),
        Vectors([.. surface.Corners.Select(c => Unit(c.Out))]),
        Bytes([.. surface.Corners.SelectMany(c => new byte[] { (byte)c.Bone, 0, 0, 0 })], normalized: false),
        Bytes([.. surface.Corners.SelectMany(_ => new byte[] { 255, 0, 0, 0 })], normalized: true),
        Indices(surface.Triangles));

    private (Accessor At, Accessor Out, Accessor Index) Cube()
    {
        var (at, away, index) = (new List<Vector3>(), new List<Vector3>(), new List<int>());
        foreach (var axis in new[] { Vec.Left, Vec.Up, Vec.Ahead })
        {
            foreach (var sign in new[] { 1, -1 })
            {
                var (normal, aside) = (axis * sign, new Vec(axis.Y, axis.Z, axis.X));
                var across = normal.Cross(aside);
                var first = at.Count;
                foreach (var (a, b) in new[] { (-1, -1), (1, -1), (1, 1), (-1, 1) })
                {
                    at.Add(Of((normal + (aside * a) + (across * b)) * 0.5));
                    away.Add(Of(normal));
                }

                index.AddRange([first, first + 1, first + 2, first, first + 2, first + 3]);
            }
        }

        return (Vectors(at), Vectors(away), Indices(index));
    }

    private Accessor Vectors(List<Vector3> values)
    {
        var bytes = new byte[values.Count * 12];
        for (var i = 0; i < values.Count; i++)
        {
            BinaryPrimitives.WriteSingleLittleEndian(bytes.AsSpan(i * 12), values[i].X);
            BinaryPrimitives.WriteSingleLittleEndian(bytes.AsSpan((i * 12) + 4), values[i].Y);
            BinaryPrimitives.WriteSingleLittleEndian(bytes.AsSpan((i * 12) + 8), values[i].Z);
        }

        var accessor = model.CreateAccessor();
        accessor.SetVertexData(View(bytes, BufferMode.ARRAY_BUFFER), 0, values.Count, new AttributeFormat(DimensionType.VEC3));
        return accessor;
    }

    private Accessor Bytes(byte[] bytes, bool normalized)
    {
        var accessor = model.CreateAccessor();
        accessor.SetVertexData(View(bytes, BufferMode.ARRAY_BUFFER), 0, bytes.Length / 4, new AttributeFormat(DimensionType.VEC4, EncodingType.UNSIGNED_BYTE, normalized));
        return accessor;
    }

    private Accessor Indices(IReadOnlyList<int> values)
    {
        var bytes = new byte[values.Count * 2];
        for (var i = 0; i < values.Count; i++)
        {
            BinaryPrimitives.WriteUInt16LittleEndian(bytes.AsSpan(i * 2), (ushort)values[i]);
        }

        var accessor = model.CreateAccessor();
        accessor.SetIndexData(View(bytes, BufferMode.ELEMENT_ARRAY_BUFFER), 0, values.Count, IndexEncodingType.UNSIGNED_SHORT);
        return accessor;
    }

    private BufferView View(byte[] bytes, BufferMode mode) => model.UseBufferView(bytes, 0, null, 0, mode);

    private static Vector3 Unit(Vec way) => Vector3.Normalize(Of(way.Unit));

    private static float Rounded(double value) => (float)(Math.Round(value, Digits) + 0.0);
}
