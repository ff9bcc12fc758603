using Generator.Domain;

namespace Generator.Paperwork.HandOffs;

/// <summary>
/// The clock that click, MIDI and cue list share: it starts with a count-in of four counts, so that count 1 comes at the fifth click. A count that is held has two times: what ends on it or lands
/// on it does so when it comes, what begins with it begins when it is over.
/// </summary>
/// <param name="Pulse">How fast the counts of the routine go by.</param>
public sealed record ShowClock(Pulse Pulse)
{
    /// <summary>Counts before count 1.</summary>
    public const int CountIn = 4;

    private const int Starts = -CountIn * HalfCounts.PerCount;

    /// <summary>Half counts from the start of the clock to a moment; what comes before the count-in is put at the start.</summary>
    public static int HalfCountsAt(int moment) => Math.Max(0, moment - Starts);

    /// <summary>The time at which a moment comes.</summary>
    /// <param name="moment">Half counts from count 1.</param>
    public ExactSeconds At(int moment) => ExactSeconds.Between(Pulse, Starts, Math.Max(Starts, moment));

    /// <summary>The time at which it goes on from a moment: later than it comes where it is held.</summary>
    public ExactSeconds From(int moment) => Pulse.HoldAt(moment) is { } hold ? At(moment) + ExactSeconds.Of(Pulse, hold) : At(moment);

    /// <summary>Clicks between two moments, in order: the moment and the time. A held count clicks as it comes and as it goes on, and on every count in between where the music goes on.</summary>
    public IEnumerable<(int Moment, ExactSeconds Time)> Clicks(int to)
    {
        for (var moment = Starts; moment < to; moment += HalfCounts.PerCount)
        {
            var at = At(moment);
            yield return (moment, at);
            if (Pulse.HoldAt(moment) is { } hold)
            {
                for (var i = 1; i < hold.Counts; i++)
                {
                    yield return (moment, at + ExactSeconds.Of(HalfCounts.FromCounts(i), Pulse.At(moment)));
                }

                yield return (moment, From(moment));
            }
        }
    }

    /// <summary>Seconds from the start of the clock to a moment between half counts; to one that is held, as it comes.</summary>
    public double SecondsAt(double moment)
    {
        if (Pulse.IsEven)
        {
            return Math.Max(0, moment - Starts) * 30 / Pulse.Fastest.CountsPerMinute;
        }

        var whole = (int)Math.Floor(Math.Max(Starts, moment));
        var into = Math.Max(Starts, moment) - whole;
        return into == 0 ? Seconds(At(whole)) : Seconds(From(whole)) + (into * 30 / Pulse.At(whole).CountsPerMinute);
    }

    /// <summary>Seconds at which it goes on from a moment that is held.</summary>
    public double SecondsFrom(int moment) => Seconds(From(moment));

    /// <summary>The moment in half counts that many seconds after the start of the clock.</summary>
    public double MomentAt(double seconds)
    {
        if (Pulse.IsEven)
        {
            return (seconds * Pulse.Fastest.CountsPerMinute / 30) + Starts;
        }

        var (moment, left) = (Starts, Math.Max(0, seconds));
        while (true)
        {
            if (Pulse.HoldAt(moment) is { } hold && (left -= (double)Pulse.SecondsOf(hold)) < 0)
            {
                return moment;
            }

            var lasts = 30.0 / Pulse.At(moment).CountsPerMinute;
            if (left < lasts)
            {
                return moment + (left / lasts);
            }

            (moment, left) = (moment + 1, left - lasts);
        }
    }

    private static double Seconds(ExactSeconds time) => (double)time.Numerator / (double)time.Denominator;
}
