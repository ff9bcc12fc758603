using System.Globalization;
using Generator.Cli.Work;
using Generator.Domain;
using Generator.Paperwork.Text;
using Generator.Solver.Completing;

namespace Generator.Cli.Changes;

/// <summary>Tells of every better filling of a sketch, one line each.</summary>
/// <param name="progress">Is told in words.</param>
/// <param name="keep">Told of the routine and its points.</param>
internal sealed class CompleteProgress(Progress progress, Action<Routine, int> keep)
{
    public void Report(Completed better)
    {
        keep(better.Routine, better.Verdict.Points);
        progress.Tell(string.Create(
            CultureInfo.InvariantCulture,
            $"{better.Stands} of {better.Said} moves stand, {better.Gave.Count(g => g.Part == SketchPart.Added)} put in, {Words.Points(better.Verdict.Points)}"));
    }
}
