using System.Globalization;
using System.Text.RegularExpressions;
using Generator.Domain;
using Generator.Library.Reading;
using Newtonsoft.Json;
using Newtonsoft.Json.Linq;

namespace Generator.Library.Files;

/// <summary>
/// The brief inside a table: two columns whose rows each name a field, as messages about a brief name it (<c>attackers[0].height</c>), and say what stands there. An empty cell says nothing.
/// </summary>
internal static partial class BriefColumns
{
    public const string Field = "brief";
    public const string Value = "value";

    /// <summary>Named in the same column, though no field of the brief: the library with which the routine was made.</summary>
    private const string Library = "library";

    /// <summary>Names within names, at the most; no brief has more than four.</summary>
    private const int Deepest = 8;

    public static IReadOnlyList<string> All { get; } = [Field, Value];

    /// <summary>A row for each value of the brief.</summary>
    public static IEnumerable<JObject> Rows(Brief brief, string library = "")
    {
        var said = BriefWriter.Object(brief).DescendantsAndSelf().Where(t => t is JValue or JContainer { HasValues: false } and not JProperty).Select(t => (t.Path, Token: t));
        return (library.Length > 0 ? said.Prepend((Path: Library, Token: new JValue(library))) : said).Select(s => new JObject { [Field] = s.Path, [Value] = Cell(s.Path, s.Token) });
    }

    /// <summary>The row says something of the brief.</summary>
    public static bool IsOf(RoutineRow row) => row.Text(Field) is not null;

    /// <summary>The library that is named; empty for none.</summary>
    public static string LibraryOf(IEnumerable<RoutineRow> rows) => rows.FirstOrDefault(r => r.Text(Field) == Library)?.Text(Value) ?? string.Empty;

    /// <summary>What the rows say, as the object that a JSON file would hold.</summary>
    public static JObject Object(IReadOnlyList<RoutineRow> rows)
    {
        var leaves = new List<Leaf>();
        foreach (var row in rows.Where(r => r.Text(Field) != Library))
        {
            var path = row.Text(Field)!;
            if (RoutineTable.Columns.Except(All, StringComparer.Ordinal).FirstOrDefault(c => !string.IsNullOrEmpty(row.Text(c))) is { } other)
            {
                row.Refuse(Field, $"The row says something of the brief and fills the column {other} too.", "Maybe give each a row of its own.");
            }
            else if (!PathForm().IsMatch(path) || Steps(path) is not { Count: <= Deepest } steps)
            {
                row.Refuse(Field, $"{FieldText.Quote(path)} names no field of a brief.", "Maybe write it such as tempo, hero.skill or attackers[0].height.");
            }
            else if (row.Text(Value) is { } text)
            {
                leaves.Add(new Leaf(steps, row, Token(path, text)));
            }
        }

        return leaves.Count > 0 && Tree(leaves, 0) is JObject brief ? brief : [];
    }

    /// <summary>The row that a problem of the brief is about: the one of the field, of something in it, or of what it lies in.</summary>
    public static int Line(IReadOnlyList<RoutineRow> rows, string field)
    {
        for (var near = field; near.Length > 0; near = near[..Math.Max(0, near.LastIndexOfAny(['.', '[']))])
        {
            var met = rows.FirstOrDefault(r => r.Text(Field) is { } path && path.StartsWith(near, StringComparison.Ordinal) && (path.Length == near.Length || path[near.Length] is '.' or '['));
            if (met is not null)
            {
                return met.Line;
            }
        }

        return 0;
    }

    private static JToken Tree(IReadOnlyList<Leaf> leaves, int depth)
    {
        if (leaves.FirstOrDefault(l => l.Steps.Count == depth) is { } end)
        {
            foreach (var other in leaves.Where(l => l != end))
            {
                other.Row.Refuse(Field, $"{FieldText.Quote(other.Row.Text(Field)!)} is said twice.", "Maybe one of the two can go.");
            }

            return end.Token;
        }

        var parts = leaves.GroupBy(l => l.Steps[depth], StringComparer.Ordinal).ToList();
        if (parts.All(p => !Number(p.Key).HasValue))
        {
            return new JObject(parts.Select(p => new JProperty(p.Key, Tree([.. p], depth + 1))));
        }

        // Rows may have been sorted: they stand in the order of their numbers, none of which may be missing.
        var list = parts.OrderBy(p => Number(p.Key) ?? int.MaxValue).ToList();
        foreach (var (part, at) in list.Select((p, i) => (p, i)).Where(p => Number(p.p.Key) != p.i))
        {
            part.First().Row.Refuse(Field, $"Before {FieldText.Quote(part.First().Row.Text(Field)!)} the number {at} is missing.", "Maybe a row was lost, or lists are to be numbered from 0.");
        }

        return new JArray(list.Select(p => Tree([.. p], depth + 1)));
    }

    private static int? Number(string step) => int.TryParse(step, NumberStyles.None, CultureInfo.InvariantCulture, out var number) ? number : null;

    private static List<string> Steps(string path) => [.. path.Split('.', '[', ']').Where(s => s.Length > 0)];

    /// <summary>Numbers as they are; text as it is, unless it would be taken for something else: then in quotation marks.</summary>
    private static JValue Cell(string path, JToken token) => token switch
    {
        JValue { Type: JTokenType.String } text => Marked(path, (string)text!),
        JValue { Value: bool flag } => new JValue(flag ? "true" : "false"),
        JValue { Value: not null } number => (JValue)number.DeepClone(),
        _ => new JValue(token is JArray ? "[]" : token is JObject ? "{}" : "null"),
    };

    private static JValue Marked(string path, string text) => new(IsCount(path) || (Token(path, text) is { Type: JTokenType.String } token && (string?)token == text) ? text : JsonConvert.ToString(text));

    private static bool IsClock(string path) => path.EndsWith("bearing", StringComparison.Ordinal) || path.EndsWith("facing", StringComparison.Ordinal);

    /// <summary>Counts may be numbers as well as text.</summary>
    private static bool IsCount(string path) => path.EndsWith("entrance", StringComparison.Ordinal) || path.Contains(".counts[", StringComparison.Ordinal);

    private static JToken Token(string path, string text) => text switch
    {
        _ when IsClock(path) => new JValue(CsvRow.Clock(text)),
        "[]" => new JArray(),
        "{}" => new JObject(),
        "null" => JValue.CreateNull(),
        "true" or "false" => new JValue(text is "true"),
        ['"', .., '"'] when Unquoted(text) is { } inner => new JValue(inner),
        _ when NumberForm().IsMatch(text) && decimal.TryParse(text, NumberStyles.Float, CultureInfo.InvariantCulture, out var number) => decimal.Truncate(number) == number && Math.Abs(number) < int.MaxValue ? new JValue((long)number) : new JValue(number),
        _ => new JValue(text),
    };

    private static string? Unquoted(string text)
    {
        try
        {
            return JToken.Parse(text) is JValue { Type: JTokenType.String } inner ? (string?)inner : null;
        }
        catch (JsonException)
        {
            return null;
        }
    }

    [GeneratedRegex(@"^[A-Za-z$]+(\[[0-9]{1,3}\])*(\.[A-Za-z$]+(\[[0-9]{1,3}\])*)*$", RegexOptions.NonBacktracking)]
    private static partial Regex PathForm();

    [GeneratedRegex(@"^-?[0-9]{1,20}(\.[0-9]{1,8})?$", RegexOptions.NonBacktracking)]
    private static partial Regex NumberForm();

    private sealed record Leaf(IReadOnlyList<string> Steps, RoutineRow Row, JToken Token);
}
