using System.Globalization;
using Generator.Domain;

namespace Generator.Paperwork.Teaching;

/// <summary>
/// A rung of the ladder: quarter, half, three-quarter and performance speed. Performance speed is the routine's own tempo, and everything else
/// is a share of that; the library's fewest seconds keep it from being faster than trained people can be.
/// </summary>
public readonly record struct Speed
{
    public static readonly Speed Quarter = new(1);

    public static readonly Speed Half = new(2);

    public static readonly Speed ThreeQuarter = new(3);

    public static readonly Speed Performance = new(4);

    /// <summary>From the slowest to the fastest.</summary>
    public static IReadOnlyList<Speed> Ladder { get; } = [Quarter, Half, ThreeQuarter, Performance];

    private Speed(int quarters) => Quarters = quarters;

    /// <summary>1 to 4.</summary>
    public int Quarters { get; }

    /// <summary>Below three-quarter speed falls are walked down and blows only shown, so that they cost nobody anything.</summary>
    public bool IsMarked => Quarters < ThreeQuarter.Quarters;

    /// <summary>How long a span lasts at this speed, exactly.</summary>
    public ExactSeconds TimeOf(HalfCounts span, Tempo tempo) => ExactSeconds.Of(span, tempo).Times(4, Quarters);

    /// <summary>How long it takes from one moment to another at this speed, exactly; what is held lasts as much longer.</summary>
    public ExactSeconds TimeOf(int from, int to, Pulse pulse) => ExactSeconds.Between(pulse, from, to).Times(4, Quarters);

    /// <summary>What the metronome is set to, in counts a minute: "75", or "67.5 to 90" where the tempo changes.</summary>
    public string MetronomeOf(Pulse pulse) => pulse.Slowest == pulse.Fastest ? Set(pulse.Fastest) : $"{Set(pulse.Slowest)} to {Set(pulse.Fastest)}";

    private string Set(Tempo tempo) => (tempo.CountsPerMinute * Quarters / 4m).ToString("0.##", CultureInfo.InvariantCulture);

    /// <summary>"quarter", "half", "three-quarter", "performance".</summary>
    public override string ToString() => Quarters switch
    {
        1 => "quarter",
        2 => "half",
        3 => "three-quarter",
        _ => "performance",
    };
}
