using System.Globalization;
using Generator.Domain;
using Generator.Paperwork.Text;
using Generator.Solver;
using Generator.Solver.Questions;

namespace Generator.Cli.Work;

/// <summary>Tells of every better routine of a draft.</summary>
/// <param name="progress">Is told in words.</param>
/// <param name="keep">Told of every better routine that is not the last.</param>
internal sealed class ProgressBoard(Progress progress, Action<Routine, int>? keep = null) : IProgress<DraftProgress>
{
    private readonly Lock gate = new();
    private int? fewest;

    public void Report(DraftProgress value)
    {
        lock (gate)
        {
            if (value.BestPoints is not { } points || points >= fewest)
            {
                return;
            }

            fewest = points;
            if (value.Best is { } routine && points > value.Bound)
            {
                keep?.Invoke(routine, points);
            }

            progress.Tell(string.Create(CultureInfo.InvariantCulture, $"{Words.Points(points)}, no fewer than {value.Bound}"));
        }
    }
}
