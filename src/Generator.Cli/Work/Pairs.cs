using Generator.Domain;
using Generator.Library;
using Generator.Library.Reading;

namespace Generator.Cli.Work;

/// <summary>Reads a routine and perhaps the brief beside it, as several commands take them.</summary>
internal static class Pairs
{
    /// <summary>The routine with its brief.</summary>
    /// <exception cref="RefusedException">One of them is missing or wrong, or both are to come from standard input.</exception>
    public static Routine Routine(string command, string? path, string? briefPath, Book book, Desk desk)
    {
        Check(command, path, briefPath);
        var brief = briefPath is null ? null : Inputs.Brief(briefPath, book, desk);
        var routine = Inputs.Routine(path!, brief, book, desk);
        if (routine.LibraryVersion.Length > 0 && !string.Equals(routine.LibraryVersion, book.Version, StringComparison.Ordinal))
        {
            desk.Err.WriteLine($"The routine was made with library {FieldText.Shorten(routine.LibraryVersion)}; this is {book.Version}.");
        }

        return routine;
    }

    /// <summary>Refuses a missing routine, and two files from one standard input.</summary>
    public static void Check(string command, string? path, string? briefPath)
    {
        if (path is null)
        {
            throw new RefusedException($"generator {command}: ROUTINE is missing.", "Maybe write the name of its file, or - for standard input.");
        }

        if (string.Equals(path, Inputs.Dash, StringComparison.Ordinal) && string.Equals(briefPath, Inputs.Dash, StringComparison.Ordinal))
        {
            throw new RefusedException($"generator {command}: routine and brief cannot both come from standard input.", "Maybe give one of them as a file.");
        }
    }
}
