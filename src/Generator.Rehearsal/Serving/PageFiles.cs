using Generator.Paperwork.Html;

namespace Generator.Rehearsal.Serving;

/// <summary>The files of the page, all built in: nothing is read from a folder, so no path leads anywhere.</summary>
internal static class PageFiles
{
    private static readonly Dictionary<string, (string Name, string Type)> Files = new(StringComparer.Ordinal)
    {
        ["/"] = ("index.html", "text/html; charset=utf-8"),
        ["/live.css"] = ("live.css", "text/css; charset=utf-8"),
        ["/live.js"] = ("live.js", "text/javascript; charset=utf-8"),
        ["/talk.js"] = ("talk.js", "text/javascript; charset=utf-8"),
        ["/grid.js"] = ("grid.js", "text/javascript; charset=utf-8"),
        ["/floor.js"] = ("floor.js", "text/javascript; charset=utf-8"),
        ["/page.css"] = (string.Empty, "text/css; charset=utf-8"),
    };

    /// <summary>Text and type of a file; null where there is none.</summary>
    public static (string Text, string Type)? Find(string path)
    {
        if (!Files.TryGetValue(path, out var file))
        {
            return null;
        }

        return (file.Name.Length == 0 ? FloorPlate.Style : BuiltIn(file.Name), file.Type);
    }

    private static string BuiltIn(string name)
    {
        using var stream = typeof(PageFiles).Assembly.GetManifestResourceStream("Page." + name) ?? throw new InvalidOperationException($"{name} is not built in.");
        using var reader = new StreamReader(stream);
        var text = reader.ReadToEnd();
        return name == "index.html" ? text.Replace("<!-- patterns -->", FloorPlate.Patterns, StringComparison.Ordinal) : text;
    }
}
