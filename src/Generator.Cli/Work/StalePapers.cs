using Generator.Library.Files;
using Generator.Paperwork;
using Generator.Paperwork.Printing;

namespace Generator.Cli.Work;

/// <summary>Papers of an earlier run that the folder still holds: they speak of another routine, cast or plan, and must not be handed out.</summary>
internal static class StalePapers
{
    /// <summary>Says which files are named like papers of ours and were not made this time. Nothing is deleted: somebody may have written on them.</summary>
    public static void Tell(Desk desk, string folder, IReadOnlyCollection<string> made)
    {
        var stale = Directory.EnumerateFiles(folder)
            .Select(f => Path.GetFileName(f))
            .Where(f => (IsPaper(f) || (RoutineFiles.LeftWriting(f) is { } paper && IsPaper(paper))) && !made.Contains(f, StringComparer.OrdinalIgnoreCase))
            .Order(StringComparer.Ordinal)
            .ToList();
        if (stale.Count == 0)
        {
            return;
        }

        desk.Err.WriteLine($"Left over from an earlier run and not part of these papers: {string.Join(", ", stale)}.");
        desk.Err.WriteLine("  Maybe delete them before anything is handed out.");
    }

    private static bool IsPaper(string file) =>
        Pack.Optional.Append(PackPage.FileName).Concat(PosterSize.FileNames).Contains(file, StringComparer.OrdinalIgnoreCase)
        || IsNamed(file, "part-", ".html") || IsNamed(file, Pack.MotionName.Prefix, Pack.MotionName.Ending);

    private static bool IsNamed(string file, string prefix, string ending) =>
        file.StartsWith(prefix, StringComparison.OrdinalIgnoreCase) && file.EndsWith(ending, StringComparison.OrdinalIgnoreCase);
}
