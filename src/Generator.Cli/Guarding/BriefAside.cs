using Generator.Domain;
using Generator.Library.Files;

namespace Generator.Cli.Guarding;

/// <summary>A brief in a file of its own, for a worker whose standard input brings the routine; gone when it is disposed of.</summary>
internal sealed class BriefAside : IDisposable
{
    /// <param name="brief">The brief; where it says no length, it is as long as the routine, give or take a move.</param>
    /// <param name="moves">Moves of the routine.</param>
    public BriefAside(Brief brief, int moves) => RoutineFiles.Write(Path, BriefWriter.Text(brief with { Length = brief.Length ?? new Length(null, Math.Max(1, moves), 1) }));

    public string Path { get; } = System.IO.Path.Combine(System.IO.Path.GetTempPath(), $"generator-{System.IO.Path.GetRandomFileName()}.brief.json");

    public void Dispose() => File.Delete(Path);
}
