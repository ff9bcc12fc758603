using System.Globalization;
using System.Text;
using Newtonsoft.Json;
using Newtonsoft.Json.Linq;

namespace Generator.Library.Files;

/// <summary>
/// Writes JSON for people: whatever fits goes on one line, so that a move or a performer is one row; two spaces of indent, line feeds,
/// numbers without needless decimals. The same value always gives the same text.
/// </summary>
public static class JsonText
{
    private const int Widest = 200;

    /// <summary>The text, ending with a line feed; the outermost object or list is always broken into lines.</summary>
    public static string Of(JToken value)
    {
        var text = new StringBuilder();
        Write(text, value, 0, broken: true);
        return text.Append('\n').ToString();
    }

    private static void Write(StringBuilder text, JToken value, int depth, bool broken)
    {
        if (value is not JContainer container)
        {
            text.Append(Scalar((JValue)value));
            return;
        }

        var isObject = container is JObject;
        text.Append(isObject ? '{' : '[');
        var items = container.Children().ToList();
        broken = broken && items.Count > 0;
        for (var i = 0; i < items.Count; i++)
        {
            text.Append(i > 0 ? "," : string.Empty);
            if (broken)
            {
                text.Append('\n').Append(' ', 2 * (depth + 1));
            }
            else if (i > 0 || isObject)
            {
                text.Append(' ');
            }

            var item = items[i];
            if (item is JProperty property)
            {
                text.Append(JsonConvert.ToString(property.Name)).Append(": ");
                item = property.Value;
            }

            Write(text, item, depth + 1, broken && !FitsOneLine(item, depth + 1));
        }

        if (broken)
        {
            text.Append('\n').Append(' ', 2 * depth);
        }
        else if (isObject && items.Count > 0)
        {
            text.Append(' ');
        }

        text.Append(isObject ? '}' : ']');
    }

    /// <summary>Lists of objects are broken all the same, one row each.</summary>
    private static bool FitsOneLine(JToken value, int depth)
    {
        if (value is JContainer container && container.Descendants().OfType<JArray>().Append(container).Any(d => d is JArray && d.Children<JObject>().Any()))
        {
            return false;
        }

        var flat = new StringBuilder();
        Write(flat, value, 0, broken: false);
        return flat.Length + (2 * depth) <= Widest;
    }

    private static string Scalar(JValue value) => value.Value switch
    {
        null => "null",
        decimal number => number.ToString("0.############", CultureInfo.InvariantCulture),
        string text => JsonConvert.ToString(text),
        bool flag => flag ? "true" : "false",
        IFormattable other => other.ToString(null, CultureInfo.InvariantCulture),
        _ => throw new ArgumentException($"No JSON is written for {value.Value.GetType().Name}.", nameof(value)),
    };
}
