using Generator.Domain;
using Generator.Library.Words;

namespace Generator.Library.Files.Notes;

/// <summary>Where somebody comes from, in words or as a clock position: "from behind", "from half right", "from 2:30".</summary>
internal static class FromWords
{
    private static readonly (string Words, int HalfHours)[] Places =
    [
        ("the left in front", 21), ("the right in front", 3), ("half left", 21), ("half right", 3), ("behind left", 15), ("behind right", 9),
        ("in front", 0), ("the front", 0), ("behind", 12), ("the back", 12), ("the left", 18), ("the right", 6), ("left", 18), ("right", 6),
    ];

    /// <summary>Every way of saying it, for advice.</summary>
    public static string All => "in front, behind, the left, the right, half left, half right, behind left, behind right, or a clock position such as 2:30";

    /// <summary>The place that words after "from" name.</summary>
    public static bool TryParse(string text, out Bearing bearing)
    {
        if (Bearing.TryParse(text, out bearing))
        {
            return true;
        }

        var plain = PlainWord.Of(text);
        var place = Array.Find(Places, p => string.Equals(p.Words, plain, StringComparison.Ordinal));
        bearing = new Bearing(place.HalfHours);
        return place.Words is not null;
    }
}
