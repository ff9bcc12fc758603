using System.CommandLine;

namespace Generator.Cli.Options;

/// <summary>The options of every command that searches: declared once, and read into <see cref="SearchAsked"/>.</summary>
internal sealed class SearchOptions
{
    /// <param name="seed">What another number does.</param>
    /// <param name="seconds">How long the search is when nothing else is said.</param>
    /// <param name="output">Where results go.</param>
    /// <param name="time">What the seconds are.</param>
    public SearchOptions(string seed, string seconds, Option<string?> output, string time = "How long to search at most")
    {
        Seed = NumberOption.Whole("--seed", "N", $"{seed} (1).", 0, int.MaxValue);
        Time = NumberOption.Seconds("--time", $"{time} ({seconds}).", 0.1m, 3600);
        Out = output;
    }

    public Option<int?> Seed { get; }

    public Option<TimeSpan?> Time { get; }

    public Option<string?> Out { get; }

    public Option<bool> Json { get; } = CommonOptions.Json();

    public Option<string[]> Library { get; } = CommonOptions.Library();

    /// <summary>Adds what stands on the command line to what a command has read for itself.</summary>
    public T Read<T>(ParseResult parsed, T asked)
        where T : SearchAsked => (T)((SearchAsked)asked with
        {
            Seed = parsed.GetValue(Seed),
            Time = parsed.GetValue(Time),
            Out = parsed.GetValue(Out),
            Json = parsed.GetValue(Json),
            Library = parsed.GetValue(Library) ?? [],
        });
}
