using Generator.Domain;
using Generator.Library.Reading;
using Newtonsoft.Json.Linq;

namespace Generator.Library.Files;

/// <summary>What a brief places as seen from the first mark, and props that lie on the floor, before they are read: marks are chosen first, since everything else is checked on them.</summary>
internal static class MarkView
{
    /// <summary>The first mark is the floor's own: it is said, or something is placed as seen from it.</summary>
    public static bool IsFixed(ObjectReader root) =>
        (root.Token("floor") is JObject floor && Said(floor, "mark"))
        || Parts(root, "cameras").Any()
        || Parts(root, "props").Any(p => Said(p, "bearing"))
        || Parts(root, "attackers").Any(a => Said(a, "bearing") && Said(a, "distance"));

    /// <summary>Where props lie, in centimetres as on the floor; what is not written as it must be is left to their reader.</summary>
    /// <param name="root">The brief.</param>
    /// <param name="markX">The first mark.</param>
    /// <param name="markY">Likewise.</param>
    public static IEnumerable<(double X, double Y)> Props(ObjectReader root, int markX, int markY)
    {
        foreach (var prop in Parts(root, "props"))
        {
            if (Number(prop["x"]) is { } x && Number(prop["y"]) is { } y)
            {
                yield return (100 * x, 100 * y);
            }
            else if (Number(prop["distance"]) is { } distance && prop["bearing"] is { Type: JTokenType.String } said && Bearing.TryParse((string?)said, out var bearing))
            {
                var (dx, dy) = bearing.Direction;
                yield return (markX + (100 * distance * dx), markY + (100 * distance * dy));
            }
        }
    }

    private static bool Said(JObject part, string field) => part[field] is { Type: not JTokenType.Null };

    private static IEnumerable<JObject> Parts(ObjectReader root, string field) => root.Token(field) is JArray list ? list.OfType<JObject>() : [];

    private static double? Number(JToken? value) => value is { Type: JTokenType.Integer or JTokenType.Float } && double.TryParse(value.ToString(), System.Globalization.NumberStyles.Float, System.Globalization.CultureInfo.InvariantCulture, out var number) ? number : null;
}
