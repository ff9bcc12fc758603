using Generator.Library.Reading;

namespace Generator.Rules.Judging;

/// <summary>The help pages of the rules, in Markdown, one for each id.</summary>
public static class RulePages
{
    private static readonly BuiltInPages Pages = new(typeof(RulePages).Assembly, "Pages.");

    /// <summary>Ids that have a page, sorted.</summary>
    public static IReadOnlyList<string> Ids => Pages.Ids;

    /// <summary>The whole page of a rule, lines ending in a line feed; null when no rule has this id.</summary>
    public static string? Find(string id) => Pages.Find(id);

    /// <summary>The whole page of a rule.</summary>
    /// <exception cref="ArgumentException">No rule has this id.</exception>
    public static string Read(string id) => Find(id) ?? throw new ArgumentException($"There is no rule called {id}.", nameof(id));
}
