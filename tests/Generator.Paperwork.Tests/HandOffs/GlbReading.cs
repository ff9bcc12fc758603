using System.Buffers.Binary;
using System.Numerics;
using System.Text;
using System.Text.Json;

namespace Generator.Paperwork.Tests.HandOffs;

/// <summary>Reads a binary glTF as plainly as can be: its two chunks, the nodes, and where a node is at a time. It knows nothing of how the file is written.</summary>
internal sealed class GlbReading
{
    private readonly ArraySegment<byte> binary;
    private readonly Dictionary<int, int> parents = [];

    public GlbReading(byte[] bytes)
    {
        Assert.Equal("glTF", Encoding.ASCII.GetString(bytes, 0, 4));
        Assert.Equal(2, BinaryPrimitives.ReadInt32LittleEndian(bytes.AsSpan(4)));
        Assert.Equal(bytes.Length, BinaryPrimitives.ReadInt32LittleEndian(bytes.AsSpan(8)));
        var length = BinaryPrimitives.ReadInt32LittleEndian(bytes.AsSpan(12));
        Assert.Equal("JSON", Encoding.ASCII.GetString(bytes, 16, 4));
        Json = JsonDocument.Parse(bytes.AsMemory(20, length)).RootElement;
        Assert.Equal("BIN\0", Encoding.ASCII.GetString(bytes, 24 + length, 4));
        binary = new(bytes, 28 + length, BinaryPrimitives.ReadInt32LittleEndian(bytes.AsSpan(20 + length)));
        Nodes = [.. Json.GetProperty("nodes").EnumerateArray()];
        for (var i = 0; i < Nodes.Count; i++)
        {
            if (Nodes[i].TryGetProperty("children", out var children))
            {
                foreach (var child in children.EnumerateArray())
                {
                    parents.Add(child.GetInt32(), i);
                }
            }
        }
    }

    public JsonElement Json { get; }

    public IReadOnlyList<JsonElement> Nodes { get; }

    public int Node(string name) => Enumerable.Range(0, Nodes.Count).Single(i => Name(Nodes[i]) == name);

    public static string? Name(JsonElement thing) => thing.TryGetProperty("name", out var name) ? name.GetString() : null;

    /// <summary>Where a node is in the world, as it stands in the file or at a time of the first animation.</summary>
    public Matrix4x4 World(int node, double? seconds)
    {
        var own = Matrix4x4.CreateScale(Three(node, "scale", seconds) ?? Vector3.One)
            * Matrix4x4.CreateFromQuaternion(Four(node, "rotation", seconds) is { } turn ? new Quaternion(turn.X, turn.Y, turn.Z, turn.W) : Quaternion.Identity)
            * Matrix4x4.CreateTranslation(Three(node, "translation", seconds) ?? Vector3.Zero);
        return parents.TryGetValue(node, out var parent) ? own * World(parent, seconds) : own;
    }

    /// <summary>All times at which something of the first animation is keyed.</summary>
    public IEnumerable<float> Times => Json.GetProperty("animations")[0].GetProperty("samplers").EnumerateArray().SelectMany(s => Floats(s.GetProperty("input").GetInt32(), 1).Select(f => f[0])).Distinct().Order();

    private Vector3? Three(int node, string path, double? seconds) => Value(node, path, seconds, 3) is { } v ? new(v[0], v[1], v[2]) : null;

    private Vector4? Four(int node, string path, double? seconds) => Value(node, path, seconds, 4) is { } v ? new(v[0], v[1], v[2], v[3]) : null;

    private float[]? Value(int node, string path, double? seconds, int width)
    {
        if (seconds is { } time && Json.TryGetProperty("animations", out var animations))
        {
            foreach (var channel in animations[0].GetProperty("channels").EnumerateArray())
            {
                var target = channel.GetProperty("target");
                if (target.GetProperty("node").GetInt32() == node && target.GetProperty("path").GetString() == path)
                {
                    var sampler = animations[0].GetProperty("samplers")[channel.GetProperty("sampler").GetInt32()];
                    var times = Floats(sampler.GetProperty("input").GetInt32(), 1).Select(f => f[0]).ToList();
                    var values = Floats(sampler.GetProperty("output").GetInt32(), width);

                    // Asked at keys only: the nearest one counts; what changes at a stroke stays as the last key before has it.
                    return values[sampler.TryGetProperty("interpolation", out var how) && how.GetString() == "STEP"
                        ? Math.Max(0, times.FindLastIndex(t => t <= time + 0.0001))
                        : Enumerable.Range(0, times.Count).MinBy(i => Math.Abs(times[i] - time))];
                }
            }
        }

        return Nodes[node].TryGetProperty(path, out var stands) ? [.. stands.EnumerateArray().Select(e => e.GetSingle())] : null;
    }

    private List<float[]> Floats(int index, int width)
    {
        var accessor = Json.GetProperty("accessors")[index];
        Assert.Equal(5126, accessor.GetProperty("componentType").GetInt32());
        var view = Json.GetProperty("bufferViews")[accessor.GetProperty("bufferView").GetInt32()];
        var from = Whole(view, "byteOffset") + Whole(accessor, "byteOffset");
        return [.. Enumerable.Range(0, Whole(accessor, "count")).Select(i => Enumerable.Range(0, width).Select(c => BinaryPrimitives.ReadSingleLittleEndian(binary.AsSpan(from + (4 * ((i * width) + c))))).ToArray())];
    }

    private static int Whole(JsonElement thing, string name) => thing.TryGetProperty(name, out var value) ? value.GetInt32() : 0;
}
