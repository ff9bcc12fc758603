using Generator.Library.Reading;

namespace Generator.Library.Files;

/// <summary>What a name must be so that everybody who reads a paper sees it, and sees it where it stands.</summary>
internal static class NameForm
{
    /// <summary>What is wrong with a name, and what to try; null for a good one.</summary>
    public static (string Message, string Maybe)? Fault(string name) => name switch
    {
        _ when name.Any(UnseenMarks.BreaksLine) => ("A name is one line of text.", "Maybe a tab or line break slipped in."),
        _ when name.Any(UnseenMarks.TurnsDirection) => ("A mark in this name turns the line round, so that papers would show something else.", "Maybe it slipped in when the name was copied; type the name anew."),
        _ when !UnseenMarks.IsSeen(name) => ("Nobody could see this name.", "Maybe only marks without a shape were copied; type the name anew."),
        _ when UnseenMarks.Hide(name) => ("A mark in this name has no shape, so that it looks like another name.", "Maybe it slipped in when the name was copied; type the name anew."),
        _ => null,
    };
}
