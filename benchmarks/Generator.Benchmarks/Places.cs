namespace Generator.Benchmarks;

/// <summary>Where stored briefs lie and results go, found from the working folder or from the program upwards.</summary>
internal static class Places
{
    private static readonly string Top = FindTop();

    public static string Benchmarks => Path.Combine(Top, "benchmarks");

    public static string Briefs => Path.Combine(Benchmarks, "briefs");

    /// <summary>Briefs that no routine can satisfy.</summary>
    public static string Clashes => Path.Combine(Benchmarks, "briefs-clash");

    /// <summary>Kinds of brief of which anybody sees that they cannot be, kept with the tests.</summary>
    public static string Kinds => Path.Combine(Top, "tests", "Generator.Solver.Tests", "Refuting", "Kinds");

    public static string Results => Path.Combine(Benchmarks, "results");

    public static string Artifacts => Path.Combine(Top, ".artifacts", "bench");

    private static string FindTop()
    {
        foreach (var start in new[] { Environment.CurrentDirectory, AppContext.BaseDirectory })
        {
            for (var folder = new DirectoryInfo(start); folder is not null; folder = folder.Parent)
            {
                if (File.Exists(Path.Combine(folder.FullName, "Generator.sln")))
                {
                    return folder.FullName;
                }
            }
        }

        throw new InvalidOperationException("The folder with Generator.sln was not found from here upwards.");
    }
}
