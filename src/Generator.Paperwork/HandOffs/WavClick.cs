using System.Text;
using Generator.Domain;

namespace Generator.Paperwork.HandOffs;

/// <summary>
/// The click as sound: WAV, 48,000 samples a second, 16 bits, one channel, with a named cue point for every phrase and a name that players show. Each click starts at the sample
/// nearest to its time; samples are made of whole numbers, so that every machine makes the same file.
/// </summary>
public static class WavClick
{
    public const int Rate = 48_000;

    private const int ClickSamples = Rate / 50;

    private const int Loudest = 22_000;

    /// <summary>Samples in one swing of a click; the first of a phrase is higher.</summary>
    private const int LowPeriod = 48;

    private const int HighPeriod = 32;

    /// <summary>The bytes of a <c>.wav</c> file.</summary>
    /// <param name="title">What it is the click of; ASCII, other letters become "?".</param>
    /// <param name="pulse">How fast its counts go by.</param>
    /// <param name="end">End of the routine, in half counts from count 1.</param>
    /// <param name="markers">In order of time.</param>
    public static byte[] Of(string title, Pulse pulse, int end, IReadOnlyList<Marker> markers)
    {
        var clock = new ShowClock(pulse);
        var last = Math.Max(end, 1);
        var samples = new short[clock.At(last).Nearest(Rate) + Rate];
        var accents = markers.Select(m => m.Moment).ToHashSet();
        foreach (var (moment, time) in clock.Clicks(last))
        {
            Click(samples.AsSpan((int)time.Nearest(Rate), ClickSamples), accents.Contains(moment) ? HighPeriod : LowPeriod);
        }

        return File(title, samples, [.. markers.Select(m => ((uint)clock.From(m.Moment).Nearest(Rate), m.Name))]);
    }

    private static void Click(Span<short> samples, int period)
    {
        for (var i = 0; i < samples.Length; i++)
        {
            var phase = i % period;
            var swing = phase < period / 2 ? (4 * phase) - period : (3 * period) - (4 * phase);
            samples[i] = (short)(swing * (Loudest / period) * (samples.Length - i) / samples.Length);
        }
    }

    private static byte[] File(string title, short[] samples, IReadOnlyList<(uint Sample, string Name)> cues)
    {
        using var stream = new MemoryStream();
        using var writer = new BinaryWriter(stream, Encoding.ASCII);
        writer.Write("RIFF"u8);
        writer.Write(0);
        writer.Write("WAVE"u8);
        Chunk(writer, "fmt ", w =>
        {
            w.Write((short)1);
            w.Write((short)1);
            w.Write(Rate);
            w.Write(Rate * sizeof(short));
            w.Write((short)sizeof(short));
            w.Write((short)16);
        });
        Chunk(writer, "data", w => Array.ForEach(samples, w.Write));
        Chunk(writer, "cue ", w => Cues(w, cues));
        Chunk(writer, "LIST", w => Labels(w, cues));
        Chunk(writer, "LIST", w => Name(w, title));
        writer.Seek(4, SeekOrigin.Begin);
        writer.Write((int)stream.Length - 8);
        writer.Flush();
        return stream.ToArray();
    }

    private static void Cues(BinaryWriter writer, IReadOnlyList<(uint Sample, string Name)> cues)
    {
        writer.Write(cues.Count);
        for (var i = 0; i < cues.Count; i++)
        {
            writer.Write(i + 1);
            writer.Write(cues[i].Sample);
            writer.Write("data"u8);
            writer.Write(0);
            writer.Write(0);
            writer.Write(cues[i].Sample);
        }
    }

    private static void Labels(BinaryWriter writer, IReadOnlyList<(uint Sample, string Name)> cues)
    {
        writer.Write("adtl"u8);
        for (var i = 0; i < cues.Count; i++)
        {
            var number = i + 1;
            var name = cues[i].Name;
            Chunk(writer, "labl", w =>
            {
                w.Write(number);
                w.Write(Encoding.ASCII.GetBytes(name + '\0'));
            });
        }
    }

    private static void Name(BinaryWriter writer, string title)
    {
        writer.Write("INFO"u8);
        Chunk(writer, "INAM", w => w.Write(Encoding.ASCII.GetBytes(Text.Page.Clean(title) + '\0')));
    }

    private static void Chunk(BinaryWriter writer, string id, Action<BinaryWriter> content)
    {
        writer.Write(Encoding.ASCII.GetBytes(id));
        var at = writer.BaseStream.Position;
        writer.Write(0);
        content(writer);
        var length = (int)(writer.BaseStream.Position - at - 4);
        if (length % 2 == 1)
        {
            writer.Write((byte)0);
        }

        var back = writer.BaseStream.Position;
        writer.BaseStream.Position = at;
        writer.Write(length);
        writer.BaseStream.Position = back;
    }
}
