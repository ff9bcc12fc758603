using Generator.Domain;

namespace Generator.Cli.Work;

/// <summary>How a search that has a routine ends: the file first, then the answer, then what is known of it.</summary>
internal static class Answers
{
    /// <param name="desk">Where it is told.</param>
    /// <param name="path">File for the routine; null for none.</param>
    /// <param name="routine">The routine.</param>
    /// <param name="text">The answer as it is printed.</param>
    /// <param name="remarks">What is known of it, line by line.</param>
    public static int Show(Desk desk, string? path, Routine routine, string text, params IEnumerable<string> remarks)
    {
        if (path is not null)
        {
            Outputs.Write(path, routine);
        }

        desk.Out.Write(text);
        var stopped = desk.Stop.IsCancellationRequested ? "Stopped; this is the best so far: " : string.Empty;
        foreach (var remark in remarks)
        {
            desk.Err.WriteLine(stopped + remark);
            stopped = string.Empty;
        }

        if (path is not null)
        {
            desk.Err.WriteLine($"The routine is in {path}.");
        }

        return ExitCode.Good;
    }
}
