namespace Generator.Cli.Tests.Readme;

/// <summary>A fenced block of the README or a guide under a mark such as <c>&lt;!-- run --&gt;</c>.</summary>
/// <param name="Mark">The words of the mark.</param>
/// <param name="Text">What stands between the fences, every line with its line feed.</param>
internal sealed record ReadmeBlock(string Mark, string Text)
{
    /// <summary>The top of the repository: the nearest folder above the tests that holds the solution.</summary>
    public static string Top { get; } = Find();

    /// <summary>The README and the guides of the program, as paths from the top.</summary>
    public static IReadOnlyList<string> Pages { get; } =
        ["README.md", .. Directory.GetFiles(Path.Combine(Top, "src", "Generator.Cli", "Guides"), "*.md").Select(f => Path.GetRelativePath(Top, f)).Order(StringComparer.Ordinal)];

    /// <summary>All marked blocks of a page, in order.</summary>
    public static IReadOnlyList<ReadmeBlock> All(string page)
    {
        var blocks = new List<ReadmeBlock>();
        var lines = File.ReadAllLines(Path.Combine(Top, page));
        for (var i = 0; i + 1 < lines.Length; i++)
        {
            if (lines[i].StartsWith("<!-- ", StringComparison.Ordinal) && lines[i + 1].StartsWith("```", StringComparison.Ordinal))
            {
                var text = lines.Skip(i + 2).TakeWhile(l => !l.StartsWith("```", StringComparison.Ordinal));
                blocks.Add(new ReadmeBlock(lines[i][5..^4], string.Concat(text.Select(l => l + "\n"))));
            }
        }

        return blocks;
    }

    private static string Find()
    {
        var folder = new DirectoryInfo(AppContext.BaseDirectory);
        while (folder is not null && !File.Exists(Path.Combine(folder.FullName, "Generator.sln")))
        {
            folder = folder.Parent;
        }

        return folder?.FullName ?? throw new DirectoryNotFoundException("No folder above the tests holds Generator.sln.");
    }
}
