using Generator.Domain;
using Generator.Paperwork.HandOffs;
using Generator.Paperwork.Teaching;
using NAudio.Midi;
using NAudio.Wave;

namespace Generator.Paperwork.Tests.HandOffs;

/// <summary>The click, read back by NAudio.</summary>
public class ClickTests
{
    private static readonly IReadOnlyList<Marker> Markers = Marker.Of(Ferry.Steps, PhraseCut.Of(Ferry.Steps));

    private static readonly int End = Ferry.Steps.Max(s => s.End);

    private static readonly Tempo Tempo = Ferry.Routine.Brief.Tempo;

    [Fact]
    public void Midi_clicks_every_count_and_marks_every_phrase()
    {
        var bytes = MidiClick.Of(Ferry.Routine.Brief.Title, Tempo, End, Markers);
        var file = new MidiFile(new MemoryStream(bytes), strictChecking: true);
        Assert.Equal((0, MidiClick.TicksPerCount, 1), (file.FileFormat, file.DeltaTicksPerQuarterNote, file.Tracks));
        var events = file.Events[0];
        Assert.Equal(600_000, events.OfType<TempoEvent>().Single().MicrosecondsPerQuarterNote);
        var clicks = events.OfType<NoteOnEvent>().Where(n => n.Velocity > 0).ToList();
        Assert.Equal(((End + 1) / 2) + ShowClock.CountIn, clicks.Count);
        Assert.All(clicks.Select((c, i) => (c, i)), c => Assert.Equal((c.i * 480L, 10), (c.c.AbsoluteTime, c.c.Channel)));
        Assert.All(clicks, c => Assert.NotNull(c.OffEvent));
        var marks = events.OfType<TextEvent>().Where(t => t.MetaEventType == MetaEventType.Marker).ToList();
        Assert.Equal(["Count-in", .. Markers.Select(m => m.Name)], marks.Select(m => m.Text));
        Assert.Equal(Markers.Select(m => (m.Moment + 8) * 240L), marks.Skip(1).Select(m => m.AbsoluteTime));
        Assert.Equal(Ferry.Routine.Brief.Title, events.OfType<TextEvent>().Single(t => t.MetaEventType == MetaEventType.SequenceTrackName).Text);
        var high = Markers.Where(m => m.Moment % 2 == 0).Select(m => (m.Moment + 8) * 240L);
        Assert.Equal(high, clicks.Where(c => c.NoteNumber == 76).Select(c => c.AbsoluteTime));
        Assert.NotEmpty(high);
    }

    [Fact]
    public void Midi_text_is_ascii() =>
        Assert.All(MidiClick.Of("Fähre — 小\u0007", Tempo, 8, []).Skip(14 + 8 + 4).Take(9), b => Assert.InRange(b, (byte)0x20, (byte)0x7E));

    [Fact]
    public void Sound_clicks_at_the_nearest_sample_and_marks_every_phrase()
    {
        var tempo = new Tempo(97);
        using var reader = new WaveFileReader(new MemoryStream(WavClick.Of("x", tempo, End, Markers)));
        Assert.Equal((48000, 16, 1), (reader.WaveFormat.SampleRate, reader.WaveFormat.BitsPerSample, reader.WaveFormat.Channels));
        var samples = new float[reader.SampleCount];
        Assert.Equal(samples.Length, reader.ToSampleProvider().Read(samples));
        for (var count = 0; count < 40; count++)
        {
            var start = (int)Math.Round(count * 60 * 48000m / 97, MidpointRounding.AwayFromZero);
            Assert.NotEqual(0f, samples[start]);
            Assert.True(count == 0 || samples[start - 1] == 0f, $"{count}");
            Assert.Contains(samples.Skip(start).Take(100), s => s > 0.4f);
        }

        var cues = reader.Chunks.ReadCueList();
        Assert.Equal(Markers.Select(m => m.Name), cues!.CueLabels);
        Assert.Equal(Markers.Select(m => (int)Math.Round((m.Moment + 8) * 30 * 48000m / 97, MidpointRounding.AwayFromZero)), cues.CuePositions);
    }

    /// <summary>A swing of the higher click goes from below to above and back in 32 samples, one of the others in 48.</summary>
    [Fact]
    public void Sound_is_higher_where_a_phrase_begins()
    {
        Marker[] markers = [new(0, "first"), new(6, "second"), new(9, "between two counts")];
        using var reader = new WaveFileReader(new MemoryStream(WavClick.Of("x", new Tempo(120), 16, markers)));
        var samples = new float[reader.SampleCount];
        reader.ToSampleProvider().Read(samples);
        var high = Enumerable.Range(0, 12).Where(count => Swings(samples.AsSpan(count * 24_000, 480)) == 480 / 32).ToList();
        Assert.Equal([4, 7], high);
        Assert.Equal(10, Enumerable.Range(0, 12).Count(count => Swings(samples.AsSpan(count * 24_000, 480)) == 480 / 48));
    }

    private static int Swings(ReadOnlySpan<float> samples)
    {
        var swings = 0;
        for (var i = 1; i < samples.Length; i++)
        {
            swings += samples[i - 1] < 0 && samples[i] >= 0 ? 1 : 0;
        }

        return swings;
    }

    [Fact]
    public void Riff_lengths_add_up()
    {
        var bytes = WavClick.Of("x", Tempo, 16, [new Marker(0, "odd"), new Marker(4, "even")]);
        Assert.Equal(bytes.Length - 8, BitConverter.ToInt32(bytes, 4));
        var names = new List<string>();
        var at = 12;
        while (at < bytes.Length)
        {
            names.Add(System.Text.Encoding.ASCII.GetString(bytes, at, 4));
            at += 8 + ((BitConverter.ToInt32(bytes, at + 4) + 1) / 2 * 2);
        }

        Assert.Equal(bytes.Length, at);
        Assert.Equal(["fmt ", "data", "cue ", "LIST", "LIST"], names);
    }

    [Fact]
    public void A_routine_without_moves_has_a_count_in_and_one_click()
    {
        var events = new MidiFile(new MemoryStream(MidiClick.Of("empty", Tempo, 0, [])), strictChecking: true).Events[0];
        Assert.Equal(5, events.OfType<NoteOnEvent>().Count(n => n.Velocity > 0));
        Assert.NotEmpty(WavClick.Of("x", Tempo, 0, []));
    }
}
