using System.Globalization;
using System.Text;

namespace Generator.Cli.Guarding;

/// <summary>What is told of a worker that did not end in an orderly way.</summary>
/// <param name="Kind">Why.</param>
/// <param name="ExitCode">The exit code of its process; above 128 by a signal, except on Windows.</param>
/// <param name="Limits">What it was allowed.</param>
internal sealed record Breakdown(BreakdownKind Kind, int ExitCode, WatchLimits Limits)
{
    /// <summary>Exit code of a process that Ctrl-C ended, except on Windows.</summary>
    public const int ByInterrupt = Signals + 2;

    private const int Signals = 128;

    /// <summary>Makes the cursor visible again and clears the line, in case progress was being shown.</summary>
    private const string CursorBack = "\r\e[K\e[?25h";

    /// <summary>What the guard returns.</summary>
    public int Code => Kind == BreakdownKind.Ended ? Cli.ExitCode.Stopped : Cli.ExitCode.BrokenDown;

    /// <summary>What happened, where the best routine is, and what to try.</summary>
    public string Text(Kept? kept, bool hadTerminal)
    {
        var text = new StringBuilder(hadTerminal && !OperatingSystem.IsWindows() ? CursorBack : string.Empty);
        if (What() is { } what)
        {
            text.Append("Generator stopped: ").Append(what).Append('\n');
        }

        if (kept is not null)
        {
            text.Append(CultureInfo.InvariantCulture, $"  The best routine so far, of {kept.Points} {(kept.Points == 1 ? "point" : "points")}, is in {kept.Path}.\n");
        }
        else if (Kind != BreakdownKind.Told)
        {
            text.Append("  No routine was kept. Every file is whole, as it was or as it was to be.\n");
        }

        return text.Append(Maybe() is { } maybe ? $"  {maybe}\n" : string.Empty).ToString();
    }

    private string? What() => Kind switch
    {
        BreakdownKind.Memory => string.Create(CultureInfo.InvariantCulture, $"the work needed more than {Limits.Megabytes} MB of memory."),
        BreakdownKind.Hung => string.Create(CultureInfo.InvariantCulture, $"the work had not ended {Limits.Grace.TotalSeconds:0} s after its time, and was ended."),
        BreakdownKind.Ended => "it was ended at once.",
        BreakdownKind.Died => string.Create(CultureInfo.InvariantCulture, $"the process that did the work broke down ({Reason()})."),
        _ => null,
    };

    private string? Maybe() => Kind switch
    {
        BreakdownKind.Memory => string.Create(CultureInfo.InvariantCulture, $"Maybe ask for less in the brief, or allow more: {WatchLimits.MemoryVariable}={2 * Limits.Megabytes} in the environment."),
        BreakdownKind.Hung => "Maybe another --seed gets round it; please report it, with the command and the files that were given.",
        BreakdownKind.Died when IsKilled => "Maybe the machine had no memory left, or somebody ended the process: run it again.",
        BreakdownKind.Died => "Maybe another --seed gets round it; please report it, with the command, the files that were given and the lines above.",
        _ => null,
    };

    private bool IsKilled => ExitCode == Signals + 9;

    private string Reason() => (ExitCode - Signals) switch
    {
        4 or 6 => "abort",
        7 or 11 => "a wrong access to memory",
        8 => "a wrong calculation",
        9 => "killed from outside",
        15 => "ended from outside",
        _ => "code " + ExitCode.ToString(CultureInfo.InvariantCulture),
    };
}
