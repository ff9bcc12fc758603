namespace Generator.Browser.Tests;

/// <summary>The same for a test with cases.</summary>
[AttributeUsage(AttributeTargets.Method)]
public sealed class TheoryAttribute : Xunit.TheoryAttribute
{
    public TheoryAttribute() => Skip = Browser.Lacking;
}
