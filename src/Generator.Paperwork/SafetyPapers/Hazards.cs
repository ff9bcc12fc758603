namespace Generator.Paperwork.SafetyPapers;

/// <summary>The hazards found in a routine: from its moves, reactions and attacks, the floor, the cast and the planned runs.</summary>
public static class Hazards
{
    /// <summary>The worst first; equals in the order falls, blows, holds, ways from mark to mark, floor, props, people.</summary>
    public static IReadOnlyList<Hazard> Of(PaperSource source)
    {
        var find = new Finder(source);
        IEnumerable<Hazard> all = [.. FallHazards.Of(find), .. BlowHazards.Of(find), .. HoldHazards.Of(find), .. TravelHazards.Of(find), .. FloorHazards.Of(find), .. PropHazards.Of(find), .. PeopleHazards.Of(find)];
        return [.. all.OrderByDescending(h => h.Level).ThenByDescending(h => (int)h.Harm + (int)h.Likelihood)];
    }
}
