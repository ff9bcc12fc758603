using System.Text.RegularExpressions;

namespace Generator.Library.Words;

/// <summary>Whoever is spoken of by a word that elsewhere is a move: "uke seizes the sleeve" blocks nothing ("age uke" does), and "nage turns" throws nobody.</summary>
internal static partial class PersonWords
{
    /// <summary>The text without them, where they stand first, own something or come behind a word that needs somebody.</summary>
    public static string Without(string text) => Person().Replace(text, string.Empty) is { } rest && rest.AsSpan().Trim().Length > 0 ? rest : text;

    [GeneratedRegex(@"^\s*(?:uke|nage)\s+(?=\w)|\b(?:uke|nage)['’]s\s+(?=\w)|(?<=\b(?:behind|beneath|under|throws|takes|of|against|around|pulls|pushes)\s)(?:uke|nage)\b", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant)]
    private static partial Regex Person();
}
