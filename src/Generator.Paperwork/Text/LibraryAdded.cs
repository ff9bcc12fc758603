using Generator.Domain;
using Generator.Library;
using Generator.Rules.Connecting;

namespace Generator.Paperwork.Text;

/// <summary>What a file of the user's own adds to the library, and how it connects.</summary>
public static class LibraryAdded
{
    /// <param name="before">The library without the file.</param>
    /// <param name="after">The library with it.</param>
    /// <param name="ends">Dead ends that the file brings.</param>
    public static string Of(Book before, Book after, IReadOnlyList<DeadEnd> ends)
    {
        List<string> cards =
        [
            .. after.Techniques.Where(t => before.TechniqueIndex(t.Id) < 0).DistinctBy(t => t.BaseId, StringComparer.Ordinal).Select(t => LibraryCard.Of(t, after) + Lonely(t, after)),
            .. after.Attacks.Where(a => before.AttackIndex(a.Id) < 0).DistinctBy(a => a.BaseId, StringComparer.Ordinal).Select(a => LibraryCard.Of(a, after)),
            .. after.Reactions.Where(r => before.ReactionIndex(r.Id) < 0).Select(r => LibraryCard.Of(r, after)),
        ];
        var dead = ends.Count == 0 ? "DEAD ENDS  none\n" : string.Concat(LibraryCheck.Ends(ends).Select(l => l + "\n"));
        return string.Join('\n', cards.Append(dead));
    }

    private static string Lonely(Technique technique, Book book)
    {
        var alone = !technique.HasNoTarget && technique.Answers.IsEmpty && LibraryNeighbours.In(book).Before(technique.BaseId).Count == 0;
        return LibraryNeighbours.Of(technique, book) + (alone && !technique.Needs.Contains(Posture.Ready) ? "  Nothing leads to it: it answers no attack, and no technique leaves anybody so.\n" : string.Empty);
    }
}
