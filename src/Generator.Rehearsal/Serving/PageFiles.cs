using Generator.Paperwork.Html;

namespace Generator.Rehearsal.Serving;

/// <summary>The files of the page, all built in: nothing is read from a folder, so no path leads anywhere.</summary>
internal static class PageFiles
{
    private static readonly Dictionary<string, (Func<string> Text, string Type)> Files = new(StringComparer.Ordinal)
    {
        ["/"] = (() => BuiltIn("index.html").Replace("<!-- patterns -->", FloorPlate.Patterns, StringComparison.Ordinal), "text/html; charset=utf-8"),
        ["/live.css"] = (() => BuiltIn("live.css"), "text/css; charset=utf-8"),
        ["/page.css"] = (() => FloorPlate.Style, "text/css; charset=utf-8"),
        ["/playback.js"] = (() => PlayerPlate.Script + "export { playback };\n", "text/javascript; charset=utf-8"),
    };

    private static readonly string[] Scripts = ["live.js", "talk.js", "make.js", "chosen.js", "grid.js", "floor.js", "time.js", "player.js", "cards.js", "curve.js", "cast.js", "fields.js", "stuff.js", "placing.js", "compare.js"];

    static PageFiles()
    {
        foreach (var script in Scripts)
        {
            Files["/" + script] = (() => BuiltIn(script), "text/javascript; charset=utf-8");
        }
    }

    /// <summary>Text and type of a file; null where there is none.</summary>
    public static (string Text, string Type)? Find(string path) => Files.TryGetValue(path, out var file) ? (file.Text(), file.Type) : null;

    private static string BuiltIn(string name)
    {
        using var stream = typeof(PageFiles).Assembly.GetManifestResourceStream("Page." + name) ?? throw new InvalidOperationException($"{name} is not built in.");
        using var reader = new StreamReader(stream);
        return reader.ReadToEnd();
    }
}
