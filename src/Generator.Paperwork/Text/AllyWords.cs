using Generator.Domain;

namespace Generator.Paperwork.Text;

/// <summary>What papers say of the second hero.</summary>
public static class AllyWords
{
    /// <summary>What is wrong, and what to try, where something that a program does is not done for a hero and an ally; null where there is no ally.</summary>
    /// <param name="brief">The brief.</param>
    /// <param name="cannot">What is not done: "drafts nothing".</param>
    public static (string Wrong, string Maybe)? WhyNot(Brief brief, string cannot) => brief.Ally is { } ally
        ? ($"{Page.Clean(ally.Part.Name)} fights beside {Page.Clean(brief.Hero.Name)}, and the program {cannot} for two yet: all searching moves one hero round one mark.",
            "Maybe write both parts as a routine, with a column \"by\", and have it audited and put on paper: generator audit, generator paperwork.")
        : null;

    /// <summary>"the ally, at 6 o'clock, 1.50 m from Ines's mark, facing 6 o'clock, left lead".</summary>
    public static string Opens(Brief brief, Ally ally) =>
        $"the ally, at {Words.Clock(ally.Bearing)}, {ally.Distance} from {Page.Clean(brief.Hero.Name)}'s mark, facing {Words.Clock(ally.Faces)}, {Words.Of(ally.Part.OpeningStance)}";

    /// <summary>Hero, attackers in their order, and the ally last where there is one.</summary>
    public static IEnumerable<Performer> Everybody(Brief brief) => [brief.Hero, .. brief.Attackers, .. brief.Ally is { } ally ? (Performer[])[ally.Part] : []];
}
