using System.Globalization;

namespace Generator.Cli.Guarding;

/// <summary>A routine that outlived its worker. The name of its file says its points, so that what is told of the file is true whenever the worker was lost.</summary>
/// <param name="Path">Its file.</param>
/// <param name="Points">Its points.</param>
internal sealed record Kept(string Path, int Points)
{
    private const string Ending = ".routine.json";

    /// <summary>Where a routine of so many points is kept.</summary>
    /// <param name="rescue">What <see cref="RescuePath"/> gave.</param>
    /// <param name="points">Its points.</param>
    public static string PathOf(string rescue, int points) => string.Create(CultureInfo.InvariantCulture, $"{rescue}.{points}{Ending}");

    /// <summary>What is kept; null when nothing is. A worker lost between writing a routine and deleting the one before it leaves both: the later one counts.</summary>
    /// <param name="rescue">What <see cref="RescuePath"/> gave.</param>
    public static Kept? Find(string rescue)
    {
        try
        {
            return new DirectoryInfo(System.IO.Path.GetDirectoryName(rescue)!).EnumerateFiles(System.IO.Path.GetFileName(rescue) + ".*" + Ending)
                .OrderByDescending(f => f.LastWriteTimeUtc)
                .Select(f => PointsOf(f.Name) is { } points ? new Kept(f.FullName, points) : null)
                .FirstOrDefault(k => k is not null);
        }
        catch (Exception error) when (error is IOException or UnauthorizedAccessException or ArgumentException)
        {
            return null;
        }
    }

    private static int? PointsOf(string name) =>
        int.TryParse(System.IO.Path.GetExtension(name[..^Ending.Length]).AsSpan(1), NumberStyles.None, CultureInfo.InvariantCulture, out var points) ? points : null;
}
