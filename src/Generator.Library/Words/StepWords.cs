using System.Text.RegularExpressions;

namespace Generator.Library.Words;

/// <summary>
/// Steps and ways of announcing a move, as printed forms have them before what is done: with which foot one steps says nothing of what the foot does,
/// and who "counters with a punch" or "executes a punch" punches.
/// </summary>
internal static partial class StepWords
{
    /// <summary>The text with the foot of a step left out ("steps back with the right foot" is "steps back"), and what only announces a move as well. What is told as unread goes by the whole text.</summary>
    public static string Plain(string text)
    {
        var rest = Announced().Replace(MovedFoot().Replace(SteppedWith().Replace(text, "$1"), "steps $1"), string.Empty).Trim(' ', ',', ';');
        return rest.Length == 0 ? text : rest;
    }

    /// <summary>"Steps back with the right foot", "step forward with your left leg".</summary>
    [GeneratedRegex(@"\b(step(?:s|ping|ped)?\s+(?:\w+\s+){0,2}?)(?:with|on|using)\s+(?:(?:the|his|her|their|your|my)\s+)?(?:left|right|front|back|lead|rear)\s+(?:foot|leg)\b", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant)]
    private static partial Regex SteppedWith();

    /// <summary>"Moves the right foot forward", "left leg back", "right foot steps back"; but not "sweeps the right foot out".</summary>
    [GeneratedRegex(@"(?:^\s*|(?<=[,;]\s*)|(?<=\band\s)|\b(?:move|slide|step|draw|bring|place|put)(?:s|ing|ed|d)?\s+)(?:(?:the|his|her|their|your|my)\s+)?(?:left|right)\s+(?:foot|leg)\s+(?:(?:steps?|moves?|slides?)\s+)?(forwards?|backwards?|back|in|out|aside)\b", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant)]
    private static partial Regex MovedFoot();

    /// <summary>"Counters with", "follows up with", "executes", "delivers".</summary>
    [GeneratedRegex(@"\b(?:(?:counter(?:s|ing|ed)?(?:[\s-]+attacks?)?|follow(?:s|ing|ed)?(?:\s+up)?|respond(?:s|ing|ed)?|finish(?:es|ing)?\s+off)\s+(?:by\s+)?with|execut(?:e|es|ed|ing)|deliver(?:s|ed|ing)?|perform(?:s|ed|ing)?)\s+(?=\w)", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant)]
    private static partial Regex Announced();
}
