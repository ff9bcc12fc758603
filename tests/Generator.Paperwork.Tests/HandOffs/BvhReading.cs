using System.Globalization;
using System.Numerics;

namespace Generator.Paperwork.Tests.HandOffs;

/// <summary>Reads motion files as plainly as can be, word by word, and knows nothing of how they are written.</summary>
internal sealed class BvhReading
{
    private readonly Queue<string> words;
    private readonly List<(string Name, int Parent, double X, double Y, double Z, string[] Channels)> joints = [];

    public BvhReading(string text)
    {
        words = new(text.Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries));
        Expect("HIERARCHY");
        Expect("ROOT");
        Joint(-1);
        Expect("MOTION");
        Expect("Frames:");
        Count = (int)Number();
        Expect("Frame");
        Expect("Time:");
        FrameTime = Number();
        var perFrame = joints.Sum(j => j.Channels.Length);
        Frames = [.. Enumerable.Range(0, Count).Select(_ => Enumerable.Range(0, perFrame).Select(_ => Number()).ToArray())];
        Assert.Empty(words);
    }

    public int Count { get; }

    public double FrameTime { get; }

    public IReadOnlyList<double[]> Frames { get; }

    public IReadOnlyList<string> Names => [.. joints.Select(j => j.Name)];

    /// <summary>Where every joint is in a frame, by name; in the file's own unit.</summary>
    public Dictionary<string, (double X, double Y, double Z)> At(int frame)
    {
        var numbers = new Queue<double>(Frames[frame]);
        var world = new Matrix4x4[joints.Count];
        var places = new Dictionary<string, (double, double, double)>(StringComparer.Ordinal);
        for (var i = 0; i < joints.Count; i++)
        {
            var (name, parent, x, y, z, channels) = joints[i];
            var (move, turn) = (new Vector3((float)x, (float)y, (float)z), Matrix4x4.Identity);
            foreach (var channel in channels)
            {
                var value = (float)numbers.Dequeue();
                var radians = value * MathF.PI / 180;
                move += channel switch { "Xposition" => new(value, 0, 0), "Yposition" => new(0, value, 0), "Zposition" => new(0, 0, value), _ => Vector3.Zero };

                // Rows are multiplied from the left: what stands later in the file turns first.
                turn = channel switch
                {
                    "Xrotation" => Matrix4x4.CreateRotationX(radians) * turn,
                    "Yrotation" => Matrix4x4.CreateRotationY(radians) * turn,
                    "Zrotation" => Matrix4x4.CreateRotationZ(radians) * turn,
                    _ => turn,
                };
            }

            world[i] = turn * Matrix4x4.CreateTranslation(move) * (parent < 0 ? Matrix4x4.Identity : world[parent]);
            places[name] = (world[i].M41, world[i].M42, world[i].M43);
        }

        return places;
    }

    private void Joint(int parent)
    {
        var own = joints.Count;
        var name = words.Dequeue();
        joints.Add(default);
        Expect("{");
        Expect("OFFSET");
        var (x, y, z) = (Number(), Number(), Number());
        Expect("CHANNELS");
        joints[own] = (name, parent, x, y, z, [.. Enumerable.Range(0, (int)Number()).Select(_ => words.Dequeue())]);
        for (var word = words.Dequeue(); word != "}"; word = words.Dequeue())
        {
            if (word == "JOINT")
            {
                Joint(own);
                continue;
            }

            Assert.Equal("End", word);
            Expect("Site");
            Expect("{");
            Expect("OFFSET");
            Assert.True(Math.Abs(Number()) + Math.Abs(Number()) + Math.Abs(Number()) > 0, $"{name} ends where it begins");
            Expect("}");
        }
    }

    private double Number() => double.Parse(words.Dequeue(), CultureInfo.InvariantCulture);

    private void Expect(string word) => Assert.Equal(word, words.Dequeue());
}
