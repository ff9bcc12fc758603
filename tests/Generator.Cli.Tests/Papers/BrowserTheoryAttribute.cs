namespace Generator.Cli.Tests.Papers;

/// <summary>The same for a test with cases.</summary>
[AttributeUsage(AttributeTargets.Method)]
public sealed class BrowserTheoryAttribute : TheoryAttribute
{
    public BrowserTheoryAttribute() => Skip = BrowserFactAttribute.Lacking;
}
