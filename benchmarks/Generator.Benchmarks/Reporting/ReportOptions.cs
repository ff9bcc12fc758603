using System.Globalization;

namespace Generator.Benchmarks.Reporting;

/// <summary>What stood on the command line of a report.</summary>
internal sealed record ReportOptions
{
    public const string Words = "--quick, --count 20, --warm 2, --alone 1, --time 10, --peers 1, --limit 25, --keep-peers, --cpu, --no-audit, --of NAME, --before FILE";

    /// <summary>Briefs of each family.</summary>
    public int Count { get; init; } = 20;

    /// <summary>Briefs of each family measured warm as well.</summary>
    public int Warm { get; init; } = 2;

    /// <summary>Briefs of each family up to 40 moves measured with CP-SAT alone as well.</summary>
    public int Alone { get; init; } = 1;

    /// <summary>Seconds a brief.</summary>
    public double Time { get; init; } = 10;

    /// <summary>Briefs of each small family solved the other ways; 0 for none.</summary>
    public int Peers { get; init; } = 1;

    /// <summary>Seconds that each of the other ways has for a brief.</summary>
    public double Limit { get; init; } = 25;

    /// <summary>Takes the stored results of the other ways instead of measuring them again.</summary>
    public bool KeepPeers { get; init; }

    /// <summary>Limits are processor time of all cores, not the clock: for a machine on which others work as well.</summary>
    public bool ByProcessor { get; init; }

    /// <summary>Also runs BenchmarkDotNet over audit and replay.</summary>
    public bool Audit { get; init; } = true;

    /// <summary>What is measured; null for the commit that is checked out.</summary>
    public string? Of { get; init; }

    /// <summary>Stored results of an older version, to compare points with; null for none.</summary>
    public string? Before { get; init; } = File.Exists(DefaultBefore) ? DefaultBefore : null;

    private static string DefaultBefore => Path.Combine(Places.Results, "before.json");

    /// <summary>Null, with a word to the user, when something is wrong.</summary>
    public static ReportOptions? Parse(string[] args)
    {
        var options = new ReportOptions();
        for (var i = 0; i < args.Length; i++)
        {
            var flag = args[i] switch
            {
                "--quick" => options with { Count = 2, Warm = 1, Alone = 1, Time = 5, Peers = 1, Limit = 15, Audit = false },
                "--keep-peers" => options with { KeepPeers = true },
                "--cpu" => options with { ByProcessor = true },
                "--no-audit" => options with { Audit = false },
                _ => null,
            };
            var next = flag ?? (i + 1 < args.Length ? options.With(args[i], args[++i]) : null);
            if (next is null)
            {
                Console.Error.WriteLine($"{string.Join(' ', args.Take(i + 1))}: these options are known: {Words}.\nMaybe a value is missing or wrong.");
                return null;
            }

            options = next;
        }

        return options;
    }

    private ReportOptions? With(string name, string value) => name switch
    {
        "--count" when Whole(value) is { } n and > 0 => this with { Count = n },
        "--warm" when Whole(value) is { } n => this with { Warm = n },
        "--alone" when Whole(value) is { } n => this with { Alone = n },
        "--peers" when Whole(value) is { } n => this with { Peers = n },
        "--time" when Seconds(value) is { } s => this with { Time = s },
        "--limit" when Seconds(value) is { } s => this with { Limit = s },
        "--of" when value.Length > 0 => this with { Of = value },
        "--before" when File.Exists(value) => this with { Before = value },
        _ => null,
    };

    private static int? Whole(string value) => int.TryParse(value, NumberStyles.None, CultureInfo.InvariantCulture, out var number) ? number : null;

    private static double? Seconds(string value) => double.TryParse(value, NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out var seconds) && seconds >= 0.1 ? seconds : null;
}
