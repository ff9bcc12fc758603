using Generator.Domain;
using Generator.Paperwork.Text;

namespace Generator.Paperwork.SafetyPapers;

/// <summary>Who signs for a routine: the same on its cover and in its change log.</summary>
/// <param name="Role">In lower case.</param>
/// <param name="Who">Name of a performer; empty where the file names nobody.</param>
public sealed record Signer(string Role, string Who)
{
    private static readonly string[] Answerable = ["fight coordinator", "fight captain", "director", "safety"];

    /// <summary>Those who answer for the fight, then everybody in it, hero first and an ally last.</summary>
    public static IReadOnlyList<Signer> Of(Brief brief) =>
    [
        .. Answerable.Select(r => new Signer(r, string.Empty)),
        .. AllyWords.Everybody(brief).Select(p => new Signer("performer", Page.Clean(p.Name))),
    ];
}
