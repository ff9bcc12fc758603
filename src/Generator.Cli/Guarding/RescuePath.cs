namespace Generator.Cli.Guarding;

/// <summary>Where the best routine so far is kept: beside the file that <c>--out</c> names, else in the folder for temporary files.</summary>
internal static class RescuePath
{
    private const string Out = "--out";

    /// <summary>What the names of its files begin with, and those of no other run. See <see cref="Kept.PathOf"/>.</summary>
    public static string For(string[] args)
    {
        var random = Path.GetFileNameWithoutExtension(Path.GetRandomFileName());
        var fallback = Path.Combine(Path.GetTempPath(), $"generator.rescued-{random}");
        try
        {
            return OutOf(args) is { Length: > 0 } path && Path.GetDirectoryName(Path.GetFullPath(path)) is { } folder && Directory.Exists(folder)
                ? Path.Combine(folder, $"{Path.GetFileName(path).Split('.')[0]}.rescued-{random}")
                : fallback;
        }
        catch (Exception error) when (error is ArgumentException or IOException)
        {
            // What is wrong with the path is told by the worker.
            return fallback;
        }
    }

    /// <summary>What <c>--out</c> says; null where it is not there.</summary>
    public static string? OutOf(string[] args)
    {
        for (var i = 0; i < args.Length; i++)
        {
            if (string.Equals(args[i], Out, StringComparison.Ordinal))
            {
                return i + 1 < args.Length ? args[i + 1] : null;
            }

            if (args[i].StartsWith(Out, StringComparison.Ordinal) && args[i].Length > Out.Length && args[i][Out.Length] is '=' or ':')
            {
                return args[i][(Out.Length + 1)..];
            }
        }

        return null;
    }
}
