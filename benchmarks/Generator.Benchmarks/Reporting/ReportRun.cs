using System.Diagnostics;
using System.Globalization;
using System.Text;
using BenchmarkDotNet.Configs;
using BenchmarkDotNet.Jobs;
using BenchmarkDotNet.Running;
using Generator.Benchmarks.Measuring;
using Generator.Benchmarks.Peers;
using Generator.Benchmarks.Peers.MiniZinc;
using Generator.Benchmarks.Stored;

namespace Generator.Benchmarks.Reporting;

/// <summary>Measures everything and writes <c>benchmarks/report.md</c> and the results behind it.</summary>
internal static class ReportRun
{
    public static int All(string[] args)
    {
        if (ReportOptions.Parse(args) is not { } options)
        {
            return 2;
        }

        var clock = Stopwatch.StartNew();
        var published = Publish();
        var results = MeasureRun.Of(new MeasureOptions { Count = options.Count, Warm = options.Warm, Alone = options.Alone, Time = options.Time, ByProcessor = options.ByProcessor, Of = options.Of ?? Tools.Commit(), Program = published, Out = Path.Combine(Places.Results, "now.json") });
        var known = BestKnown.Load();
        var text = new StringBuilder(Head(results, options));
        text.Append(CultureInfo.InvariantCulture, $"## The stored briefs\n\n{MeasureTables.Of(results, known)}\n");
        text.Append(CultureInfo.InvariantCulture, $"## Against other ways to solve the same\n\n{Others(options, results)}\n");
        text.Append("## Completing\n\nHow long filling in takes where only the techniques are said, here and the other ways: `results/completing.md`, made by the command `completing`.\n\n");
        if (options.Before is { } before)
        {
            text.Append(CultureInfo.InvariantCulture, $"## Points before and after\n\n{CompareRun.Of(Results.Load(before), results)}\n");
        }

        if (options.Audit)
        {
            text.Append(CultureInfo.InvariantCulture, $"## Audit, replay and loading (BenchmarkDotNet, short run)\n\n{AuditTable()}\n");
            text.Append(CultureInfo.InvariantCulture, $"### The audit as routines grow, in processor time\n\n{AuditScaling.Table()}\n");
        }

        text.Append(CultureInfo.InvariantCulture, $"All of this took {clock.Elapsed.TotalMinutes:0} minutes.\n");
        var path = Path.Combine(Places.Benchmarks, "report.md");
        File.WriteAllText(path, text.ToString());
        Console.WriteLine(path);
        return 0;
    }

    private static string Head(Results results, ReportOptions options)
    {
        var machine = results.Machine;
        return string.Create(CultureInfo.InvariantCulture, $"""
            # Benchmarks

            Made by `dotnet run -c Release --project benchmarks/Generator.Benchmarks -- report`; written by the program, not by hand.

            - {results.Of}, {machine.Date}
            - {machine.Processor}, {machine.Cores} cores, {machine.Memory} of memory, {machine.System}; load over the minute before: {machine.Load}; an audit of 200 moves takes {machine.Audit:0.000} ms there, by which other machines compare
            - {machine.Runtime}, {machine.Solver}, {Gecode.Version() ?? "no MiniZinc with Gecode installed"}
            - The full library, {options.Count} briefs of each family at most, {options.Time:0.#} s {(options.ByProcessor ? "of both cores, by processor time, " : string.Empty)}each, seed 1. "Fresh" is a process that has just begun, compiled ahead of time as it is
              published; "warm" is a process that has drafted the brief by other seeds for some seconds. Processor time is that of all threads together; it tells more than the clock where
              the load was high.
            - Figures are medians, in brackets the least, [the quartiles] and the greatest. "≥": some runs were ended by the clock, so that the truth is at least as large.


            """);
    }

    private static string Others(ReportOptions options, Results results)
    {
        var path = Path.Combine(Places.Results, "peers.json");
        if (options.KeepPeers ? !File.Exists(path) : options.Peers == 0)
        {
            return "Left out of this run.\n";
        }

        var peers = options.KeepPeers ? PeerResults.Load(path) : PeerRun.Of(new MeasureOptions { Count = options.Peers, Time = options.Limit, ByProcessor = options.ByProcessor }, path);
        var missing = peers.Gecode is null ? Gecode.HowToInstall + "\n\n" : string.Empty;
        return string.Create(CultureInfo.InvariantCulture, $"""
            {missing}"Plain CP-SAT" is one model over the whole length with one table a row, solved by OR-Tools as its makers set it. "MiniZinc" is the same model written in MiniZinc with
            variables of whole domains and tables, solved by {peers.Gecode ?? "Gecode"} on two threads with restarts, its search told row by row or by weighted failures. Debian has no other
            solver that its MiniZinc could call. All rules and the same points, save that nobody sets off before count 1; each had {peers.Limit:0} s from 24 moves on and at most {PeerRun.SmallTime:0} s below{(peers.ByProcessor > 0 ? " of both cores, by processor time" : string.Empty)}. Ours is the fresh process above, from the brief in hand. Measured {peers.Machine.Date}, load {peers.Machine.Load}. "≥" stands where a run ended without a routine: it counts with all of its time, so that the true multiple is larger.

            {PeerTables.Of(peers, results)}
            """);
    }

    /// <summary>This program compiled ahead of time, as users have it.</summary>
    private static string Publish()
    {
        var folder = Path.Combine(Places.Artifacts, "ready");
        var (code, said) = Tools.Say("dotnet", "publish", Path.Combine(Places.Benchmarks, "Generator.Benchmarks"), "-c", "Release", "-p:PublishReadyToRun=true", "-o", folder, "-v", "q", "-nologo");
        return code == 0 ? Path.Combine(folder, "Generator.Benchmarks") : throw new InvalidOperationException(said);
    }

    private static string AuditTable()
    {
        var settings = DefaultConfig.Instance.WithArtifactsPath(Places.Artifacts).AddJob(Job.ShortRun);
        BenchmarkRunner.Run<AuditBenchmark>(settings);
        var report = Directory.EnumerateFiles(Path.Combine(Places.Artifacts, "results"), "*AuditBenchmark-report-github.md").First();
        return string.Join('\n', File.ReadLines(report).Where(l => l.StartsWith('|'))) + "\n";
    }
}
