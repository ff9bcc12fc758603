namespace Generator.Outside.Tests;

/// <summary>A job of a textbook instance for one machine.</summary>
/// <param name="Name">As in the source.</param>
/// <param name="Work">How long it takes.</param>
/// <param name="Due">When it should be done.</param>
/// <param name="Release">When it may start.</param>
internal sealed record Job(string Name, int Work, int Due, int Release = 0);
