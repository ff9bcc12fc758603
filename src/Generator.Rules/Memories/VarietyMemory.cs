using Generator.Domain;

namespace Generator.Rules.Memories;

/// <summary>What variety remembers.</summary>
/// <param name="Last">The techniques of the last moves, oldest first, at most <see cref="Length"/>.</param>
public sealed record VarietyMemory(FixedList<Technique> Last)
{
    /// <summary>How many moves back the rule looks.</summary>
    public const int Length = 7;

    public static readonly VarietyMemory Empty = new([]);

    /// <summary>The memory after one more move; the oldest is forgotten.</summary>
    public VarietyMemory Then(Technique technique)
    {
        var kept = Math.Min(Last.Count, Length - 1);
        var next = new Technique[kept + 1];
        for (var i = 0; i < kept; i++)
        {
            next[i] = Last[Last.Count - kept + i];
        }

        next[kept] = technique;
        return new VarietyMemory(new FixedList<Technique>(next));
    }
}
