namespace Generator.Outside.Tests;

/// <summary>A test that reads a file with a package of Python, and is skipped where that is not there.</summary>
[AttributeUsage(AttributeTargets.Method)]
public sealed class PythonFactAttribute : FactAttribute
{
    public PythonFactAttribute(string package) => Skip = Python.Lacking(package);
}
