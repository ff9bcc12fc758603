using Generator.Figures.Bodies;

namespace Generator.Figures.Posing;

/// <summary>Both bodies at an instant.</summary>
/// <param name="Doer">Whoever does it; null in a picture of somebody alone.</param>
/// <param name="Other">The other one; null where there is none.</param>
/// <param name="Missing">How far the first thing aimed stays short of where it is aimed, beyond the planned gap; metres, 0 when it gets there.</param>
public sealed record Pair(Figure? Doer, Figure? Other, double Missing)
{
    /// <summary>Where they meet.</summary>
    public IReadOnlyList<Mark> Marks { get; init; } = [];
}
