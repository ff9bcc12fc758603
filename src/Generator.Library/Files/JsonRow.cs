using System.Globalization;
using Generator.Library.Reading;
using Newtonsoft.Json.Linq;

namespace Generator.Library.Files;

/// <summary>A row out of the moves of a JSON routine.</summary>
internal sealed class JsonRow(ObjectReader reader) : RoutineRow
{
    public override int Line => reader.Line;

    public override string? Text(string field)
    {
        if (string.Equals(field, "note", StringComparison.Ordinal))
        {
            return reader.FreeText(field);
        }

        var value = reader.Token(field);
        var number = field is "count" or "linger" && value is { Type: JTokenType.Integer or JTokenType.Float };
        if (value is not null && !number && value.Type != JTokenType.String)
        {
            Refuse(field, $"{FieldText.Of(value)} is not text.", "Maybe put it in quotation marks.");
            return null;
        }

        var text = ((value as JValue)?.Value as IFormattable)?.ToString(null, CultureInfo.InvariantCulture) ?? (string?)value;
        return string.IsNullOrWhiteSpace(text) ? null : text.Trim();
    }

    protected override void Report(string field, string message, string maybe) => reader.Refuse(field, message, maybe);
}
