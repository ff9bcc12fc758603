using System.Globalization;
using Generator.Cli.Work;
using Generator.Domain;
using Generator.Paperwork.Text;
using Generator.Solver.Reworking;

namespace Generator.Cli.Changes;

/// <summary>Tells of every better change, one line each.</summary>
/// <param name="progress">Is told in words.</param>
/// <param name="keep">Told of the routine and its points.</param>
internal sealed class ChangeProgress(Progress progress, Action<Routine, int> keep)
{
    private readonly Lock gate = new();

    public void Report(Reworked better)
    {
        lock (gate)
        {
            if (better.Change.IsNothing)
            {
                return;
            }

            keep(better.Routine, better.Verdict.Points);
            var moves = better.Change.Changed == 1 ? "1 move changes" : string.Create(CultureInfo.InvariantCulture, $"{better.Change.Changed} moves change");
            progress.Tell(string.Create(CultureInfo.InvariantCulture, $"{moves}, others shift by {Words.Span(new HalfCounts(better.Change.Shift))}, {Words.Points(better.Verdict.Points)}"));
        }
    }
}
