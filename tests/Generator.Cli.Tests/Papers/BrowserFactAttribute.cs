using Generator.Paperwork.Printing;
using Generator.Testing;

namespace Generator.Cli.Tests.Papers;

/// <summary>A test that prints, and is skipped where there is no browser to print with.</summary>
[AttributeUsage(AttributeTargets.Method)]
public sealed class BrowserFactAttribute : FactAttribute
{
    public BrowserFactAttribute() => Skip = Lacking;

    /// <summary>Why such a test is left out; null when there is a browser, or when nothing may be left out.</summary>
    public static string? Lacking { get; } =
        LeftOut.For(() => Browser.Find(Environment.GetEnvironmentVariable("PATH")) is null
            ? "It prints, and there is no Chromium or Chrome on the search path. Maybe install it: apt-get install chromium"
            : null);
}
