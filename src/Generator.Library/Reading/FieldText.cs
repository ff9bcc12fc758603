using Newtonsoft.Json;
using Newtonsoft.Json.Linq;

namespace Generator.Library.Reading;

/// <summary>How values and paths out of a file are shown in a message: short, on one line, without control characters.</summary>
public static class FieldText
{
    private const int Longest = 40;

    /// <summary>The value as JSON writes it, shortened.</summary>
    public static string Of(JToken? value) => value switch
    {
        null => string.Empty,
        JObject => "{ … }",
        _ => Shorten(value.ToString(Formatting.None)),
    };

    /// <summary>A word out of a file, in quotation marks.</summary>
    public static string Quote(string text) => Shorten(JsonConvert.ToString(text));

    /// <summary>At most 40 characters; control characters are replaced, and marks that nobody would see are written by their number.</summary>
    public static string Shorten(string text)
    {
        var clean = Clean(text);
        return clean.Length <= Longest ? clean : clean[..(char.IsHighSurrogate(clean[Longest - 2]) ? Longest - 2 : Longest - 1)] + "…";
    }

    /// <summary>A path without control characters, shortened at its beginning.</summary>
    public static string Path(string path)
    {
        var clean = Clean(path);
        return clean.Length <= 2 * Longest ? clean : "…" + clean[^(2 * Longest)..];
    }

    private static string Clean(string text) => UnseenMarks.Shown(string.Concat(text.Select(c => char.IsControl(c) ? ' ' : c)));
}
