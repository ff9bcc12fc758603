using Generator.Benchmarks.Filling;
using Generator.Domain;
using Generator.Library;

namespace Generator.Benchmarks.Peers;

/// <summary>What the other ways are asked about a stored brief: to draft it, or to fill in a routine of it of which only the techniques are said.</summary>
internal static class Question
{
    public const string Drafting = "drafting";

    public const string Filling = "filling";

    /// <summary>Makes the model when it is called, so that this can be timed; a routine that it needs is drafted beforehand.</summary>
    /// <exception cref="InvalidOperationException">There is no routine to fill in.</exception>
    public static Func<PlainModel> Of(StoredBrief stored, string asked)
    {
        if (!string.Equals(asked, Filling, StringComparison.Ordinal))
        {
            return () => PlainModel.Of(stored.Brief, stored.Book, stored.Family.Moves);
        }

        var routine = FillRun.Draft(stored.Name, stored.Book) ?? throw new InvalidOperationException($"{stored.Name} is not drafted.");
        return () => Filled(routine, stored.Book);
    }

    private static PlainModel Filled(Routine routine, Book book)
    {
        var plain = PlainModel.Of(routine.Brief, book, routine.Moves.Count, 0);
        foreach (var slot in plain.Model.Slots)
        {
            var said = book.TechniqueIndex(routine.Moves[slot.Index].Technique!);
            plain.Model.Cp.Model.Add(plain.Model.OverUses(slot, u => u.Index == said ? 1 : 0) == 1);
        }

        return plain;
    }
}
