using System.Text;

namespace Generator.Library.Files;

/// <summary>
/// Writes files so that a crash at any moment leaves either the old file or the new one, whole: the new one grows under a temporary name
/// in the same folder, is flushed to the disk, and takes the old one's place in one step. A program that is killed meanwhile leaves the
/// temporary file beside the old one; it hinders no later write, and the next one of the same file that succeeds deletes it.
/// </summary>
public static class RoutineFiles
{
    /// <summary>Writes text as UTF-8 without byte order mark.</summary>
    /// <exception cref="IOException">The folder is missing, full or not writable; the old file is as it was.</exception>
    public static void Write(string path, string text) => Write(path, stream => stream.Write(Encoding.UTF8.GetBytes(text)));

    /// <summary>Writes whatever <paramref name="content"/> puts into the stream. When it throws, the old file stays and nothing else is left.</summary>
    /// <exception cref="IOException">The folder is missing, full or not writable; the old file is as it was.</exception>
    public static void Write(string path, Action<Stream> content)
    {
        var target = Target(path);
        var temporary = Temporary.NameFor(target);
        try
        {
            // Open, and so locked, until it is in its place: no other program takes it for one that was left behind.
            using var stream = new FileStream(temporary, FileMode.CreateNew, FileAccess.Write, FileShare.Delete);
            content(stream);
            stream.Flush(flushToDisk: true);
            if (File.Exists(target) && !OperatingSystem.IsWindows())
            {
                File.SetUnixFileMode(temporary, File.GetUnixFileMode(target));
            }

            File.Move(temporary, target, overwrite: true);
        }
        catch
        {
            File.Delete(temporary);
            throw;
        }

        ClearLeft(Path.GetDirectoryName(target)!, name => string.Equals(name, Path.GetFileName(target), StringComparison.Ordinal));
    }

    /// <summary>Deletes what programs that were killed while they wrote have left in a folder; what another one is still writing stays.</summary>
    /// <param name="folder">The folder.</param>
    /// <param name="isWritten">Whether what grew for a file of this name goes.</param>
    public static void ClearLeft(string folder, Func<string, bool> isWritten) => Temporary.ClearLeft(folder, isWritten);

    /// <summary>Name of the file that a killed program was writing when it left a file of this name behind; null for any other file.</summary>
    public static string? LeftWriting(string name) => Temporary.TargetOf(name);

    /// <summary>Tries whether a file of that name can be written, and leaves everything as it was.</summary>
    /// <exception cref="IOException">It cannot.</exception>
    public static void Try(string path)
    {
        using var trial = new FileStream(Temporary.NameFor(Target(path)), FileMode.CreateNew, FileAccess.Write, FileShare.Delete, 1, FileOptions.DeleteOnClose);
    }

    /// <summary>The file that is written: that to which a link leads.</summary>
    private static string Target(string path)
    {
        var named = new FileInfo(path);
        var target = named.LinkTarget is null ? named.FullName : named.ResolveLinkTarget(returnFinalTarget: true)!.FullName;
        return FileKind.IsDevice(target) ? throw new IOException($"{path} is a device or a pipe, not a file.") : target;
    }
}
