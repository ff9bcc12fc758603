using System.Runtime.InteropServices;

namespace Generator.Library.Files;

/// <summary>Tells files from what only looks like one: a device, a pipe, a socket. Putting a file in the place of such a thing would break it for everybody.</summary>
public static class FileKind
{
    private const int Here = -100;
    private const uint WantsType = 1;

    /// <summary>Where the two bytes of the mode stand in the kernel's answer, which is the same on every processor.</summary>
    private const int ModeAt = 28;

    private const int TypeBits = 0xF000;
    private const int Regular = 0x8000;
    private const int Folder = 0x4000;

    /// <summary>Names of what a process has open, standard output among it. Whatever that is now, even a file, it is no place for another file.</summary>
    private static readonly string[] OpenAlready = ["/dev/stdin", "/dev/stdout", "/dev/stderr", "/dev/fd/", "/proc/"];

    /// <summary>Links that are followed; more than any system follows itself.</summary>
    private const int MostLinks = 64;

    /// <summary>
    /// There is something of that name, links followed, and it is neither a file nor a folder, or it is what a process has open. Asked without opening it. Known on Linux alone.
    /// </summary>
    public static bool IsDevice(string path)
    {
        if (!OperatingSystem.IsLinux())
        {
            return false;
        }

        if (LeadsTo(path).Any(p => OpenAlready.Any(o => p.StartsWith(o, StringComparison.Ordinal))))
        {
            return true;
        }

        var answer = new byte[256];
        try
        {
            return StatX(Here, path, 0, WantsType, answer) == 0 && (BitConverter.ToUInt16(answer, ModeAt) & TypeBits) is not (Regular or Folder);
        }
        catch (Exception error) when (error is EntryPointNotFoundException or DllNotFoundException)
        {
            // A system library too old to be asked.
            return false;
        }
    }

    /// <summary>The path and, one after another, those to which it leads as a link.</summary>
    private static IEnumerable<string> LeadsTo(string path)
    {
        for (var (next, left) = (Path.GetFullPath(path), MostLinks); next is not null && left > 0; left--)
        {
            yield return next;
            next = new FileInfo(next).LinkTarget is { } target ? Path.GetFullPath(target, Path.GetDirectoryName(next)!) : null;
        }
    }

#pragma warning disable SYSLIB1054 // the generated form needs unsafe code, which this house does without
    [DllImport("libc", EntryPoint = "statx", CharSet = CharSet.Ansi, BestFitMapping = false, ThrowOnUnmappableChar = true)]
    [DefaultDllImportSearchPaths(DllImportSearchPath.SafeDirectories)]
    private static extern int StatX(int folder, [MarshalAs(UnmanagedType.LPUTF8Str)] string path, int flags, uint mask, [Out] byte[] answer);
#pragma warning restore SYSLIB1054
}
