using Generator.Domain;
using Generator.Paperwork.Text;

namespace Generator.Cli.Work;

/// <summary>What a fight with a second hero cannot be used for yet: everything that searches, and what shows a fight as one hero's.</summary>
internal static class Allies
{
    /// <summary>Refuses a fight with an ally.</summary>
    /// <param name="command">The command; null where it is said by several.</param>
    /// <param name="brief">The brief, or that of the routine.</param>
    /// <param name="cannot">What is not done: "drafts nothing".</param>
    /// <exception cref="RefusedException">There is an ally.</exception>
    public static void Refuse(string? command, Brief brief, string cannot)
    {
        if (AllyWords.WhyNot(brief, cannot) is var (wrong, maybe))
        {
            throw new RefusedException(command is null ? wrong : $"generator {command}: {wrong}", maybe);
        }
    }
}
