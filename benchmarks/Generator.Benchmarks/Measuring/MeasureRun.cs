using System.Diagnostics;
using System.Globalization;
using Generator.Benchmarks.Stored;
using Newtonsoft.Json;

namespace Generator.Benchmarks.Measuring;

/// <summary>Measures the stored briefs one after another, each in a process of its own.</summary>
internal static class MeasureRun
{
    public static int All(string[] args)
    {
        if (MeasureOptions.Parse(args) is not { } options)
        {
            return 2;
        }

        var results = Of(options);
        results.Save(options.Out);
        Console.WriteLine(MeasureTables.Of(results, BestKnown.Load()));
        Console.WriteLine($"Every brief: {options.Out}");
        return 0;
    }

    public static Results Of(MeasureOptions options)
    {
        var machine = Machine.Now();
        var measurements = new List<Measurement>();
        foreach (var family in options.Families)
        {
            var files = family.Files.Take(options.Count).ToList();
            measurements.AddRange(files.Select(f => One(f, options, false)));
            measurements.AddRange(files.Take(options.Warm).Select(f => One(f, options, true)));
            Console.Error.WriteLine(string.Create(CultureInfo.InvariantCulture, $"{family.Name}: {files.Count} briefs measured"));
        }

        return new Results { Of = options.Of, Machine = machine, Time = options.Time, ByProcessor = options.ByProcessor ? machine.Cores : 0, Measurements = measurements };
    }

    private static Measurement One(string file, MeasureOptions options, bool warm)
    {
        var start = new ProcessStartInfo(options.Program ?? Environment.ProcessPath!) { RedirectStandardOutput = true, UseShellExecute = false };
        foreach (var word in new[] { MeasureChild.Word, file, options.Time.ToString(CultureInfo.InvariantCulture), options.ByProcessor ? Environment.ProcessorCount.ToString(CultureInfo.InvariantCulture) : "0", warm ? "warm" : "fresh" })
        {
            start.ArgumentList.Add(word);
        }

        start.ArgumentList.Add(Stopwatch.GetTimestamp().ToString(CultureInfo.InvariantCulture));
        using var child = Process.Start(start)!;
        var line = child.StandardOutput.ReadToEnd();
        child.WaitForExit();
        return child.ExitCode == 0 && JsonConvert.DeserializeObject<Measurement>(line) is { } measured
            ? measured
            : new Measurement { Brief = MeasureChild.StoredName(file), Warm = warm, Status = "Failed" };
    }
}
