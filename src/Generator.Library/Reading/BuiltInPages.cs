using System.Reflection;
using System.Text;

namespace Generator.Library.Reading;

/// <summary>Pages in Markdown that are built into a program, each under an id.</summary>
/// <param name="home">Where they are built in.</param>
/// <param name="prefix">What stands before the id in their names.</param>
public sealed class BuiltInPages(Assembly home, string prefix)
{
    private const string Ending = ".md";

    /// <summary>Ids that have a page, sorted.</summary>
    public IReadOnlyList<string> Ids { get; } =
    [
        .. home.GetManifestResourceNames()
            .Where(n => n.StartsWith(prefix, StringComparison.Ordinal) && n.EndsWith(Ending, StringComparison.Ordinal))
            .Select(n => n[prefix.Length..^Ending.Length])
            .Order(StringComparer.Ordinal),
    ];

    /// <summary>The whole page, lines ending in a line feed; null when none has this id.</summary>
    public string? Find(string id)
    {
        using var stream = home.GetManifestResourceStream(prefix + id + Ending);
        if (stream is null)
        {
            return null;
        }

        using var reader = new StreamReader(stream, Encoding.UTF8);
        return reader.ReadToEnd().ReplaceLineEndings("\n");
    }
}
