using Generator.Domain;
using Generator.Library;
using Generator.Library.Words;

namespace Generator.Paperwork.Text;

/// <summary>What the library holds, by family; sided records once.</summary>
public static class LibraryList
{
    /// <summary>Words that name a part of the library: the families, then attack, reaction and combination.</summary>
    public static IReadOnlyList<string> Parts { get; } = [.. Enum.GetValues<Family>().Select(Words.Of), "attack", "reaction", "combination"];

    /// <summary>The list, or one part of it; null part is all.</summary>
    public static string Of(Book book, string? part) => Of(book, part, static _ => true, all: true);

    /// <summary>The techniques that are taken, by family; attacks, reactions and combinations as well when <paramref name="all"/>.</summary>
    public static string Of(Book book, string? part, Func<Technique, bool> takes, bool all)
    {
        var text = Enum.GetValues<Family>()
            .Select(f => (Part: Words.Of(f), Rows: Rows(book.Techniques.Where(t => t.Family == f && takes(t)).Select(t => (t.BaseId, t.Name, t.Side, t.Aliases)))))
            .Append((Part: "attack", Rows: Rows(book.Attacks.Select(a => (a.BaseId, a.Name, a.Side, a.Aliases)))))
            .Append((Part: "reaction", Rows: Rows(book.Reactions.Select(r => (r.Id, r.Name, (Side?)null, r.Aliases)))))
            .Append((Part: "combination", Rows: Rows(book.Combinations.Select(c => (c.Id, c.Name, (Side?)null, c.Aliases)))))
            .Where(p => all || p.Part is not ("attack" or "reaction" or "combination"))
            .Where(p => part is null || string.Equals(p.Part, part, StringComparison.Ordinal))
            .SelectMany(p => Part(p.Part, p.Rows));
        return string.Concat(text.Select(l => l + "\n"));
    }

    /// <summary>"304 techniques (598 with both sides), 40 attacks, 50 reactions, 10 stances".</summary>
    public static string Size(Book book)
    {
        static string Both(IEnumerable<string> ids) => Words.Number(ids.Distinct(StringComparer.Ordinal).Count());
        return $"{Both(book.Techniques.Select(t => t.BaseId))} techniques ({Words.Number(book.Techniques.Count)} with both sides), {Both(book.Attacks.Select(a => a.BaseId))} attacks "
            + $"({Words.Number(book.Attacks.Count)} with both sides), {Words.Number(book.Reactions.Count)} reactions, {Words.Number(book.Stances.Stances.Count)} stances";
    }

    /// <summary>What a search found, best first.</summary>
    public static string Of(IReadOnlyList<LibrarySearch.Hit> hits) =>
        string.Concat(hits.SelectMany(h => Page.Row(2, (h.Id, 26), (h.Kind, 9), (h.Name, 20), (string.Join(", ", h.Aliases), 17))).Select(l => l + "\n"));

    private static IEnumerable<string> Part(string part, List<(string Id, string Name, string Aliases)> rows) =>
        [$"{part.ToUpperInvariant()} ({Words.Number(rows.Count)})", .. rows.SelectMany(r => Page.Row(2, (r.Id, 26), (r.Name, 24), (r.Aliases, 24))), string.Empty];

    private static List<(string Id, string Name, string Aliases)> Rows(IEnumerable<(string Id, string Name, Side? Side, IReadOnlyList<string> Aliases)> records) =>
        [.. records.Where(r => r.Side is not Side.Right || !records.Any(o => o.Side == Side.Left && string.Equals(o.Id, r.Id, StringComparison.Ordinal)))
            .Select(r => (r.Id, r.Side is null ? r.Name : SideWords.WithoutSide(r.Name, r.Side) + ", left or right", string.Join(", ", r.Aliases.Select(SideWords.WithoutSide).Distinct(StringComparer.Ordinal))))];
}
