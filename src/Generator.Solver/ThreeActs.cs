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

    /// <summary>The brief with three acts; as it is where it has acts, is too short, or wants no setback. Setbacks that it counts stand in the second act, those that it cannot hold in the first.</summary>
    public static Brief In(Brief brief)
    {
        var isLong = brief.Length is { } length && (length.Moves ?? 0) + ((length.Counts ?? 0) * FewestMoves / FewestCounts) >= FewestMoves;
        if (brief.Acts.Count > 0 || !isLong || brief.Setbacks == 0)
        {
            return brief;
        }

        var all = brief.Setbacks ?? 1;
        var early = all / 3;
        return brief with
        {
            Setbacks = all,
            Acts = [new Act(First, HeroStanding.OnTop, early), new Act(Second, HeroStanding.InTrouble, all - early), new Act(100 - First - Second, HeroStanding.OnTop, 0)],
        };
    }
}
