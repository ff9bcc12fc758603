using System.Globalization;
using Generator.Library;
using Generator.Library.Files.Notes;
using Generator.Library.Words;
using Generator.Paperwork.Text;

namespace Generator.Cli.Changes;

/// <summary>What each piece of a sketch was taken for, line by line.</summary>
internal static class UnderstoodText
{
    /// <summary>Meanings of one piece of text that are named.</summary>
    private const int Named = 4;

    /// <param name="read">The sketch.</param>
    /// <param name="book">The library.</param>
    /// <param name="chosen">The id, of those that a piece may mean, that a routine has; null where there is no routine.</param>
    public static IEnumerable<string> Of(ReadSketch read, Book book, Func<Understood, string?>? chosen = null) =>
        ["UNDERSTOOD", .. read.Understood.SelectMany(u => Page.Hang(Line(u.Line), $"\"{Page.Clean(u.Text)}\" {Meaning(u, book, chosen?.Invoke(u))}"))];

    /// <summary>The beginning of what is said of one line of a sketch.</summary>
    public static string Line(int line) => string.Create(CultureInfo.InvariantCulture, $"  line {line,-3} ");

    private static string Meaning(Understood understood, Book book, string? chosen)
    {
        if (understood.IsPlain)
        {
            return "- " + string.Join(", ", understood.As);
        }

        var names = understood.As.Select(id => Name(id, book)).Distinct(StringComparer.Ordinal).ToList();
        var more = names.Count > Named ? string.Create(CultureInfo.InvariantCulture, $" or {names.Count - Named} more") : string.Empty;
        IEnumerable<string> beside =
        [
            .. chosen is not null && names.Count > 1 ? [$"of these {Name(chosen, book)}"] : Array.Empty<string>(),
            .. understood.Also,
            .. understood.Unread.Count > 0 ? [$"nothing is taken of {string.Join(", ", understood.Unread.Select(u => $"\"{Page.Clean(u)}\""))}"] : Array.Empty<string>(),
        ];
        return "as " + string.Join(", ", names.Take(Named)) + more + (understood.IsGuess ? " (best fits)" : string.Empty) + string.Concat(beside.Select(b => "; " + b));
    }

    private static string Name(string id, Book book) =>
        SideWords.WithoutSide(book.TechniqueIndex(id) is >= 0 and var t ? book.Techniques[t].Name : book.AttackIndex(id) is >= 0 and var a ? book.Attacks[a].Name : book.Reaction(id).Name);
}
