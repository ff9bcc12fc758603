using System.Diagnostics;
using System.Globalization;
using Generator.Benchmarks.Stored;
using Newtonsoft.Json;

namespace Generator.Benchmarks.Measuring;

/// <summary>Measures the stored briefs one after another, each in a process of its own.</summary>
internal static class MeasureRun
{
    /// <summary>Beyond so many moves CP-SAT alone seldom ends in time.</summary>
    private const int MostAlone = 40;

    public static int All(string[] args)
    {
        if (MeasureOptions.Parse(args) is not { } options)
        {
            return 2;
        }

        var results = Of(options);
        Console.WriteLine(MeasureTables.Of(results, BestKnown.Load()));
        Console.WriteLine($"Every brief: {options.Out}");
        return 0;
    }

    public static Results Of(MeasureOptions options)
    {
        var results = new Results { Of = options.Of, Machine = Machine.Now(), Time = options.Time, ByProcessor = options.ByProcessor ? Environment.ProcessorCount : 0 };
        foreach (var family in options.Families)
        {
            var files = family.Files.Take(options.Count).ToList();
            var measured = files.Select(f => One(f, options, MeasureChild.Fresh))
                .Concat(files.Take(options.Warm).Select(f => One(f, options, MeasureChild.Warm)))
                .Concat(files.Take(family.Moves <= MostAlone ? options.Alone : 0).Select(f => One(f, options, MeasureChild.Alone)));
            results = results with { Measurements = [.. results.Measurements, .. measured] };

            // After each family, so that a run that is cut short has not been for nothing.
            results.Save(options.Out);
            Console.Error.WriteLine(string.Create(CultureInfo.InvariantCulture, $"{family.Name}: {files.Count} briefs measured"));
        }

        return results;
    }

    private static Measurement One(string file, MeasureOptions options, string mode)
    {
        string[] words = [MeasureChild.Word, file, options.Time.ToString(CultureInfo.InvariantCulture), options.ByProcessor ? Environment.ProcessorCount.ToString(CultureInfo.InvariantCulture) : "0", mode];
        var start = Tools.Again(options.Program, words.Append(Stopwatch.GetTimestamp().ToString(CultureInfo.InvariantCulture)));
        using var child = Process.Start(start)!;
        var line = child.StandardOutput.ReadToEnd();
        child.WaitForExit();
        return child.ExitCode == 0 && JsonConvert.DeserializeObject<Measurement>(line) is { } measured
            ? measured
            : new Measurement { Brief = MeasureChild.StoredName(file), Warm = mode == MeasureChild.Warm, Alone = mode == MeasureChild.Alone, Status = "Failed" };
    }
}
