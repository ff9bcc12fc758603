namespace Generator.Browser.Tests;

/// <summary>A test of this project: all of them need Chromium, and are skipped where there is none.</summary>
[AttributeUsage(AttributeTargets.Method)]
public sealed class FactAttribute : Xunit.FactAttribute
{
    public FactAttribute() => Skip = Browser.Lacking;
}
