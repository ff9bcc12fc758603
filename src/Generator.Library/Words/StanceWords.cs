using System.Text.RegularExpressions;

namespace Generator.Library.Words;

/// <summary>How somebody stands while they do something: printed forms say it of every move ("into a front stance"), and it tells no two records apart.</summary>
internal static partial class StanceWords
{
    /// <summary>
    /// The text without its stances, by which a search compares: "front stance" is no front kick. A text that speaks of a stance alone stays as it is.
    /// What is told as unread goes by the whole text, so that no stance is lost unsaid.
    /// </summary>
    public static string Without(string text)
    {
        var rest = Stance().Replace(text, " ").Trim(' ', ',', ';');
        return rest.Length == 0 || rest.Equals(text, StringComparison.Ordinal) ? text : rest;
    }

    [GeneratedRegex(@"\b(?:(?:in|into|to|from|with)\s+)?(?:(?:an?|the|his|her|their)\s+)?(?:(?:left|right|front|forward|back|rear|horse|horseback|riding|walking|sitting|fixed|cat|side|long|deep|low|open|closed|l|parallel|ready|vertical)[\s-]+)+stances?\b", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant)]
    private static partial Regex Stance();
}
