namespace Generator.Cli.Guarding;

/// <summary>
/// Standard input, empty where whoever started the program closed it (<c>&lt;&amp;-</c>): the runtime then opens something of its own in its place, and reading that would
/// never end.
/// </summary>
internal static class StandardInput
{
    private const string Own = "/proc/self/fd";

    public static TextReader Reader => IsClosed ? TextReader.Null : Console.In;

    /// <summary>Nobody outside this process can write to what stands in its place; known on Linux only.</summary>
    public static bool IsClosed
    {
        get
        {
            if (!Directory.Exists(Own))
            {
                return false;
            }

            var input = TargetOf("0");
            return input is null || input.StartsWith("anon_inode:", StringComparison.Ordinal) || (input.StartsWith("pipe:", StringComparison.Ordinal) && WeWriteTo(input));
        }
    }

    private static bool WeWriteTo(string pipe) =>
        Directory.EnumerateFileSystemEntries(Own).Select(Path.GetFileName).Any(fd => fd is not ("0" or null) && string.Equals(TargetOf(fd), pipe, StringComparison.Ordinal) && Writes(fd));

    private static string? TargetOf(string fd)
    {
        try
        {
            return Path.GetFileName(new FileInfo(Path.Combine(Own, fd)).LinkTarget);
        }
        catch (IOException)
        {
            return null;
        }
    }

    /// <summary>Opened for writing alone, as the write end of a pipe is.</summary>
    private static bool Writes(string fd)
    {
        try
        {
            return File.ReadLines($"/proc/self/fdinfo/{fd}").Any(l => l.StartsWith("flags:", StringComparison.Ordinal) && l.EndsWith('1'));
        }
        catch (IOException)
        {
            return false;
        }
    }
}
