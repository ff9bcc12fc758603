using Generator.Domain;

namespace Generator.Solver;

/// <summary>What a draft takes for granted where the brief says nothing.</summary>
public static class DraftBrief
{
    /// <summary>The brief with everything filled in that a draft decides by default: everybody goes out, no setbacks, no pauses.</summary>
    public static Brief Complete(Brief brief) => brief with
    {
        Ending = brief.Ending ?? new Ending([.. brief.Attackers.Select(a => a.Name)], null),
        Setbacks = brief.Setbacks ?? 0,
        Pauses = brief.Pauses ?? 0,
    };
}
