using System.Runtime.CompilerServices;

namespace Generator.Testing;

/// <summary>Compares text with a file in the folder Golden beside the test project; a difference is written beside it as <c>.actual</c>.</summary>
public static class Golden
{
    /// <summary>Fails when the file is missing or its text is another. Line ends count, except that a checkout may turn them.</summary>
    public static void Matches(string name, string actual, [CallerFilePath] string caller = "")
    {
        var folder = new DirectoryInfo(Path.GetDirectoryName(caller)!);
        while (folder is not null && !Directory.Exists(Path.Combine(folder.FullName, "Golden")))
        {
            folder = folder.Parent;
        }

        var path = Path.Combine(folder?.FullName ?? throw new InvalidOperationException("There is no folder Golden above the test."), "Golden", name + ".txt");
        var expected = File.Exists(path) ? File.ReadAllText(path).ReplaceLineEndings("\n") : null;
        if (string.Equals(expected, actual, StringComparison.Ordinal))
        {
            File.Delete(path + ".actual");
            return;
        }

        File.WriteAllText(path + ".actual", actual);
        throw new InvalidOperationException(expected is null
            ? $"{path} does not exist. Read {name}.txt.actual beside it and, when it is right, rename it to {name}.txt."
            : $"The text is not that of {path}. Compare it with {name}.txt.actual and, when that is right, put it in its place.\n{actual}");
    }
}
