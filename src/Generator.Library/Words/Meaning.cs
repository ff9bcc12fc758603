using Generator.Domain.Sketches;

namespace Generator.Library.Words;

/// <summary>What words of a notebook may mean.</summary>
/// <param name="Ids">Every id that they allow, sides included, the likeliest first; empty when they mean nothing in the library.</param>
/// <param name="Foot">Which limb, where they say so by the stance or by where the attacker is.</param>
/// <param name="IsGuess">They are no name of a record nor of a family: what is meant was ranked.</param>
/// <param name="Nearest">The three records nearest to words that mean nothing.</param>
public sealed record Meaning(IReadOnlyList<string> Ids, SketchFoot? Foot, bool IsGuess, IReadOnlyList<string> Nearest)
{
    /// <summary>Words that were taken for others that are spelt alike, with these.</summary>
    public IReadOnlyList<(string Written, string As)> Respelt { get; init; } = [];

    /// <summary>Words of the text of which nothing that was taken speaks.</summary>
    public IReadOnlyList<string> Unread { get; init; } = [];
}
