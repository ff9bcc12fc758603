using System.Globalization;
using System.Numerics;
using Newtonsoft.Json.Linq;

namespace Generator.Library.Reading;

/// <content>Getters of single values.</content>
public sealed partial class ObjectReader
{
    /// <summary>Text, trimmed; null when absent. Empty text is a problem.</summary>
    public string? Text(string field) => Token(field) is { } value ? TextOf(value, PathOf(field)) : null;

    /// <summary>Text that may be empty and is kept as it stands.</summary>
    public string FreeText(string field, string fallback = "")
    {
        var value = Token(field);
        if (value is null or { Type: JTokenType.String })
        {
            return (string?)value ?? fallback;
        }

        Refuse(field, $"{FieldText.Of(value)} is not text.", "Maybe put it in quotation marks.");
        return fallback;
    }

    /// <summary>Text that must be there; empty after a problem.</summary>
    public string RequiredText(string field, string example = "")
    {
        if (!Has(field))
        {
            Missing(field, example);
            return string.Empty;
        }

        return Text(field) ?? string.Empty;
    }

    /// <summary>A number within the range; null when absent or after a problem.</summary>
    public decimal? Number(string field, Quantity quantity) => Token(field) is { } value ? NumberOf(value, PathOf(field), quantity, whole: false) : null;

    /// <summary>A whole number within the range; null when absent or after a problem.</summary>
    public int? Whole(string field, Quantity quantity) => Token(field) is { } value ? (int?)NumberOf(value, PathOf(field), quantity, whole: true) : null;

    /// <summary>A number that must be there; the least allowed after a problem.</summary>
    public decimal RequiredNumber(string field, Quantity quantity)
    {
        if (!Has(field))
        {
            Missing(field);
        }

        return Number(field, quantity) ?? quantity.Least;
    }

    /// <summary>A whole number that must be there; the least allowed after a problem.</summary>
    public int RequiredWhole(string field, Quantity quantity)
    {
        if (!Has(field))
        {
            Missing(field);
        }

        return Whole(field, quantity) ?? (int)quantity.Least;
    }

    /// <summary>true or false.</summary>
    public bool Flag(string field, bool fallback = false)
    {
        var value = Token(field);
        if (value is null or { Type: JTokenType.Boolean })
        {
            return (bool?)value ?? fallback;
        }

        Refuse(field, $"{FieldText.Of(value)} is neither true nor false.", "Maybe write true or false, without quotation marks.");
        return fallback;
    }

    /// <summary>A word of an enumeration in kebab case; null when absent or after a problem.</summary>
    public T? Word<T>(string field)
        where T : struct, Enum => Token(field) is { } value ? (T?)WordOf(typeof(T), value, PathOf(field)) : null;

    /// <summary>A word of an enumeration that must be there; the first one after a problem.</summary>
    public T RequiredWord<T>(string field)
        where T : struct, Enum
    {
        if (!Has(field))
        {
            Missing(field);
        }

        return Word<T>(field) ?? default;
    }

    private string? TextOf(JToken value, string path)
    {
        if (value.Type != JTokenType.String)
        {
            Refuse(value, path, $"{FieldText.Of(value)} is not text.", "Maybe put it in quotation marks.");
            return null;
        }

        var text = ((string?)value)!.Trim();
        if (text.Length > 0)
        {
            return text;
        }

        Refuse(value, path, "The text is empty.", "Maybe something was to be written here; else leave the field out.");
        return null;
    }

    private decimal? NumberOf(JToken value, string path, Quantity quantity, bool whole)
    {
        if (value.Type is not (JTokenType.Integer or JTokenType.Float))
        {
            var text = FieldText.Of(value);
            Refuse(
                value,
                path,
                $"{text} is not a number; {quantity.Range} is wanted.",
                value.Type == JTokenType.String ? "Maybe write the number alone, without quotation marks or unit." : "Maybe write one number.");
            return null;
        }

        // A number too long for the range of decimal is out of any range here too.
        var number = ((JValue)value).Value switch
        {
            BigInteger big => big.Sign > 0 ? decimal.MaxValue : decimal.MinValue,
            decimal fraction => fraction,
            var other => Convert.ToDecimal(other, CultureInfo.InvariantCulture),
        };
        if (!quantity.Allows(number))
        {
            Refuse(value, path, $"{FieldText.Of(value)} is not {quantity.Range}.", quantity.Advice);
            return null;
        }

        if (whole && decimal.Truncate(number) != number)
        {
            Refuse(value, path, $"{FieldText.Of(value)} is not a whole number; {quantity.Range} is wanted.", "Maybe round it.");
            return null;
        }

        return number;
    }

    private object? WordOf(Type type, JToken value, string path)
    {
        if (value.Type == JTokenType.String && EnumWords.Find(type, ((string?)value)!) is { } word)
        {
            return word;
        }

        var words = EnumWords.All(type);
        Refuse(
            value,
            path,
            $"{FieldText.Of(value)} is not one of the words for this field.",
            NearestWords.Maybe(value.ToString(), words, NearestWords.OneOf(words)));
        return null;
    }
}
