using System.Globalization;

namespace Generator.Domain;

/// <summary>How many of something, in words.</summary>
public static class Amounts
{
    /// <summary>"1 move", "3 moves".</summary>
    public static string Many(int number, string one) => number.ToString(CultureInfo.InvariantCulture) + " " + one + (number == 1 ? string.Empty : "s");
}
