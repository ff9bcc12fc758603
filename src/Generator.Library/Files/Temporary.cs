namespace Generator.Library.Files;

/// <summary>The names under which files grow before they take their place, and what is left of them when a program is killed.</summary>
internal static class Temporary
{
    private const string Ending = ".tmp";

    /// <summary>A new name beside a file: its own, twelve random characters, and <c>.tmp</c>.</summary>
    public static string NameFor(string target) => $"{target}.{Path.GetRandomFileName()}{Ending}";

    /// <summary>
    /// Deletes what writes of the same file that were killed have left behind. One that another program is still writing is locked and stays; so
    /// does what cannot be deleted, which hinders nobody.
    /// </summary>
    public static void ClearLeft(string target)
    {
        foreach (var path in Directory.EnumerateFiles(Path.GetDirectoryName(target)!).Where(p => IsFor(target, p)).ToList())
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

    /// <summary>The path has the form of <see cref="NameFor"/>, so that nobody's own file is taken for one.</summary>
    private static bool IsFor(string target, string path)
    {
        var name = Path.GetFileName(path);
        var own = Path.GetFileName(target) + ".";
        if (!name.StartsWith(own, StringComparison.Ordinal) || !name.EndsWith(Ending, StringComparison.Ordinal) || name.Length < own.Length + Ending.Length)
        {
            return false;
        }

        var random = name[own.Length..^Ending.Length];
        return random.Length == 12 && random[8] == '.' && random.Where((_, i) => i != 8).All(c => char.IsAsciiLetterLower(c) || char.IsAsciiDigit(c));
    }
}
