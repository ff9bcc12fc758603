using System.Buffers.Binary;
using System.Text;
using Generator.Domain;

namespace Generator.Paperwork.HandOffs;

/// <summary>
/// The click as a standard MIDI file of format 0: tempo, a wood block on every count (high at the first count of a phrase), and a marker for every
/// phrase. Text in it is ASCII, as the standard has it; other letters become "?".
/// </summary>
public static class MidiClick
{
    /// <summary>Ticks in a count.</summary>
    public const int TicksPerCount = 480;

    private const int ClickTicks = 60;

    private const byte HighBlock = 76;

    private const byte LowBlock = 77;

    private const byte Drums = 9;

    /// <summary>The bytes of a <c>.mid</c> file.</summary>
    /// <param name="title">Name of the track.</param>
    /// <param name="pulse">How fast the counts go by, which are quarter notes.</param>
    /// <param name="end">End of the routine, in half counts from count 1.</param>
    /// <param name="markers">In order of time.</param>
    public static byte[] Of(string title, Pulse pulse, int end, IReadOnlyList<Marker> markers)
    {
        var events = new List<(int Tick, byte[] Bytes)> { (0, Text(3, title)), (0, TempoEvent(pulse.At(0))), (0, Text(6, "Count-in")) };
        var beats = new MidiBeats(pulse);
        events.AddRange(beats.Tempos(end).Skip(1).Select(t => (t.Tick, TempoEvent(t.Microseconds))));
        events.AddRange(markers.Select(m => (beats.From(m.Moment), Text(6, m.Name))));
        var accents = markers.Select(m => beats.From(m.Moment)).ToHashSet();
        var clicks = ClickTimes(beats, end).ToList();
        foreach (var click in clicks)
        {
            var note = accents.Contains(click) ? HighBlock : LowBlock;
            events.Add((click, [0x90 | Drums, note, 100]));
            events.Add((click + ClickTicks, [0x80 | Drums, note, 0]));
        }

        events.Add((Math.Max(clicks[^1] + TicksPerCount, beats.At(end)), [0xFF, 0x2F, 0]));
        return File(events.Select((e, i) => (e.Tick, i, e.Bytes)).OrderBy(e => e.Tick).ThenBy(e => e.i).Select(e => (e.Tick, e.Bytes)));
    }

    /// <summary>Microseconds in a count, to the nearest one; 90 counts a minute cannot be written exactly.</summary>
    public static int MicrosecondsOf(Tempo tempo) => (int)new ExactSeconds(60, tempo.CountsPerMinute).Nearest(1_000_000);

    /// <summary>The tempo as an event: FF 51 03 and three bytes.</summary>
    public static byte[] TempoEvent(Tempo tempo) => TempoEvent(MicrosecondsOf(tempo));

    private static byte[] TempoEvent(int microseconds) => [0xFF, 0x51, 3, (byte)(microseconds >> 16), (byte)((microseconds >> 8) & 0xFF), (byte)(microseconds & 0xFF)];

    /// <summary>A number as a variable-length quantity: seven bits a byte, the highest first, all but the last with bit 7 set.</summary>
    /// <param name="value">0 to 0x0FFFFFFF.</param>
    public static byte[] VariableLength(int value)
    {
        ArgumentOutOfRangeException.ThrowIfNegative(value);
        ArgumentOutOfRangeException.ThrowIfGreaterThan(value, 0x0FFFFFFF);
        var bytes = new Stack<byte>([(byte)(value & 0x7F)]);
        for (var rest = value >> 7; rest > 0; rest >>= 7)
        {
            bytes.Push((byte)(0x80 | (rest & 0x7F)));
        }

        return [.. bytes];
    }

    private static IEnumerable<int> ClickTimes(MidiBeats beats, int end)
    {
        for (var moment = -ShowClock.CountIn * HalfCounts.PerCount; moment < Math.Max(end, 1); moment += HalfCounts.PerCount)
        {
            foreach (var tick in beats.Clicks(moment))
            {
                yield return tick;
            }
        }
    }

    private static byte[] Text(byte kind, string text)
    {
        var ascii = Encoding.ASCII.GetBytes(Paperwork.Text.Page.Clean(text));
        return [0xFF, kind, .. VariableLength(ascii.Length), .. ascii];
    }

    private static byte[] File(IEnumerable<(int Tick, byte[] Bytes)> events)
    {
        var track = new List<byte>();
        var now = 0;
        foreach (var (tick, bytes) in events)
        {
            track.AddRange(VariableLength(tick - now));
            track.AddRange(bytes);
            now = tick;
        }

        var length = new byte[4];
        BinaryPrimitives.WriteInt32BigEndian(length, track.Count);
        return [.. "MThd"u8, 0, 0, 0, 6, 0, 0, 0, 1, TicksPerCount >> 8, TicksPerCount & 0xFF, .. "MTrk"u8, .. length, .. track];
    }
}
