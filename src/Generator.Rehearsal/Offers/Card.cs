using Generator.Domain.Sketches;
using Generator.Library;
using Generator.Rehearsal.Documents;
using Generator.Rules;

namespace Generator.Rehearsal.Offers;

/// <summary>One offer beside the fight: what it would be, and what the audit says of that.</summary>
/// <param name="Name">What taking it is called, to stand behind "Undo:".</param>
/// <param name="After">The fight with it.</param>
/// <param name="Scene">Its brief, worked out.</param>
/// <param name="Seen">What is found in it.</param>
/// <param name="Pairs">The fight as it is, and as it would be, side by side.</param>
public sealed record Card(string Name, Sketch After, Scene Scene, Seen Seen, IReadOnlyList<Pair> Pairs)
{
    /// <summary>What had to give, with the reason; empty where all that was said stands.</summary>
    public IReadOnlyList<string> Gave { get; init; } = [];

    /// <summary>A remark on the offer; empty for none.</summary>
    public string Remark { get; init; } = string.Empty;

    public static Card Of(string name, Document.State before, Sketch after, Book book)
    {
        var scene = ReferenceEquals(after.Brief, before.Sketch.Brief) ? before.Scene : new Scene(after.Brief, book);
        return new Card(name, after, scene, Seen.Of(scene, after), SideBySide.Of(before.Sketch, after));
    }
}
