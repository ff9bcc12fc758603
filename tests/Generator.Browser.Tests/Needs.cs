namespace Generator.Browser.Tests;

/// <summary>A test of this project: all of them need Chromium, and are skipped where there is none.</summary>
[AttributeUsage(AttributeTargets.Method)]
public sealed class FactAttribute : Xunit.FactAttribute
{
    public FactAttribute() => Skip = Browser.Lacking;
}

/// <summary>The same for a test with cases.</summary>
[AttributeUsage(AttributeTargets.Method)]
public sealed class TheoryAttribute : Xunit.TheoryAttribute
{
    public TheoryAttribute() => Skip = Browser.Lacking;
}
