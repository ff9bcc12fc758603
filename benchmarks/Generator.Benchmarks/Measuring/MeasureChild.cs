using System.Diagnostics;
using System.Globalization;
using Generator.Domain;
using Generator.Library;
using Generator.Library.Files;
using Generator.Library.Reading;
using Generator.Solver;
using Generator.Solver.Questions;
using Newtonsoft.Json;

namespace Generator.Benchmarks.Measuring;

/// <summary>Drafts one brief in this process and prints its measurement as one line.</summary>
internal static class MeasureChild
{
    public const string Word = "measure-one";

    public const string Fresh = "fresh";

    public const string Warm = "warm";

    public const string Alone = "alone";

    /// <summary>Processor time spent on running the code before a warm measurement.</summary>
    private static readonly TimeSpan WarmUp = TimeSpan.FromSeconds(5);

    /// <param name="file">The brief.</param>
    /// <param name="seconds">Limit of the search.</param>
    /// <param name="cores">Cores whose processor time is the limit, or 0 for the clock.</param>
    /// <param name="mode">"fresh"; "warm" to measure only the time to the first routine, after the code has been run for some seconds; "alone" for CP-SAT alone.</param>
    /// <param name="began">Timestamp taken by the caller just before it started this process.</param>
    public static int Run(string file, string seconds, string cores, string mode, string began)
    {
        var entered = Stopwatch.GetTimestamp();
        var book = LongRoutine.Book();
        var loaded = Stopwatch.GetTimestamp();
        var problems = new ProblemList();
        var source = SourceFile.Load(file, problems);
        var read = source is null ? null : BriefReader.Parse(source, book);
        if (read?.Value is not { } brief)
        {
            Console.Error.WriteLine(read?.ToText() ?? $"{file} cannot be read.");
            return 2;
        }

        var inHand = Stopwatch.GetTimestamp();
        var isWarm = string.Equals(mode, Warm, StringComparison.Ordinal);
        if (isWarm)
        {
            WarmedUp(brief, book);
        }

        var limit = TimeSpan.FromSeconds(double.Parse(seconds, CultureInfo.InvariantCulture));
        var alone = string.Equals(mode, Alone, StringComparison.Ordinal);
        using var watch = new SearchWatch(limit, int.Parse(cores, CultureInfo.InvariantCulture), isWarm);
        var result = Drafting.Draft(brief, book, new DraftOptions { Time = watch.Clock, Cold = alone }, watch, watch.Stop);
        watch.End();
        using var own = Process.GetCurrentProcess();
        Console.WriteLine(JsonConvert.SerializeObject(new Measurement
        {
            Brief = StoredName(file),
            Warm = isWarm,
            Alone = alone,
            Status = result.Status.ToString(),
            Standing = result.Routine is null ? string.Empty : result.Standing.ToString(),
            Start = Stopwatch.GetElapsedTime(long.Parse(began, CultureInfo.InvariantCulture), entered).TotalMilliseconds,
            Library = Stopwatch.GetElapsedTime(entered, loaded).TotalMilliseconds,
            Reading = Stopwatch.GetElapsedTime(loaded, inHand).TotalMilliseconds,
            Trace = watch.Trace,
            Elapsed = watch.Wall,
            Processor = watch.Processor,
            Peak = own.PeakWorkingSet64 / 1048576.0,
        }));
        return 0;
    }

    public static string StoredName(string file) => Path.GetFileName(file).Replace(".brief.json", string.Empty, StringComparison.Ordinal);

    /// <summary>Drafts the same brief by other seeds.</summary>
    private static void WarmedUp(Brief brief, Book book)
    {
        var before = Environment.CpuUsage.TotalTime;
        for (var seed = 1001; Environment.CpuUsage.TotalTime - before < WarmUp; seed++)
        {
            using var watch = new SearchWatch(WarmUp, 1, true);
            _ = Drafting.Draft(brief, book, new DraftOptions { Time = watch.Clock, Seed = seed }, watch, watch.Stop);
        }

        GC.Collect();
    }
}
