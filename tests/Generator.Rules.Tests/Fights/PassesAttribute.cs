namespace Generator.Rules.Tests.Fights;

/// <summary>The test shows a fight in which this rule finds nothing.</summary>
[AttributeUsage(AttributeTargets.Method, AllowMultiple = true)]
internal sealed class PassesAttribute(string rule) : Attribute
{
    public string Rule { get; } = rule;
}
