using Generator.Library.Files;
using Generator.Paperwork;
using Generator.Paperwork.SafetyPapers;
using SafetyLog = Generator.Paperwork.SafetyPapers.ChangeLog;

namespace Generator.Cli.Work;

/// <summary>Writes the papers of a pack into a folder, each whole or not at all.</summary>
internal static class OutputFolder
{
    /// <summary>Refuses a folder that could never be written, before any work.</summary>
    public static void Check(string path)
    {
        if (path.Length == 0 || File.Exists(path))
        {
            throw new RefusedException($"--out {path}: this is not a folder.", "Maybe choose another name; the papers need a folder of their own.");
        }

        var full = Path.TrimEndingDirectorySeparator(Path.GetFullPath(path));
        var above = Path.GetDirectoryName(full);
        if (above is not null && !Directory.Exists(above))
        {
            throw new RefusedException($"--out {path}: there is no folder {above}.", "Maybe make that folder first, or its name is spelt otherwise.");
        }
    }

    /// <summary>The change log that lies in the folder already; null when there is none. One that cannot be read is refused: it may hold sign-offs.</summary>
    public static string? ChangeLog(string path)
    {
        var file = Path.Combine(path, SafetyLog.FileName);
        try
        {
            var text = File.Exists(file) ? File.ReadAllText(file) : null;
            if (text is not null)
            {
                SafetyLog.Check(text);
            }

            return text;
        }
        catch (ChangeLogException error)
        {
            throw new RefusedException($"{file}: the change log cannot be read: {error.Message}.\n  Maybe it was edited: put it right, or move it away to begin a new one without its sign-offs.", error);
        }
        catch (Exception error) when (error is IOException or UnauthorizedAccessException)
        {
            throw new RefusedException($"{file}: the change log cannot be read.\n  Maybe you may not read it.", error);
        }
    }

    /// <summary>The calendar that lies in the folder already, so that its days keep their identity; null when there is none that can be read.</summary>
    public static string? Calendar(string path)
    {
        var file = Path.Combine(path, Generator.Paperwork.Pack.Optional[0]);
        try
        {
            return File.Exists(file) ? File.ReadAllText(file) : null;
        }
        catch (Exception error) when (error is IOException or UnauthorizedAccessException)
        {
            return null;
        }
    }

    public static void Write(string path, IReadOnlyList<IPaper> papers, PaperSource source)
    {
        try
        {
            Directory.CreateDirectory(path);
            foreach (var paper in papers)
            {
                RoutineFiles.Write(Path.Combine(path, paper.FileName), stream => paper.Write(source, stream));
            }
        }
        catch (Exception error) when (error is IOException or UnauthorizedAccessException)
        {
            throw new RefusedException($"--out {path}: the papers cannot all be written; those that could not are as they were.\n  Maybe the disk is full, or you may not write there.", error);
        }
    }
}
