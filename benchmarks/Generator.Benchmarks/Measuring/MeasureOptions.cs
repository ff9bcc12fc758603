using System.Globalization;
using Generator.Benchmarks.Stored;

namespace Generator.Benchmarks.Measuring;

/// <summary>What stood on the command line of a measuring run.</summary>
internal sealed record MeasureOptions
{
    public const string Words = "--size 24x3, --family tight-24x3, --count 5, --time 10, --cpu, --warm 3, --alone 3, --out FILE, --of NAME, --program FILE";

    public IReadOnlyList<Family> Families { get; init; } = Family.All;

    /// <summary>Briefs of each family.</summary>
    public int Count { get; init; } = 10;

    /// <summary>Seconds a brief.</summary>
    public double Time { get; init; } = 10;

    /// <summary>The limit is the processor time of all cores for so many seconds, not the clock.</summary>
    public bool ByProcessor { get; init; }

    /// <summary>Briefs of each family that are measured a second time, warm.</summary>
    public int Warm { get; init; }

    /// <summary>Briefs of each family up to 40 moves that are measured again with CP-SAT alone.</summary>
    public int Alone { get; init; }

    public string Out { get; init; } = Path.Combine(Places.Artifacts, "measured.json");

    public string Of { get; init; } = string.Empty;

    /// <summary>The program whose processes are measured; null for this one.</summary>
    public string? Program { get; init; }

    /// <summary>Null, with a word to the user, when something is wrong.</summary>
    public static MeasureOptions? Parse(string[] args)
    {
        var options = new MeasureOptions();
        for (var i = 0; i < args.Length; i++)
        {
            if (string.Equals(args[i], "--cpu", StringComparison.Ordinal))
            {
                options = options with { ByProcessor = true };
                continue;
            }

            var (name, value) = (args[i], i + 1 < args.Length ? args[++i] : string.Empty);
            if (options.With(name, value) is not { } next)
            {
                Console.Error.WriteLine($"{name} {value}: these options are known: {Words}.\nMaybe a value is missing, or there is no such family.");
                return null;
            }

            options = next;
        }

        return options;
    }

    private MeasureOptions? With(string name, string value) => name switch
    {
        "--size" when Family.All.Where(f => string.Equals(f.Size, value, StringComparison.Ordinal)).ToList() is { Count: > 0 } some => this with { Families = some },
        "--family" when Family.All.Where(f => string.Equals(f.Name, value, StringComparison.Ordinal)).ToList() is { Count: > 0 } some => this with { Families = some },
        "--count" when Whole(value) is { } count and > 0 => this with { Count = count },
        "--warm" when Whole(value) is { } warm => this with { Warm = warm },
        "--alone" when Whole(value) is { } alone => this with { Alone = alone },
        "--time" when double.TryParse(value, NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out var seconds) && seconds >= 0.1 => this with { Time = seconds },
        "--out" when value.Length > 0 => this with { Out = value },
        "--of" when value.Length > 0 => this with { Of = value },
        "--program" when File.Exists(value) => this with { Program = Path.GetFullPath(value) },
        _ => null,
    };

    private static int? Whole(string value) => int.TryParse(value, NumberStyles.None, CultureInfo.InvariantCulture, out var number) ? number : null;
}
