using System.Globalization;
using Generator.Domain;
using Generator.Domain.Edits;
using Generator.Library.Reading;
using Generator.Rehearsal.Documents;
using Newtonsoft.Json;
using Newtonsoft.Json.Linq;

namespace Generator.Rehearsal.Serving;

/// <summary>A message of the page, read with suspicion: whatever is missing, of another kind or out of range is refused with its name.</summary>
internal sealed class Asked
{
    /// <summary>Letters of the longest text that is typed.</summary>
    public const int Longest = 2000;

    private const int Deepest = 8;

    private readonly JObject fields;

    private Asked(JObject fields) => this.fields = fields;

    /// <exception cref="RefusedEditException">It is no JSON object.</exception>
    public static Asked Of(string text)
    {
        try
        {
            using var reader = new JsonTextReader(new StringReader(text)) { MaxDepth = Deepest, DateParseHandling = DateParseHandling.None };
            var message = JObject.Load(reader);
            return reader.Read() ? throw Wrong("The message goes on behind its end.") : new Asked(message);
        }
        catch (JsonException)
        {
            throw Wrong("The message is no JSON object.");
        }
    }

    public int Whole(string name, int least = 0, int most = 100_000) =>
        fields[name] is JValue { Type: JTokenType.Integer, Value: long number } && number >= least && number <= most ? (int)number : throw Wrong($"{name} is no whole number from {FormattableString.Invariant($"{least} to {most}")}.");

    public string Text(string name, int longest = Longest) => fields[name] is JValue { Value: string text } && text.Length <= longest && !text.Any(c => char.IsControl(c) && c is not ('\t' or '\n')) ? text
        : throw Wrong($"{name} is no text of at most {FormattableString.Invariant($"{longest}")} letters.");

    /// <summary>Whole numbers between commas, from 0; null for one that is left out.</summary>
    public IReadOnlyList<int?> Numbers(string name) => [.. Text(name).Split(',').Select(n => n.Length == 0 ? (int?)null : int.TryParse(n, NumberStyles.None, CultureInfo.InvariantCulture, out var number) ? number : throw Wrong($"{name} are no numbers."))];

    public bool Flag(string name) => fields[name] is JValue { Value: bool flag } ? flag : throw Wrong($"{name} is neither true nor false.");

    public Column Column(string name) => EnumWords.TryParse<Column>(Text(name), out var column) ? column : throw Wrong($"{name} is no column.");

    public bool Says(string name) => fields[name] is not null and not JValue { Type: JTokenType.Null };

    /// <summary>A place round the mark, as clock text and metres.</summary>
    public Placement Place(HalfCounts entrance)
    {
        if (!Bearing.TryParse(Text("bearing"), out var bearing))
        {
            throw new RefusedEditException($"{FieldText.Quote(Text("bearing"))} is not a clock position.", "Maybe write it as 2:30 or 9.");
        }

        return new Placement(bearing, new Centimetres(Whole("distance", 100, 2000)), entrance);
    }

    private static RefusedEditException Wrong(string message) => new(message, "Maybe the page is of another version of the program: load it again.");
}
