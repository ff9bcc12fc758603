using Generator.Domain;

namespace Generator.Paperwork.HandOffs;

/// <summary>
/// The clock that click, MIDI and cue list share: it starts with a count-in of four counts, so that count 1 comes at the fifth click.
/// </summary>
/// <param name="Tempo">Tempo of the routine.</param>
public sealed record ShowClock(Tempo Tempo)
{
    /// <summary>Counts before count 1.</summary>
    public const int CountIn = 4;

    /// <summary>Half counts from the start of the clock to a moment; what comes before the count-in is put at the start.</summary>
    public static int HalfCountsAt(int moment) => Math.Max(0, moment + (CountIn * HalfCounts.PerCount));

    /// <summary>The time of a moment.</summary>
    /// <param name="moment">Half counts from count 1.</param>
    public ExactSeconds At(int moment) => ExactSeconds.Of(new HalfCounts(HalfCountsAt(moment)), Tempo);

    /// <summary>Seconds from the start of the clock to a moment between half counts.</summary>
    public double SecondsAt(double moment) => Math.Max(0, moment + (CountIn * HalfCounts.PerCount)) * 60 / (Tempo.CountsPerMinute * HalfCounts.PerCount);

    /// <summary>The moment in half counts that many seconds after the start of the clock.</summary>
    public double MomentAt(double seconds) => (seconds * Tempo.CountsPerMinute * HalfCounts.PerCount / 60) - (CountIn * HalfCounts.PerCount);
}
