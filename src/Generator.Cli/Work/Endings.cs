using Generator.Paperwork.Text;

namespace Generator.Cli.Work;

/// <summary>How a search without an answer ends, in words and exit code. Running out of time is never told as impossible.</summary>
internal static class Endings
{
    /// <summary>What is proven is proven of the marks that stand in the brief, chosen ones as well.</summary>
    public const string OnChosenMarks = "That is proven of the marks that were chosen, and not of all that might be.\n  Maybe another --seed, which chooses others, finds one.";

    /// <param name="desk">Where it is told.</param>
    /// <param name="clash">Statements of the brief.</param>
    /// <param name="reasons">Why, in further words.</param>
    /// <param name="onChosenMarks">The brief does not name its marks.</param>
    public static int Impossible(Desk desk, IReadOnlyList<string> clash, IReadOnlyList<string>? reasons = null, bool onChosenMarks = false)
    {
        desk.Err.WriteLine(clash.Count == 1 ? "No routine can satisfy this brief. This cannot be:" : "No routine can satisfy this brief. These clash:");
        foreach (var statement in clash)
        {
            desk.Err.WriteLine("  - " + Page.Clean(statement));
        }

        foreach (var reason in reasons ?? [])
        {
            desk.Err.WriteLine("  " + Page.Clean(reason));
        }

        desk.Err.WriteLine(clash.Count == 1 ? "  Maybe leave it out." : "  Maybe give up one of them.");
        if (onChosenMarks)
        {
            desk.Err.WriteLine(OnChosenMarks);
        }

        return ExitCode.Impossible;
    }

    /// <param name="desk">Where it is told.</param>
    /// <param name="what">"a routine", "a repair".</param>
    public static int OutOfTime(Desk desk, string what)
    {
        var why = desk.Stop.IsCancellationRequested ? "The search was stopped" : "Time ran out";
        desk.Err.WriteLine($"{why} before there was {what}. Whether there is one is not known: nothing was proven against it.");
        desk.Err.WriteLine("  Maybe give it more with --time, try another --seed, or ask for less in the brief.");
        return ExitCode.OutOfTime;
    }
}
