using System.Globalization;

namespace Generator.Library.Reading;

/// <summary>One thing that is wrong with what somebody wrote: where it stands, what it says, and what may have been meant.</summary>
/// <param name="File">Name of the file as the user gave it.</param>
/// <param name="Line">Line from 1; 0 when the file as a whole is meant.</param>
/// <param name="Field">Path of the field, such as <c>attackers[1].height</c>; empty when none is meant.</param>
/// <param name="Value">What stands there, shortened; empty when nothing does.</param>
/// <param name="Message">A sentence that says what is wrong.</param>
/// <param name="Maybe">A sentence beginning "Maybe" that says what to try.</param>
public sealed record Problem(string File, int Line, string Field, string Value, string Message, string Maybe)
{
    /// <summary>Two lines: file, line and field with the message, then the advice.</summary>
    public string ToText()
    {
        var line = Line > 0 ? ", line " + Line.ToString(CultureInfo.InvariantCulture) : string.Empty;
        var field = Field.Length > 0 ? ", " + Field : string.Empty;
        return $"{File}{line}{field}: {Message}\n  {Maybe}";
    }

    public override string ToString() => ToText();
}
