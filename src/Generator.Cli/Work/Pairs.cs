using System.Diagnostics.CodeAnalysis;
using Generator.Domain;
using Generator.Library;
using Generator.Library.Files.Notes;
using Generator.Library.Reading;

namespace Generator.Cli.Work;

/// <summary>Reads a routine and perhaps the brief beside it, as several commands take them.</summary>
internal static class Pairs
{
    /// <summary>The routine with its brief, both named as <see cref="Check"/> wants them; a sketch (notes, or rows with open cells) is filled in first, and what it was taken for is told.</summary>
    /// <param name="path">The routine.</param>
    /// <param name="briefPath">The brief beside it; null for none.</param>
    /// <param name="book">The library.</param>
    /// <param name="desk">Where a routine of another library is remarked on.</param>
    /// <param name="use">How the remark names this library: "this is", "this audit uses".</param>
    /// <exception cref="RefusedException">One of them is wrong.</exception>
    public static Routine Routine(string path, string? briefPath, Book book, Desk desk, string use = "this is")
    {
        var source = new Lazy<SourceFile>(() => Inputs.Source(path, desk));
        var brief = Brief(briefPath, source, book, desk);
        return Routine(source.Value, brief, book, desk, use);
    }

    /// <summary>The same of files that are read already.</summary>
    public static Routine Routine(SourceFile source, Brief? brief, Book book, Desk desk, string use = "this is")
    {
        var given = RoutineOrSketch(source, brief, book, desk, use);
        return given.Sketch is { } sketch ? Sketches.Filled(sketch, source.Name, book, desk) : given.Routine!;
    }

    /// <summary>The same, the sketch as it stands.</summary>
    public static (Routine? Routine, ReadSketch? Sketch) RoutineOrSketch(SourceFile source, Brief? brief, Book book, Desk desk, string use)
    {
        var given = Inputs.RoutineOrSketch(source, brief, book, desk);
        if (given.Routine is { LibraryVersion: { Length: > 0 } version } && !string.Equals(version, book.Version, StringComparison.Ordinal))
        {
            desk.Err.WriteLine($"The routine was made with library {FieldText.Shorten(version)}; {use} {book.Version}.");
        }

        return given;
    }

    /// <summary>The brief beside a routine; null for none. Marks that it does not name are those of the routine, if they are what it asks for.</summary>
    public static Brief? Brief(string? path, Lazy<SourceFile> routine, Book book, Desk desk, int? seed = null) => path is null ? null : Inputs.BriefBeside(path, routine, book, desk, seed);

    /// <summary>Refuses a missing routine, and two files from one standard input.</summary>
    public static void Check(string command, [NotNull] string? path, string? briefPath)
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
