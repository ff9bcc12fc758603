using Generator.Benchmarks.Measuring;
using Generator.Benchmarks.Stored;

namespace Generator.Benchmarks.Reporting;

/// <summary>Takes the points of results into the best known where they are fewer; never the other way.</summary>
internal static class LowerRun
{
    public static int All(string[] args)
    {
        if (args.Length == 0 || !args.All(File.Exists))
        {
            Console.Error.WriteLine("lower FILE.json… takes files of measure --out.\nMaybe the name is wrong.");
            return 2;
        }

        var known = BestKnown.Load();
        foreach (var measurement in args.SelectMany(a => Results.Load(a).Measurements).Where(m => m.Trace.Count > 0 && m.Status == "Found"))
        {
            var before = known.Of(measurement.Brief);
            if (known.Lower(measurement.Brief, measurement.Trace[^1].Points))
            {
                Console.WriteLine(FormattableString.Invariant($"{measurement.Brief}: {before?.ToString(System.Globalization.CultureInfo.InvariantCulture) ?? "nothing"} → {measurement.Trace[^1].Points}"));
            }
        }

        known.Save();
        return 0;
    }
}
