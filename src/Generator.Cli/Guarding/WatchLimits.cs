using System.Globalization;

namespace Generator.Cli.Guarding;

/// <summary>What a worker may take before its guard ends it.</summary>
/// <param name="Memory">Bytes of working set.</param>
/// <param name="Grace">Beyond the time that the work itself asked for.</param>
internal sealed record WatchLimits(long Memory, TimeSpan Grace)
{
    /// <summary>Memory in MB (10⁶ bytes), 64 and more. Default 2000, or half of what the machine has when that is less.</summary>
    public const string MemoryVariable = "GENERATOR_MEMORY";

    /// <summary>Seconds, 1 and more. Default 15.</summary>
    public const string GraceVariable = "GENERATOR_GRACE";

    private const long Megabyte = 1_000_000;

    private const long MostMegabytes = 2000;

    /// <summary>Those that the environment names, else the defaults.</summary>
    public static WatchLimits Find()
    {
        var half = GC.GetGCMemoryInfo().TotalAvailableMemoryBytes / (2 * Megabyte);
        return new WatchLimits(
            Number(MemoryVariable, 64) * Megabyte ?? Math.Min(MostMegabytes, Math.Max(half, 256)) * Megabyte,
            TimeSpan.FromSeconds(Number(GraceVariable, 1) ?? 15));
    }

    /// <summary>What the environment says of them and cannot be meant, with what to try, as two lines each; null when it says nothing wrong.</summary>
    public static string? Wrong() =>
        string.Concat(Wrong(MemoryVariable, 64, "a whole number of MB from 64 on", "2000"), Wrong(GraceVariable, 1, "a whole number of seconds from 1 on", "15")) is { Length: > 0 } wrong ? wrong : null;

    /// <summary>Memory as it is told.</summary>
    public long Megabytes => Memory / Megabyte;

    private static string? Wrong(string variable, long least, string what, string example) =>
        Environment.GetEnvironmentVariable(variable) is { Length: > 0 } text && Number(variable, least) is null
            ? $"{variable}={Plain(text)} in the environment is not {what}.\n  Maybe write {variable}={example}, or take it out of the environment.\n"
            : null;

    /// <summary>Nothing that a terminal would obey; the library's own way is not loaded for it.</summary>
    private static string Plain(string text) => string.Concat(text.Select(c => c is >= ' ' and <= '~' ? c : '?'));

    private static long? Number(string variable, long least) =>
        int.TryParse(Environment.GetEnvironmentVariable(variable), NumberStyles.None, CultureInfo.InvariantCulture, out var number) && number >= least ? number : null;
}
