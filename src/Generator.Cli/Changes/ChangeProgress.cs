using System.Diagnostics;
using System.Globalization;
using Generator.Domain;
using Generator.Paperwork.Text;
using Generator.Solver.Reworking;

namespace Generator.Cli.Changes;

/// <summary>Tells of every better change, one line each.</summary>
internal sealed class ChangeProgress(TextWriter lines)
{
    private readonly Stopwatch clock = Stopwatch.StartNew();
    private readonly Lock gate = new();

    public void Report(Reworked better)
    {
        lock (gate)
        {
            if (better.Change.IsNothing)
            {
                return;
            }

            var moves = better.Change.Changed == 1 ? "1 move changes" : string.Create(CultureInfo.InvariantCulture, $"{better.Change.Changed} moves change");
            lines.WriteLine(string.Create(CultureInfo.InvariantCulture, $"{moves}, others shift by {Words.Span(new HalfCounts(better.Change.Shift))}, {better.Verdict.Points} points, after {clock.Elapsed.TotalSeconds:0.0} s"));
        }
    }
}
