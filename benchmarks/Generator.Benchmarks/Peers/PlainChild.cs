using System.Diagnostics;
using System.Globalization;
using Generator.Benchmarks.Measuring;
using Generator.Solver.Engine;
using Newtonsoft.Json;

namespace Generator.Benchmarks.Peers;

/// <summary>Solves the plain formulation of one brief by CP-SAT as its makers set it, in this process, and prints what that took as one line.</summary>
internal static class PlainChild
{
    public const string Word = "plain-one";

    public const string Peer = "plain CP-SAT";

    public static int Run(string file, string seconds, string cores, string asked)
    {
        var stored = StoredBrief.Read(file);
        var model = Question.Of(stored, asked);
        var (clock, used) = (Stopwatch.GetTimestamp(), Environment.CpuUsage.TotalTime);
        var plain = model();
        var built = Stopwatch.GetElapsedTime(clock).TotalMilliseconds;
        var usedBuilding = Environment.CpuUsage.TotalTime - used;
        var trace = new List<TracePoint>();
        var (read, agreed) = (0, 0);
        using var watch = new SearchWatch(TimeSpan.FromSeconds(double.Parse(seconds, CultureInfo.InvariantCulture)), int.Parse(cores, CultureInfo.InvariantCulture), false);
        (clock, used) = (Stopwatch.GetTimestamp(), Environment.CpuUsage.TotalTime);
        using var session = plain.Model.Session();
        var answer = session.Solve(new SearchSettings { AsMade = true, Time = watch.Clock }, (value, points) =>
        {
            var now = new TracePoint(Stopwatch.GetElapsedTime(clock).TotalMilliseconds, (Environment.CpuUsage.TotalTime - used).TotalMilliseconds, (int)points);
            read++;
            if (plain.Read(value).Verdict is { IsClean: true } verdict)
            {
                trace.Add(now);
                agreed += verdict.Points == points ? 1 : 0;
            }
        }, watch.Stop);
        using var own = Process.GetCurrentProcess();
        Console.WriteLine(JsonConvert.SerializeObject(new PeerAnswer
        {
            Brief = stored.Name,
            Peer = Peer,
            Status = answer.ToString(),
            Build = built,
            BuildProcessor = usedBuilding.TotalMilliseconds,
            Trace = trace,
            Elapsed = Stopwatch.GetElapsedTime(clock).TotalMilliseconds,
            Processor = (Environment.CpuUsage.TotalTime - used).TotalMilliseconds,
            Peak = own.PeakWorkingSet64 / 1048576.0,
            Audited = read,
            Agreed = agreed,
        }));
        return 0;
    }
}
