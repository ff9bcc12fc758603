using Generator.Domain;
using Generator.Library.Reading;
using Newtonsoft.Json.Linq;

namespace Generator.Library.Loading;

/// <summary>Reads <c>load</c>: for each act the parts of the body that do it.</summary>
internal static class LoadReader
{
    private const string Field = "load";

    /// <summary>A load that must be there; an empty object says that nothing is asked.</summary>
    public static Load Required(ObjectReader source, string field = Field)
    {
        if (!source.Has(field))
        {
            source.Missing(field, $"\"{field}\": {{ \"carry\": [\"left-leg\"], \"work\": [\"right-leg\"] }}, or {{}} when no part of the body takes more than standing");
        }

        return Optional(source, field);
    }

    /// <summary>A load; nothing when absent.</summary>
    public static Load Optional(ObjectReader source, string field = Field)
    {
        if (source.Object(field) is not { } acts)
        {
            return default;
        }

        var load = Load.Each(act => Parts(acts, EnumWords.Of(act)));
        acts.Finish();
        return load;
    }

    private static BodyParts Parts(ObjectReader acts, string act)
    {
        var all = BodyParts.None;
        foreach (var (value, path) in acts.Entries(act))
        {
            var parts = value is JValue { Value: string word } ? BodyPartWords.Find(word) : BodyParts.None;
            if (parts == BodyParts.None)
            {
                acts.Refuse(value, path, $"{FieldText.Of(value)} is no part of the body.", NearestWords.Maybe(value.ToString(), BodyPartWords.All, NearestWords.OneOf(BodyPartWords.All)));
            }
            else if ((all & parts) != BodyParts.None)
            {
                acts.Refuse(value, path, "This part is named twice.", "Maybe another one is meant.");
            }

            all |= parts;
        }

        return all;
    }
}
