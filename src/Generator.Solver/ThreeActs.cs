using Generator.Domain;

namespace Generator.Solver;

/// <summary>The acts of a fight whose brief does not tell a story: on top, in trouble, and the way back. Common practice, no source.</summary>
public static class ThreeActs
{
    /// <summary>Moves from which a fight is long enough for them, and counts where the brief says no moves.</summary>
    private const int FewestMoves = 16;

    private const int FewestCounts = 32;

    private const int First = 45;

    private const int Second = 35;

    /// <summary>The acts; none where the fight is too short, or no setback is wanted. Of its setbacks every third stands in the first act, the others in the second.</summary>
    /// <param name="brief">The brief.</param>
    /// <param name="fewest">Setbacks that its hero moments are or need.</param>
    public static IReadOnlyList<Act> For(Brief brief, int fewest)
    {
        var isLong = brief.Length is { } length && (length.Moves ?? 0) + ((length.Counts ?? 0) * FewestMoves / FewestCounts) >= FewestMoves;
        if (!isLong || brief.Setbacks == 0)
        {
            return [];
        }

        var all = brief.Setbacks ?? Math.Max(1, fewest);
        var early = all / 3;
        return [new Act(First, HeroStanding.OnTop, early), new Act(Second, HeroStanding.InTrouble, all - early), new Act(100 - First - Second, HeroStanding.OnTop, 0)];
    }
}
