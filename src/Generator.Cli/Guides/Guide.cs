using Generator.Library.Reading;
using Generator.Rules.Judging;

namespace Generator.Cli.Guides;

/// <summary>The guides, in Markdown: what each kind of file may hold, what each command gives. The pages of the rules are asked for in the same way.</summary>
internal static class Guide
{
    private static readonly BuiltInPages Pages = new(typeof(Guide).Assembly, "Guides.");

    /// <summary>The topics in the order in which a reader needs them, with what each is about.</summary>
    public static IReadOnlyList<(string Topic, string About)> Topics { get; } =
        [.. ((string[])["notes", "rehearse", "brief", "limits", "routine", "changes", "papers", "library", "running"]).Select(t => (t, AboutOf(Pages.Find(t)!))), ("rules", "what the audit looks at")];

    /// <summary>The page of a topic or of a rule; null when there is none.</summary>
    public static string? Find(string topic) => string.Equals(topic, "rules", StringComparison.Ordinal)
        ? Rules()
        : Pages.Find(topic) is { } page ? FieldTables.Fill(page) : RulePages.Find(topic);

    /// <summary>Every word that <see cref="Find"/> knows.</summary>
    public static IEnumerable<string> Known => [.. Topics.Select(t => t.Topic), .. RulePages.Ids];

    private static string AboutOf(string page) => page[(page.IndexOf(':', StringComparison.Ordinal) + 1)..page.IndexOf('\n', StringComparison.Ordinal)].Trim();

    private static string Rules() =>
        "# Rules: what the audit looks at\n\nUnsafe and broken findings never occur in a draft; each rough one costs points. `generator guide reset-window` shows the page of a rule.\n\n| rule | worst | says |\n|---|---|---|\n"
        + string.Concat(RuleBook.All.Select(r => $"| `{r.Id}` | {EnumWords.Of(r.Worst)} | {r.Title} |\n"));
}
