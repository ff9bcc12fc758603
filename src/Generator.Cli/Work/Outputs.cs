using Generator.Domain;
using Generator.Library.Files;

namespace Generator.Cli.Work;

/// <summary>Writes results to files, whole or not at all.</summary>
internal static class Outputs
{
    /// <summary>Refuses a path that could never be written, before any long work.</summary>
    public static void Check(string? path, string option = "--out")
    {
        if (path is null)
        {
            return;
        }

        if (path.Length == 0 || Directory.Exists(path))
        {
            throw new RefusedException($"{option} {path}: this is a folder, not a file.", "Maybe add the name of the file.");
        }

        var folder = Path.GetDirectoryName(Path.GetFullPath(path));
        if (!Directory.Exists(folder))
        {
            throw new RefusedException($"{option} {path}: there is no folder {folder}.", "Maybe make the folder first, or its name is spelt otherwise.");
        }

        if (FileKind.IsDevice(path))
        {
            throw new RefusedException($"{option} {path}: this is a device or a pipe, not a file.", "Maybe name a file; what is printed goes through a pipe without --out.");
        }

        Tried(path, () => RoutineFiles.Try(path), option);
    }

    /// <summary>A routine as CSV when the name ends in .csv, else as JSON.</summary>
    public static void Write(string path, Routine routine) =>
        Write(path, IsCsv(path) ? RoutineWriter.Csv(routine) : RoutineWriter.Text(routine));

    public static bool IsCsv(string path) => path.EndsWith(".csv", StringComparison.OrdinalIgnoreCase);

    public static void Write(string path, byte[] bytes, string option) => Tried(path, () => RoutineFiles.Write(path, stream => stream.Write(bytes)), option);

    /// <inheritdoc cref="Write(string, byte[], string)"/>
    public static void Write(string path, string text, string option = "--out") => Tried(path, () => RoutineFiles.Write(path, text), option);

    /// <summary>Prints a text or, where a file is named, writes it there and says so.</summary>
    /// <param name="desk">Where it is told.</param>
    /// <param name="path">The file; null for none.</param>
    /// <param name="text">The text.</param>
    /// <param name="what">What it is, "report".</param>
    public static void Show(Desk desk, string? path, string text, string what)
    {
        if (path is null)
        {
            desk.Out.Write(text);
            return;
        }

        Write(path, text);
        desk.Err.WriteLine($"The {what} is in {path}.");
    }

    private static void Tried(string path, Action write, string option)
    {
        try
        {
            write();
        }
        catch (Exception error) when (error is IOException or UnauthorizedAccessException)
        {
            throw new RefusedException($"{option} {path}: the file cannot be written; an older one is as it was.\n  Maybe the disk is full, or you may not write there.", error);
        }
    }
}
