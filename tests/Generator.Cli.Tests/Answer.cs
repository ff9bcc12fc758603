namespace Generator.Cli.Tests;

/// <summary>What a run of the program gave back.</summary>
internal sealed record Answer(int Code, string Out, string Err);
