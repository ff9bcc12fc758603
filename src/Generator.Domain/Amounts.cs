using System.Globalization;

namespace Generator.Domain;

/// <summary>How many of something, in words.</summary>
public static class Amounts
{
    /// <summary>"1 move", "3 moves".</summary>
    public static string Many(int number, string one) =>
        number.ToString(CultureInfo.InvariantCulture) + " " + (number == 1 ? one : one.Length > 1 && one[^1] == 'y' && !"aeiou".Contains(one[^2], StringComparison.Ordinal) ? one[..^1] + "ies" : one + "s");

    /// <summary>A unit of several as one of it is said: "count" of "counts", "flurry" of "flurries"; one that is only a letter stays.</summary>
    public static string One(string many) => many.EndsWith("ies", StringComparison.Ordinal) ? many[..^3] + "y" : many.Length > 1 && many[^1] == 's' ? many[..^1] : many;
}
