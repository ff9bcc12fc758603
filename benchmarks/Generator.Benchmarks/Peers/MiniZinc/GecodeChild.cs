using System.Diagnostics;
using System.Globalization;
using Generator.Benchmarks.Measuring;
using Newtonsoft.Json;

namespace Generator.Benchmarks.Peers.MiniZinc;

/// <summary>Writes the plain formulation of one brief in MiniZinc, has Gecode solve it, reads every answer back and audits it; prints what that took as one line.</summary>
internal static class GecodeChild
{
    public const string Word = "gecode-one";

    public static string PeerOf(SearchWay way) => $"MiniZinc, Gecode {way.Name}";

    public static int Run(string file, string seconds, string cores, string way, string asked)
    {
        var stored = StoredBrief.Read(file);
        var search = SearchWay.All.First(w => string.Equals(w.Choice, way, StringComparison.Ordinal));
        var model = Question.Of(stored, asked);
        var (clock, used) = (Stopwatch.GetTimestamp(), Environment.CpuUsage.TotalTime);
        var plain = model();
        var translation = new Translation(plain);
        var path = Path.Combine(Path.GetTempPath(), $"{stored.Name}-{way}-{Environment.ProcessId}.mzn");
        File.WriteAllText(path, translation.Text(search));
        var (built, usedBuilding) = (Stopwatch.GetElapsedTime(clock).TotalMilliseconds, Environment.CpuUsage.TotalTime - used);
        var flat = Path.ChangeExtension(path, ".fzn");
        try
        {
            var (flattening, flatteningProcessor) = Gecode.Flatten(path, flat);
            var trace = new List<TracePoint>();
            var (read, agreed, best) = (0, 0, int.MaxValue);
            var (word, wall, processor, peak) = Gecode.Solve(flat, TimeSpan.FromSeconds(double.Parse(seconds, CultureInfo.InvariantCulture)), int.Parse(cores, CultureInfo.InvariantCulture), (answer, atWall, atProcessor) =>
            {
                read++;
                var (_, verdict) = plain.Read(translation.Reader(answer));
                agreed += verdict.IsClean && verdict.Points == answer[^1] ? 1 : 0;
                if (verdict.IsClean && verdict.Points < best)
                {
                    best = verdict.Points;
                    trace.Add(new TracePoint(atWall, atProcessor, best));
                }
            });
            Console.WriteLine(JsonConvert.SerializeObject(new PeerAnswer
            {
                Brief = stored.Name,
                Peer = PeerOf(search),
                Status = word switch { "complete" => "Optimal", "UNSATISFIABLE" => "Infeasible", _ => trace.Count > 0 ? "Feasible" : "Unknown" },
                Build = built,
                BuildProcessor = usedBuilding.TotalMilliseconds,
                Flatten = flattening,
                FlattenProcessor = flatteningProcessor,
                Trace = trace,
                Elapsed = wall,
                Processor = processor,
                Peak = peak,
                Audited = read,
                Agreed = agreed,
            }));
        }
        finally
        {
            foreach (var left in new[] { path, flat, Path.ChangeExtension(path, ".ozn") }.Where(File.Exists))
            {
                File.Delete(left);
            }
        }

        return 0;
    }
}
