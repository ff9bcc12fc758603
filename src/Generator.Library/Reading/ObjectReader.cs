using Newtonsoft.Json;
using Newtonsoft.Json.Linq;

namespace Generator.Library.Reading;

/// <summary>
/// Reads one object of a JSON file field by field. Every getter remembers the name of its field and adds a problem, with line and path,
/// when the value is not what it should be; it then gives a harmless value so that reading goes on and finds the rest.
/// A field that holds null counts as absent. <see cref="Finish"/> reports the fields that nobody asked for.
/// </summary>
public sealed partial class ObjectReader
{
    private readonly JObject source;
    private readonly ProblemList problems;
    private readonly HashSet<string> known = new(StringComparer.Ordinal);

    public ObjectReader(JObject source, string path, string file, ProblemList problems)
    {
        this.source = source;
        this.problems = problems;
        Path = path;
        File = file;
    }

    /// <summary>Where the object stands in the file; empty for the whole.</summary>
    public string Path { get; }

    public string File { get; }

    /// <summary>Line on which the object begins.</summary>
    public int Line => LineOf(source);

    /// <summary>Whether the field is there and not null.</summary>
    public bool Has(string field) => Token(field) is not null;

    /// <summary>The raw value for forms that no getter covers; null when absent.</summary>
    public JToken? Token(string field)
    {
        known.Add(field);
        return source.TryGetValue(field, StringComparison.Ordinal, out var value) && value.Type != JTokenType.Null ? value : null;
    }

    /// <summary>Fields that may stand here without being read.</summary>
    public void Allow(params ReadOnlySpan<string> fields)
    {
        foreach (var field in fields)
        {
            known.Add(field);
        }
    }

    /// <summary>Adds a problem with the value of a field; the message must be a sentence of its own.</summary>
    public void Refuse(string field, string message, string maybe) => Refuse(Token(field), PathOf(field), message, maybe);

    /// <summary>Adds a problem with a value that lies deeper, such as one entry of a list.</summary>
    public void Refuse(JToken? value, string path, string message, string maybe) =>
        problems.Add(new Problem(File, value is null ? Line : LineOf(value), FieldText.Path(path), FieldText.Of(value), message, maybe));

    /// <summary>Says how a field was understood, where its words mean several things.</summary>
    public void Remark(string field, string message, string maybe) =>
        problems.Remark(new Problem(File, Token(field) is { } value ? LineOf(value) : Line, FieldText.Path(PathOf(field)), FieldText.Of(Token(field)), message, maybe));

    /// <summary>Adds the problem that a required field is missing.</summary>
    /// <param name="field">Its name.</param>
    /// <param name="example">How it might look, such as <c>"name": "Bruno"</c>; empty for none.</param>
    public void Missing(string field, string example = "")
    {
        known.Add(field);
        problems.Add(new Problem(
            File, Line, FieldText.Path(PathOf(field)), string.Empty, $"\"{field}\" is missing.", example.Length > 0 ? $"Maybe add {example}." : $"Maybe add \"{field}\" here."));
    }

    /// <summary>Reports every field that no getter asked for, with the nearest known name.</summary>
    public void Finish()
    {
        foreach (var property in source.Properties().Where(p => !known.Contains(p.Name)))
        {
            var names = known.Order(StringComparer.Ordinal).ToList();
            var name = FieldText.Quote(property.Name);
            var near = NearestWords.Of(property.Name, names.Where(k => !source.ContainsKey(k)), 1, typosOnly: true).Concat(NearestWords.Of(property.Name, names, 1)).FirstOrDefault();
            problems.Add(new Problem(
                File,
                LineOf(property),
                FieldText.Path(PathOf(property.Name)),
                FieldText.Of(property.Value),
                $"There is no field {name} here.",
                near is null ? NearestWords.OneOf(names) : $"Maybe \"{near}\" is meant."));
        }
    }

    /// <summary>Path of a field of this object.</summary>
    public string PathOf(string field) => Path.Length == 0 ? field : Path + "." + field;

    private static int LineOf(JToken token) => ((IJsonLineInfo)token).LineNumber;
}
