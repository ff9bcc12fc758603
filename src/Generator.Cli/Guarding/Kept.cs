namespace Generator.Cli.Guarding;

/// <summary>A routine that outlived its worker.</summary>
/// <param name="Path">Its file.</param>
/// <param name="Points">Its points.</param>
internal sealed record Kept(string Path, long Points);
