using Generator.Domain;
using Generator.Rules.Replaying;

namespace Generator.Paperwork.Teaching;

/// <summary>One line of a rehearsal day: a stretch of moves, at a speed, so many times.</summary>
/// <param name="What">What it is called: "phrase 2", "from the top to phrase 4", "the whole".</param>
/// <param name="First">Number of its first move, from 1.</param>
/// <param name="Last">Number of its last move.</param>
/// <param name="Speed">How fast.</param>
/// <param name="Wanted">Repeats that would be wanted.</param>
/// <param name="Repeats">Repeats that everybody's falls and effort of the day allow; 0 means that it is only marked.</param>
public sealed record Drill(string What, int First, int Last, Speed Speed, int Wanted, int Repeats)
{
    /// <summary>Whose day is used up, when there are fewer repeats than wanted.</summary>
    public string HeldBackBy { get; init; } = string.Empty;

    /// <summary>How long all repeats take; what is only marked is gone through once.</summary>
    public ExactSeconds TimeOf(IReadOnlyList<Step> steps, Pulse pulse)
    {
        var (from, to) = new Phrase(0, First, Last).SpanOf(steps);
        return Speed.TimeOf(from, to, pulse).Times(Math.Max(1, Repeats), 1);
    }
}
