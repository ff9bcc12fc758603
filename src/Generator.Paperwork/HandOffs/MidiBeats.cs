using Generator.Domain;

namespace Generator.Paperwork.HandOffs;

/// <summary>Counts as ticks of a MIDI file. A hold is ticks of its own: as many counts as the music goes on, or, where it stands still, a count that lasts as long.</summary>
/// <param name="pulse">How fast the counts go by.</param>
internal sealed class MidiBeats(Pulse pulse)
{
    private const int TicksPerHalf = MidiClick.TicksPerCount / HalfCounts.PerCount;

    /// <summary>A count of a MIDI file lasts at most 16.7 s.</summary>
    private const int LongestCount = 16;

    /// <summary>The tick at which a moment comes.</summary>
    public int At(int moment) => (ShowClock.HalfCountsAt(moment) * TicksPerHalf) + pulse.Holds.Where(h => h.At.Value < moment).Sum(h => Counts(h) * MidiClick.TicksPerCount);

    /// <summary>The tick at which it goes on from a moment.</summary>
    public int From(int moment) => At(moment) + (pulse.HoldAt(moment) is { } hold ? Counts(hold) * MidiClick.TicksPerCount : 0);

    /// <summary>The clicks from a moment that is a whole count, in ticks: one, or those of its hold.</summary>
    public IEnumerable<int> Clicks(int moment)
    {
        yield return At(moment);
        if (pulse.HoldAt(moment) is { } hold)
        {
            for (var i = 1; i < hold.Counts; i++)
            {
                yield return At(moment) + (i * MidiClick.TicksPerCount);
            }

            yield return From(moment);
        }
    }

    /// <summary>Ticks from which a count lasts so many microseconds, in order; the first is 0.</summary>
    /// <param name="end">Half count with which the routine ends.</param>
    public IEnumerable<(int Tick, int Microseconds)> Tempos(int end)
    {
        var (moment, now) = (-ShowClock.CountIn * HalfCounts.PerCount, 0);
        foreach (var span in pulse.Spans(moment, Math.Max(end, 1)))
        {
            if (MidiClick.MicrosecondsOf(span.Tempo) != now)
            {
                now = MidiClick.MicrosecondsOf(span.Tempo);
                yield return (From(moment), now);
            }

            var (from, to) = (moment, moment += span.HalfCounts);
            foreach (var hold in pulse.HoldsIn(from, to).Where(h => h.Seconds is not null))
            {
                yield return (At(hold.At.Value), (int)(hold.Seconds!.Value * 1_000_000 / Counts(hold)));
                yield return (From(hold.At.Value), now);
            }
        }
    }

    private static int Counts(MusicHold hold) => hold.Counts ?? ((int)hold.Seconds!.Value / LongestCount) + 1;
}
