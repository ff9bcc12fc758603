using System.Globalization;
using System.Runtime.InteropServices;
using Google.OrTools.Sat;

namespace Generator.Benchmarks.Measuring;

/// <summary>On what, with what and when results were made.</summary>
internal sealed record Machine
{
    public string Processor { get; init; } = string.Empty;

    public int Cores { get; init; }

    public string Memory { get; init; } = string.Empty;

    public string System { get; init; } = string.Empty;

    public string Runtime { get; init; } = string.Empty;

    public string Solver { get; init; } = string.Empty;

    /// <summary>Day and time of the run, in UTC.</summary>
    public string Date { get; init; } = string.Empty;

    /// <summary>Load over the last minute when the run began, where the system tells it: far above 0, times by the clock mean little.</summary>
    public string Load { get; init; } = string.Empty;

    /// <summary>Milliseconds that one audit of 200 moves takes on this machine now: times of other machines and days compare by it.</summary>
    public double Audit { get; init; }

    public static Machine Now() => new()
    {
        Processor = FromFile("/proc/cpuinfo", "model name") ?? RuntimeInformation.ProcessArchitecture.ToString(),
        Cores = Environment.ProcessorCount,
        Memory = string.Create(CultureInfo.InvariantCulture, $"{GC.GetGCMemoryInfo().TotalAvailableMemoryBytes / 1073741824.0:0.0} GiB"),
        System = (FromFile("/etc/os-release", "PRETTY_NAME")?.Trim('"') ?? RuntimeInformation.OSDescription) + ", " + RuntimeInformation.OSArchitecture,
        Runtime = RuntimeInformation.FrameworkDescription,
        Solver = "OR-Tools " + (typeof(CpModel).Assembly.GetName().Version?.ToString(3) ?? "of unknown version"),
        Date = TimeProvider.System.GetUtcNow().ToString("yyyy-MM-dd HH:mm 'UTC'", CultureInfo.InvariantCulture),
        Load = File.Exists("/proc/loadavg") ? File.ReadAllText("/proc/loadavg").Split(' ')[0] : string.Empty,
        Audit = AuditUnit.Milliseconds(),
    };

    private static string? FromFile(string path, string name)
    {
        var line = File.Exists(path) ? File.ReadLines(path).FirstOrDefault(l => l.StartsWith(name, StringComparison.Ordinal)) : null;
        return line?[(line.IndexOfAny([':', '=']) + 1)..].Trim();
    }
}
