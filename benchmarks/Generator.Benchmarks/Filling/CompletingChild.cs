using System.Diagnostics;
using System.Globalization;
using Generator.Benchmarks.Measuring;
using Generator.Benchmarks.Peers;
using Generator.Domain;
using Generator.Domain.Sketches;
using Generator.Solver.Completing;
using Newtonsoft.Json;

namespace Generator.Benchmarks.Filling;

/// <summary>
/// Completes, in this process, a routine of a stored brief of which only the techniques are said, until nothing gives or the time is up; prints what that took as one line. The routine is drafted
/// first, so that the code has been run.
/// </summary>
internal static class CompletingChild
{
    public const string Word = "completing-one";

    /// <summary>In place of points the answers tell how many of the said things gave.</summary>
    public static int Run(string file, string seconds)
    {
        var stored = StoredBrief.Read(file);
        if (FillRun.Draft(stored.Name, stored.Book) is not { } routine)
        {
            return 2;
        }

        var sketch = Techniques(routine);
        var trace = new List<TracePoint>();
        var (clock, used) = (Stopwatch.GetTimestamp(), Environment.CpuUsage.TotalTime);
        TracePoint Now(int gave) => new(Stopwatch.GetElapsedTime(clock).TotalMilliseconds, (Environment.CpuUsage.TotalTime - used).TotalMilliseconds, gave);
        _ = Complete.Of(sketch, stored.Book, new CompleteOptions { Time = TimeSpan.FromSeconds(double.Parse(seconds, CultureInfo.InvariantCulture)) }, better => trace.Add(Now(better.Gave.Count)));
        var end = Now(0);
        using var own = Process.GetCurrentProcess();
        Console.WriteLine(JsonConvert.SerializeObject(new PeerAnswer
        {
            Brief = stored.Name,
            Peer = "ours",
            Status = trace.Count == 0 ? "Unknown" : trace[^1].Points == 0 ? "Optimal" : "Feasible",
            Trace = trace,
            Elapsed = end.Wall,
            Processor = end.Processor,
            Peak = own.PeakWorkingSet64 / 1048576.0,
            Audited = routine.Moves.Count,
        }));
        return 0;
    }

    private static Sketch Techniques(Routine routine) => new()
    {
        Brief = routine.Brief,
        Placements = new Placement?[routine.Placements.Count],
        Moves = [.. routine.Moves.Select((m, i) => new SketchMove { Line = i + 1, Technique = new SketchCell(m.Technique!, [m.Technique!]) })],
    };
}
