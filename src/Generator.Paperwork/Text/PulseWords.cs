using System.Globalization;
using Generator.Domain;

namespace Generator.Paperwork.Text;

/// <summary>How fast the counts go by, in words.</summary>
internal static class PulseWords
{
    /// <summary>"100 counts a minute", "90 to 120 counts a minute".</summary>
    public static string Of(Pulse pulse) => Teaching.Speed.Performance.MetronomeOf(pulse) + " counts a minute";

    /// <summary>Seconds of a count: "0.60", "0.67 to 0.50".</summary>
    public static string SecondsOf(Pulse pulse) => pulse.Slowest == pulse.Fastest ? SecondsOf(pulse.Fastest) : $"{SecondsOf(pulse.Slowest)} to {SecondsOf(pulse.Fastest)}";

    private static string SecondsOf(Tempo tempo) => tempo.SecondsIn(HalfCounts.FromCounts(1)).ToString("0.00", CultureInfo.InvariantCulture);

    /// <summary>What the music is beside one tempo, a sentence each; none where it is nothing else.</summary>
    public static IEnumerable<string> Of(Music? music)
    {
        if (music is { Passages.Count: > 1 })
        {
            yield return $"Tempo: {string.Join("; ", music.Passages.Select(Of))}.";
        }

        if (music is { Holds.Count: > 0 })
        {
            yield return $"Everybody stands still {string.Join("; ", music.Holds.Select(Of))}.";
        }

        if (music is { Accents.Count: > 0 })
        {
            yield return $"Accents of the music: {string.Join(", ", music.Accents.Select(a => Words.Count(a.Value)))}.";
        }
    }

    private static string Of(Passage passage)
    {
        var ramp = passage.Over == HalfCounts.Zero ? string.Empty : $", reached over {Words.Span(passage.Over)}";
        return $"{Words.Number(passage.Tempo.CountsPerMinute)} from {Words.AtCount(passage.From.Value)}{ramp}";
    }

    private static string Of(MusicHold hold) =>
        $"at {Words.AtCount(hold.At.Value)} for {(hold.Seconds is { } seconds ? Words.Number(seconds) + " s" : Words.Many(hold.Counts ?? 0, "count") + " of music")}";
}
