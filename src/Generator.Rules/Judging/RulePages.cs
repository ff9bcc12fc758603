using System.Reflection;
using System.Text;

namespace Generator.Rules.Judging;

/// <summary>The help pages of the rules, in Markdown, one for each id.</summary>
public static class RulePages
{
    private const string Prefix = "Pages.";
    private const string Ending = ".md";

    private static readonly Assembly Home = typeof(RulePages).Assembly;

    /// <summary>Ids that have a page, sorted.</summary>
    public static IReadOnlyList<string> Ids { get; } =
    [
        .. Home.GetManifestResourceNames()
            .Where(n => n.StartsWith(Prefix, StringComparison.Ordinal) && n.EndsWith(Ending, StringComparison.Ordinal))
            .Select(n => n[Prefix.Length..^Ending.Length])
            .Order(StringComparer.Ordinal),
    ];

    /// <summary>The whole page of a rule, lines ending in a line feed; null when no rule has this id.</summary>
    public static string? Find(string id)
    {
        using var stream = Home.GetManifestResourceStream(Prefix + id + Ending);
        if (stream is null)
        {
            return null;
        }

        using var reader = new StreamReader(stream, Encoding.UTF8);
        return reader.ReadToEnd().ReplaceLineEndings("\n");
    }

    /// <summary>The whole page of a rule.</summary>
    /// <exception cref="ArgumentException">No rule has this id.</exception>
    public static string Read(string id) => Find(id) ?? throw new ArgumentException($"There is no rule called {id}.", nameof(id));
}
