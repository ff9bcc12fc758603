using Generator.Domain;

namespace Generator.Rules;

/// <summary>The arc asked for: phases of equal length, the greatest weight wanted in each, and the phases in which a peak is wanted.</summary>
public sealed class ArcShape
{
    /// <summary>Weight from which a move is a peak.</summary>
    public const int PeakFrom = 4;

    private readonly Length length;

    private ArcShape(Length length, IReadOnlyList<int> caps, IReadOnlyList<IReadOnlyList<int>> peaks)
    {
        this.length = length;
        Caps = caps;
        Peaks = peaks;
    }

    /// <summary>Greatest weight that fits each phase.</summary>
    public IReadOnlyList<int> Caps { get; }

    /// <summary>For each peak wanted, the phases of which one must have it.</summary>
    public IReadOnlyList<IReadOnlyList<int>> Peaks { get; }

    /// <summary>The shape that a brief asks for; null when the arc is free, or the brief gives no length to lay it over.</summary>
    public static ArcShape? Of(Brief brief) => brief.Length is not { } length || (length.Counts is null && length.Moves is null)
        ? null
        : brief.Arc switch
        {
            Arc.Rising => new ArcShape(length, [3, 4, 5], [[2]]),
            Arc.Even => new ArcShape(length, [4], []),
            Arc.TwoPeaks => new ArcShape(length, [3, 5, 3, 5, 5], [[1], [3, 4]]),
            _ => null,
        };

    /// <summary>Phase of a move.</summary>
    /// <param name="start">Its moment in half counts, which decides where the length is given in counts.</param>
    /// <param name="index">Its number from 0, which decides where it is given in moves alone.</param>
    public int PhaseOf(int start, int index)
    {
        var phases = Caps.Count;
        var phase = length.Counts is { } counts ? phases * start / (counts * HalfCounts.PerCount) : phases * index / length.Moves!.Value;
        return Math.Clamp(phase, 0, phases - 1);
    }
}
