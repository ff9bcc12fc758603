namespace Generator.Library.Files;

/// <summary>The names under which files grow before they take their place, and what is left of them when a program is killed.</summary>
internal static class Temporary
{
    private const string Ending = ".tmp";

    /// <summary>A new name beside a file: its own, twelve random characters, and <c>.tmp</c>.</summary>
    public static string NameFor(string target) => $"{target}.{Path.GetRandomFileName()}{Ending}";

    /// <summary>
    /// Deletes what writes that were killed have left behind in a folder. One that another program is still writing is locked and stays; so
    /// does what cannot be deleted, which hinders nobody.
    /// </summary>
    /// <param name="folder">Looked through without what lies deeper.</param>
    /// <param name="isWritten">Whether what grew for a file of this name goes.</param>
    public static void ClearLeft(string folder, Func<string, bool> isWritten)
    {
        foreach (var path in Directory.EnumerateFiles(folder).Where(p => TargetOf(Path.GetFileName(p)) is { } written && isWritten(written)).ToList())
        {
            try
            {
                using var left = new FileStream(path, FileMode.Open, FileAccess.Write, FileShare.None);
                File.Delete(path);
            }
            catch (Exception error) when (error is IOException or UnauthorizedAccessException)
            {
                continue;
            }
        }
    }

    /// <summary>Name of the file for which another one of this name grew; null when it has not the form of <see cref="NameFor"/>, so that nobody's own file is taken for one.</summary>
    public static string? TargetOf(string name)
    {
        const int Random = 12;
        var from = name.Length - Ending.Length - Random;
        if (from < 2 || name[from - 1] != '.' || !name.EndsWith(Ending, StringComparison.Ordinal))
        {
            return null;
        }

        var random = name.AsSpan(from, Random);
        for (var i = 0; i < Random; i++)
        {
            if (i == 8 ? random[i] != '.' : !char.IsAsciiLetterLower(random[i]) && !char.IsAsciiDigit(random[i]))
            {
                return null;
            }
        }

        return name[..(from - 1)];
    }
}
