using System.Globalization;

namespace Generator.Cli.Guarding;

/// <summary>
/// What the program needs of the system around it before it can do anything. Asked first of all, with nothing but the plainest means: where the
/// system gives too few file handles, the runtime cannot even load what it would need to tell of it.
/// </summary>
internal static class Surroundings
{
    /// <summary>Files that a process needs open at once, the runtime's own among them: paperwork ends well with 160, not with 130; some to spare.</summary>
    private const int Handles = 192;

    /// <summary>What is missing, and what to try, as two lines; null when there is enough of everything.</summary>
    public static string? Missing() => OperatingSystem.IsLinux() && HandlesAllowed() is < Handles and var few
        ? $"Generator stopped: the system lets it hold {few.ToString(CultureInfo.InvariantCulture)} files open at once, and it needs {Handles.ToString(CultureInfo.InvariantCulture)}.\n  Maybe raise the limit, such as with ulimit -n 1024, and run it again.\n"
        : null;

    /// <summary>The folder in which the program was started is no longer there.</summary>
    public static bool FolderIsGone()
    {
        try
        {
            return !Directory.Exists(Directory.GetCurrentDirectory());
        }
        catch (Exception error) when (error is IOException or UnauthorizedAccessException)
        {
            return true;
        }
    }

    private static long? HandlesAllowed()
    {
        const string Line = "Max open files";
        try
        {
            var limits = File.ReadAllText("/proc/self/limits");
            var at = limits.IndexOf(Line, StringComparison.Ordinal);
            return at >= 0 && long.TryParse(limits[(at + Line.Length)..].TrimStart().Split(' ', 2)[0], NumberStyles.None, CultureInfo.InvariantCulture, out var allowed) ? allowed : null;
        }
        catch (Exception error) when (error is IOException or UnauthorizedAccessException)
        {
            return null;
        }
    }
}
