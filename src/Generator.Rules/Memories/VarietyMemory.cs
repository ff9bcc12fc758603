using Generator.Domain;

namespace Generator.Rules.Memories;

/// <summary>What variety remembers.</summary>
/// <param name="Last">The techniques of the last moves, oldest first, at most <see cref="Length"/>.</param>
public sealed record VarietyMemory(IReadOnlyList<Technique> Last)
{
    /// <summary>How many moves back the rule looks.</summary>
    public const int Length = 7;

    public static readonly VarietyMemory Empty = new([]);
}
