namespace Generator.Browser.Tests;

/// <summary>The program, started as users start it.</summary>
internal static class Own
{
    /// <summary>Where it is built, beside these tests.</summary>
    public static string Program { get; } = Path.GetFullPath(Path.Combine(AppContext.BaseDirectory, "..", "..", "Generator.Cli", new DirectoryInfo(AppContext.BaseDirectory).Name, "generator.dll"));
}
