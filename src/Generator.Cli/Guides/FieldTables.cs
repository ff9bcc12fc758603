using System.Text.RegularExpressions;
using Generator.Library;
using Generator.Library.Loading;
using Newtonsoft.Json.Linq;

namespace Generator.Cli.Guides;

/// <summary>Puts the fields of a library record where a guide asks for them: <c>&lt;!-- fields: techniques technique --&gt;</c>. What each means is said once, in its schema.</summary>
internal static partial class FieldTables
{
    private const int MostWords = 14;

    public static string Fill(string page) => Wanted().Replace(page, m => Table(m.Groups[1].Value, m.Groups[2].Value));

    private static string Table(string schema, string record)
    {
        var fields = (JObject)Schema(schema).SelectToken($"definitions.{record}")!;
        var required = fields["required"]!.Values<string>().ToHashSet(StringComparer.Ordinal);
        return "| field | meaning |\n|---|---|\n" + string.Concat(Rows((JObject)fields["properties"]!, string.Empty, required).Select(r => $"| `{r.Name}` | {r.Words} |\n"));
    }

    private static IEnumerable<(string Name, string Words)> Rows(JObject properties, string prefix, HashSet<string?> required)
    {
        foreach (var (name, field) in properties.Properties().Select(p => (p.Name, (JObject)p.Value)))
        {
            yield return (prefix + name, Words(field) + (required.Contains(name) ? " Required." : string.Empty));
            foreach (var inner in field["properties"] is JObject deeper ? Rows(deeper, $"{prefix}{name}.", []) : [])
            {
                yield return inner;
            }
        }
    }

    /// <summary>What the schema says of a field, with its words where they are few.</summary>
    private static string Words(JObject field)
    {
        var shared = ((string?)field["$ref"])?.Split('/')[^1];
        var said = shared is null ? field : (JObject)Schema("words").SelectToken($"definitions.{shared}")!;
        var words = said["enum"] is JArray { Count: <= MostWords } known ? " One of " + string.Join(", ", known.Select(w => $"`{w}`")) + "." : string.Empty;
        return (string?)said["description"] + words;
    }

    private static JObject Schema(string name) => JObject.Parse(File.ReadAllText(Path.Combine(LibraryLoader.BundledFolder, "schema", name + ".schema.json")));

    [GeneratedRegex("<!-- fields: ([a-z]+) ([a-z]+) -->\n", RegexOptions.CultureInvariant)]
    private static partial Regex Wanted();
}
