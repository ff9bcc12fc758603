using System.Globalization;

namespace Generator.Library.Reading;

/// <summary>What a number in a file stands for: its name with article, its range and its unit, for checking and for messages.</summary>
/// <param name="What">With its article: "a height".</param>
/// <param name="Least">Smallest value allowed; shown with the decimals given here.</param>
/// <param name="Most">Largest value allowed.</param>
/// <param name="Unit">Unit as shown, or empty.</param>
/// <param name="Maybe">A sentence beginning "Maybe" for a value outside the range; empty for a general one.</param>
public sealed record Quantity(string What, decimal Least, decimal Most, string Unit = "", string Maybe = "")
{
    /// <summary>"a height between 1.40 and 2.10 m".</summary>
    public string Range => string.Create(
        CultureInfo.InvariantCulture, $"{What} between {Least} and {Most}{(Unit.Length > 0 ? " " + Unit : string.Empty)}");

    /// <summary>The advice for a value outside the range.</summary>
    public string Advice => Maybe.Length > 0 ? Maybe : string.Create(CultureInfo.InvariantCulture, $"Maybe write a number from {Least} to {Most}.");

    public bool Allows(decimal value) => value >= Least && value <= Most;
}
