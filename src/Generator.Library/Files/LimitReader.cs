using Generator.Domain;
using Generator.Library.Reading;
using Newtonsoft.Json.Linq;

namespace Generator.Library.Files;

/// <summary>Reads <c>limits</c>: short words, or a part of the body and what it must not do.</summary>
internal static class LimitReader
{
    private const string Field = "limits";

    public static IReadOnlyList<string> Read(ObjectReader reader)
    {
        foreach (var (value, path) in reader.Entries(Field).Where(e => e.Value.Type == JTokenType.String && !string.IsNullOrWhiteSpace((string?)e.Value)))
        {
            var said = ((string)value!).Trim();
            if (PartLimit.IsMeant(said))
            {
                Check(reader, value, path, said);
            }
            else if (!Limit.All.Contains(said, StringComparer.Ordinal))
            {
                reader.Refuse(value, path, $"{FieldText.Of(value)} is not a known limit.", NearestWords.Maybe(said, Limit.All, NearestWords.OneOf(Limit.All)));
            }
        }

        return [.. reader.Texts(Field).Select(t => PartLimit.Find(t)?.Text ?? t)];
    }

    private static void Check(ObjectReader reader, JToken value, string path, string said)
    {
        if (PartLimit.Unknown(said) is { } unknown)
        {
            var what = ReferenceEquals(unknown.Known, BodyPartWords.All) ? "no part of the body" : "nothing that a part can be kept from";
            reader.Refuse(value, path, $"In {FieldText.Of(value)}, \"{unknown.Word}\" is {what}.", NearestWords.Maybe(unknown.Word, unknown.Known, NearestWords.OneOf(unknown.Known)));
        }
    }
}
