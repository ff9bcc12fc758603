using Generator.Domain;
using Generator.Paperwork.HandOffs;
using NAudio.Midi;
using NAudio.Wave;

namespace Generator.Paperwork.Tests.HandOffs;

/// <summary>
/// Click and clock where the music changes: 60 counts a minute, from count 3 on 120; count 2 stands still for 2.5 s, count 4 while the music goes on for three counts.
/// </summary>
public class MusicClickTests
{
    private static readonly Pulse Pulse = new(new Tempo(120), new Music
    {
        Passages = [new(new(0), new(60), new(0)), new(new(4), new(120), new(0))],
        Holds = [new(new(2), 2.5m, null), new(new(6), null, 3)],
    });

    /// <summary>Four clicks count in; count 2 comes at 5 s and goes on at 7.5; count 4 comes at 9 and goes on three half seconds later.</summary>
    private static readonly decimal[] Clicks = [0, 1, 2, 3, 4, 5, 7.5m, 8.5m, 9, 9.5m, 10, 10.5m, 11];

    [Fact]
    public void The_clock_stands_still_where_a_count_is_held()
    {
        var clock = new ShowClock(Pulse);
        Assert.Equal(Clicks, clock.Clicks(9).Select(c => c.Time.Nearest(1000) / 1000m));
        Assert.Equal([5.0, 7.5], [clock.SecondsAt(2), clock.SecondsFrom(2)]);
        Assert.Equal([2.0, 2.0, 2.5, 6.0, 7.0], new[] { 5, 7.4, 7.75, 10.4, 10.75 }.Select(s => Math.Round(clock.MomentAt(s), 6)));
        Assert.All(Enumerable.Range(-8, 30).Select(m => m / 2.0), m => Assert.Equal(m, clock.MomentAt(clock.SecondsAt(m) + 1e-9), 6));
    }

    [Fact]
    public void Sound_clicks_where_the_clock_does()
    {
        using var reader = new WaveFileReader(new MemoryStream(WavClick.Of("x", Pulse, 9, [new Marker(2, "second")])));
        var samples = new float[reader.SampleCount];
        reader.ToSampleProvider().Read(samples);
        Assert.All(Clicks, c => Assert.True(samples[(int)(c * 48000)] != 0f && (c == 0 || samples[(int)(c * 48000) - 1] == 0f), $"{c}"));
        Assert.Equal([7.5 * 48000], reader.Chunks.ReadCueList()!.CuePositions.Select(p => (double)p));
    }

    /// <summary>Ticks by the tempos of the file, summed up by hand, come to the same times.</summary>
    [Fact]
    public void Midi_plays_at_the_same_times()
    {
        var events = new MidiFile(new MemoryStream(MidiClick.Of("x", Pulse, 9, [])), strictChecking: true).Events[0];
        var tempos = events.OfType<TempoEvent>().Select(t => (t.AbsoluteTime, t.MicrosecondsPerQuarterNote)).ToList();
        Assert.Equal((0L, 1_000_000), tempos[0]);
        var times = events.OfType<NoteOnEvent>().Where(n => n.Velocity > 0).Select(n => Time(n.AbsoluteTime)).ToList();
        Assert.Equal(Clicks, times);

        decimal Time(long tick)
        {
            var sum = 0m;
            for (var i = 0; i < tempos.Count && tempos[i].AbsoluteTime < tick; i++)
            {
                var until = i + 1 < tempos.Count ? Math.Min(tick, tempos[i + 1].AbsoluteTime) : tick;
                sum += (until - tempos[i].AbsoluteTime) * tempos[i].MicrosecondsPerQuarterNote / 480m / 1_000_000m;
            }

            return decimal.Round(sum, 6);
        }
    }

    [Fact]
    public void A_minute_held_is_a_minute()
    {
        var pulse = new Pulse(new Tempo(100), new Music { Holds = [new(new(0), 60m, null)] });
        var tempos = new MidiFile(new MemoryStream(MidiClick.Of("x", pulse, 4, [])), strictChecking: true).Events[0].OfType<TempoEvent>().Select(t => (t.AbsoluteTime, t.MicrosecondsPerQuarterNote)).ToList();
        Assert.Equal([(0L, 600_000), (1920L, 15_000_000), (3840L, 600_000)], tempos);
    }
}
