using Generator.Domain;
using Generator.Library.Reading;
using Newtonsoft.Json.Linq;

namespace Generator.Library.Files;

/// <summary>Getters for the forms that briefs and routines share: metres, counts, clock positions, names.</summary>
internal static class FieldForms
{
    public const string ClockAdvice = "Maybe write an hour from 1 to 12, or a half hour such as \"2:30\", in quotation marks.";
    public const string CountAdvice = "Maybe write a count from 1 on, with & for the half count after it, such as \"12&\".";
    public const string HalvesAdvice = "Maybe write whole or half counts, such as 3 or 3.5.";

    /// <summary>Metres, rounded to whole centimetres; null when absent or after a problem.</summary>
    public static Centimetres? Metres(this ObjectReader reader, string field, Quantity quantity) =>
        reader.Number(field, quantity) is { } metres ? Centimetres.FromMetres(metres) : null;

    /// <summary>A span in whole or half counts; null when absent or after a problem.</summary>
    public static HalfCounts? Span(this ObjectReader reader, string field, Quantity quantity)
    {
        if (reader.Number(field, quantity) is not { } counts)
        {
            return null;
        }

        if (decimal.Truncate(counts * 2) == counts * 2)
        {
            return new HalfCounts((int)(counts * 2));
        }

        reader.Refuse(field, $"{FieldText.Of(reader.Token(field))} is neither a whole nor a half number of counts.", HalvesAdvice);
        return null;
    }

    /// <summary>A clock position; null when absent or after a problem.</summary>
    public static Bearing? Clock(this ObjectReader reader, string field) =>
        reader.Token(field) is { } value ? ClockOf(reader, value, reader.PathOf(field)) : null;

    public static Bearing? ClockOf(ObjectReader reader, JToken value, string path)
    {
        if (value.Type == JTokenType.String && Bearing.TryParse((string?)value, out var bearing))
        {
            return bearing;
        }

        reader.Refuse(value, path, $"{FieldText.Of(value)} is not a clock position.", ClockAdvice);
        return null;
    }

    /// <summary>A count as a number or as text with <c>&amp;</c>; null when absent or after a problem.</summary>
    public static HalfCounts? Count(this ObjectReader reader, string field) =>
        reader.Token(field) is { } value ? CountOf(reader, value, reader.PathOf(field)) : null;

    public static HalfCounts? CountOf(ObjectReader reader, JToken value, string path)
    {
        if (value.Type is JTokenType.String or JTokenType.Integer && HalfCounts.TryParseCount(value.ToString(), out var moment))
        {
            return moment;
        }

        reader.Refuse(value, path, $"{FieldText.Of(value)} is not a count.", CountAdvice);
        return null;
    }

    /// <summary>Where something stands and how large it is; each field that is absent is a problem.</summary>
    /// <param name="reader">The thing.</param>
    /// <param name="example">Metres that the advice shows.</param>
    public static void NeedsBox(this ObjectReader reader, string example)
    {
        foreach (var field in (ReadOnlySpan<string>)["x", "y", "width", "depth"])
        {
            if (!reader.Has(field))
            {
                reader.Missing(field, $"\"{field}\": {example}");
            }
        }
    }

    /// <summary>A name that can be read on every paper, null when absent; after a problem as it stands, so that whoever goes by it elsewhere in the file is not refused for it again.</summary>
    public static string? Name(this ObjectReader reader, string field)
    {
        var name = reader.Text(field);
        if (name is not null && NameForm.Fault(name) is var (message, maybe))
        {
            reader.Refuse(field, message, maybe);
        }

        return name;
    }

    /// <summary>Texts out of a closed list of words; others are problems.</summary>
    public static IReadOnlyList<string> KnownTexts(this ObjectReader reader, string field, string what, IReadOnlyCollection<string> words)
    {
        foreach (var (value, path) in reader.Entries(field))
        {
            if (value.Type == JTokenType.String && !string.IsNullOrWhiteSpace((string?)value) && !words.Contains(((string)value!).Trim(), StringComparer.Ordinal))
            {
                reader.Refuse(
                    value,
                    path,
                    $"{FieldText.Of(value)} is not a known {what}.",
                    NearestWords.Maybe((string)value!, words, NearestWords.OneOf(words)));
            }
        }

        return reader.Texts(field);
    }
}
