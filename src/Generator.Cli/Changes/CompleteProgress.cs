using System.Diagnostics;
using System.Globalization;
using Generator.Domain;
using Generator.Solver.Completing;

namespace Generator.Cli.Changes;

/// <summary>Tells of every better filling of a sketch, one line each.</summary>
/// <param name="lines">Where the lines go.</param>
/// <param name="keep">Told of the routine and its points.</param>
internal sealed class CompleteProgress(TextWriter lines, Action<Routine, int> keep)
{
    private readonly Stopwatch clock = Stopwatch.StartNew();

    public void Report(Completed better)
    {
        keep(better.Routine, better.Verdict.Points);
        lines.WriteLine(string.Create(
            CultureInfo.InvariantCulture,
            $"{better.Stands} of {better.Said} moves stand, {better.Gave.Count(g => g.Part == SketchPart.Added)} put in, {better.Verdict.Points} points, after {clock.Elapsed.TotalSeconds:0.0} s"));
    }
}
