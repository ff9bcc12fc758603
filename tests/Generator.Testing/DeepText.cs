using System.Collections;
using System.Globalization;
using System.Reflection;
using System.Text;

namespace Generator.Testing;

/// <summary>
/// Writes out a value with all that was set in it, lists included, so that two values can be compared by what they hold. Made without
/// any writer of the product, so that a round trip is judged from outside.
/// </summary>
public static class DeepText
{
    public static string Of(object? value)
    {
        var text = new StringBuilder();
        Write(text, value, "\n");
        return text.ToString();
    }

    private static void Write(StringBuilder text, object? value, string indent)
    {
        switch (value)
        {
            case null:
                text.Append("null");
                break;
            case string words:
                text.Append('"').Append(words).Append('"');
                break;
            case IEnumerable list:
                text.Append('[');
                foreach (var item in list)
                {
                    text.Append(indent).Append("- ");
                    Write(text, item, indent + "  ");
                }

                text.Append(']');
                break;
            case ValueType number:
                text.Append(number is IFormattable f ? f.ToString(null, CultureInfo.InvariantCulture) : number.ToString());
                break;
            default:
                text.Append(value.GetType().Name);
                foreach (var property in value.GetType().GetProperties(BindingFlags.Public | BindingFlags.Instance).Where(p => p.CanWrite))
                {
                    text.Append(indent).Append(property.Name).Append(" = ");
                    Write(text, property.GetValue(value), indent + "  ");
                }

                break;
        }
    }
}
