using Generator.Domain;
using Generator.Library;
using Generator.Library.Reading;

namespace Generator.Library.Words;

/// <summary>Finds records by what people remember of them: ids, names, notebook words and hazards, with typing mistakes.</summary>
public static class LibrarySearch
{
    /// <summary>What was found.</summary>
    /// <param name="Kind">A family, attack or reaction.</param>
    /// <param name="Id">Id without side.</param>
    /// <param name="Name">Name without side.</param>
    /// <param name="Aliases">Notebook words.</param>
    public sealed record Hit(string Kind, string Id, string Name, IReadOnlyList<string> Aliases);

    /// <summary>The records that fit best, best first; techniques before attacks before reactions where they fit alike.</summary>
    public static IReadOnlyList<Hit> Find(Book book, string query, int most = 15) =>
        [.. RankedRecords.Techniques(book).Find(query, most).Select(r => (r.Fit, Hit: new Hit(EnumWords.Of(r.Record.Family), r.Record.BaseId, SideWords.WithoutSide(r.Record.Name, r.Record.Side), r.Record.Aliases)))
            .Concat(RankedRecords.Attacks(book).Find(query, most).Select(r => (r.Fit, Hit: new Hit("attack", r.Record.BaseId, SideWords.WithoutSide(r.Record.Name, r.Record.Side), r.Record.Aliases))))
            .Concat(RankedRecords.Reactions(book).Find(query, most).Select(r => (r.Fit, Hit: new Hit("reaction", r.Record.Id, r.Record.Name, r.Record.Aliases))))
            .OrderByDescending(r => r.Fit)
            .Take(most)
            .Select(r => r.Hit)];
}
