using Generator.Library;
using Generator.Library.Reading;
using Generator.Library.Words;
using Newtonsoft.Json.Linq;

namespace Generator.Library.Loading;

/// <summary>Reads <c>notebook.json</c>. That the ids in it are those of records is checked once all files are read.</summary>
internal static class NotebookReader
{
    /// <summary>The notebook; worthless once a problem has been added.</summary>
    public static Notebook Read(ObjectReader root)
    {
        var meanings = new List<(string Written, IReadOnlyList<string> Means)>();
        foreach (var meaning in root.Objects("meanings"))
        {
            var means = meaning.Texts("means");
            meanings.AddRange(meaning.Texts("written").Select(w => (w, means)));
            if (means.Count == 0)
            {
                meaning.Missing("means", "\"means\": [\"take\"]");
            }

            meaning.Finish();
        }

        var notebook = new Notebook(root.Texts("filler"), Forms(root), meanings, Said(root, "attacks"), Said(root, "techniques"))
        {
            Acting = root.Texts("acting").ToHashSet(StringComparer.Ordinal),
            Meeting = root.Texts("meeting").ToHashSet(StringComparer.Ordinal),
            Marked = root.Texts("marked").ToHashSet(StringComparer.Ordinal),
            Contrary = root.Texts("contrary").Select(p => p.Split(' ')).Where(p => p.Length == 2).SelectMany(p => new[] { (p[0], p[1]), (p[1], p[0]) }).ToLookup(p => p.Item1, p => p.Item2, StringComparer.Ordinal),
        };
        root.Finish();
        return notebook;
    }

    /// <summary>Every id in the notebook is one of the library's.</summary>
    public static void Check(ObjectReader root, Records records)
    {
        Known(root, "attacks", records.Attacks.Select(a => a.Record.BaseId));
        Known(root, "techniques", records.Techniques.Select(t => t.Record.BaseId));
    }

    private static void Known(ObjectReader root, string field, IEnumerable<string> ids)
    {
        var known = ids.ToHashSet(StringComparer.Ordinal);
        foreach (var name in Names(root, field).Where(n => !known.Contains(n)))
        {
            root.Object(field)!.Refuse(name, $"The library has no record {FieldText.Quote(name)}.", NearestWords.Maybe(name, known, "Maybe it was renamed."));
        }
    }

    private static Dictionary<string, string> Forms(ObjectReader root)
    {
        var forms = new Dictionary<string, string>(StringComparer.Ordinal);
        if (root.Object("forms") is { } source)
        {
            foreach (var name in Names(root, "forms"))
            {
                forms[name] = source.Text(name) ?? name;
            }
        }

        return forms;
    }

    private static Dictionary<string, IReadOnlyList<string>> Said(ObjectReader root, string field)
    {
        var said = new Dictionary<string, IReadOnlyList<string>>(StringComparer.Ordinal);
        if (root.Object(field) is { } source)
        {
            foreach (var name in Names(root, field))
            {
                said[name] = source.Texts(name);
            }
        }

        return said;
    }

    private static IEnumerable<string> Names(ObjectReader root, string field) =>
        root.Token(field) is JObject names ? names.Properties().Select(p => p.Name) : [];
}
