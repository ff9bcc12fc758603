namespace Generator.Cli.Guarding;

/// <summary>
/// Standard input, output and error where whoever started the program closed one of them (<c>&lt;&amp;-</c>, <c>2&gt;&amp;-</c>): the runtime then opens something of its own in
/// its place. Reading that would never end, and what is written there would reach the runtime. Known on Linux only.
/// </summary>
internal static class StandardStreams
{
    private const string Own = "/proc/self/fd";

    /// <summary>Empty where it is closed.</summary>
    public static TextReader In => IsInputClosed ? TextReader.Null : Console.In;

    /// <summary>Nobody outside this process can write to what stands in its place.</summary>
    public static bool IsInputClosed => IsOurs("0", end: '1');

    /// <summary>Nobody outside this process sees what is written there.</summary>
    public static bool IsOutputClosed => IsClosedForWriting("1");

    /// <summary>The same for errors.</summary>
    public static bool IsErrorClosed => IsClosedForWriting("2");

    private static bool IsClosedForWriting(string fd) => IsOurs(fd, end: '0') || (Directory.Exists(Own) && FlagsEnd(fd) == '0');

    /// <summary>Closed, something of the runtime's, or a pipe whose other end this process holds: its flags end with '0' where it is read, with '1' where it is written to.</summary>
    private static bool IsOurs(string fd, char end)
    {
        if (!Directory.Exists(Own))
        {
            return false;
        }

        var target = TargetOf(fd);
        return target is null
            || target.StartsWith("anon_inode:", StringComparison.Ordinal)
            || (target.StartsWith("pipe:", StringComparison.Ordinal) && Directory.EnumerateFileSystemEntries(Own)
                .Select(Path.GetFileName)
                .Any(other => other is not null && other != fd && string.Equals(TargetOf(other), target, StringComparison.Ordinal) && FlagsEnd(other) == end));
    }

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

    /// <summary>The last octal digit of the flags with which it was opened: 0 to read, 1 to write, 2 for both.</summary>
    private static char? FlagsEnd(string fd)
    {
        try
        {
            return File.ReadLines($"/proc/self/fdinfo/{fd}").FirstOrDefault(l => l.StartsWith("flags:", StringComparison.Ordinal))?[^1];
        }
        catch (IOException)
        {
            return null;
        }
    }
}
