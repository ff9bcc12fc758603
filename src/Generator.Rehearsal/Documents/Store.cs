using System.Globalization;
using System.Security.Cryptography;
using System.Text;
using Generator.Domain;
using Generator.Domain.Sketches;
using Generator.Library;
using Generator.Library.Files;
using Generator.Library.Files.Notes;
using Generator.Library.Reading;

namespace Generator.Rehearsal.Documents;

/// <summary>
/// The file that was opened and, beside it, the working copy that follows every edit. The file itself is written only when somebody saves, and never over what another program has
/// put there since it was read.
/// </summary>
public sealed class Store : IDisposable
{
    private const string Held = ".open";

    /// <summary>New fights that may be open at once.</summary>
    private const int MostNew = 99;

    private readonly FileStream hold;
    private string read;

    private Store(string path, string target, FileStream hold)
    {
        (Path, Target, Working, this.hold) = (path, target, WorkingOf(path), hold);
        read = Mark(target);
        Versions = VersionsOf(target);
    }

    /// <summary>The file that was opened.</summary>
    public string Path { get; }

    /// <summary>The file that saving writes: the one that was opened where that holds rows, else one beside it that is not there yet.</summary>
    public string Target { get; }

    /// <summary>The working copy; gone once everything is saved.</summary>
    public string Working { get; }

    /// <summary>Another program has written the file since it was read or saved.</summary>
    public bool IsChangedOutside => !string.Equals(MarkNow, read, StringComparison.Ordinal);

    /// <summary>The mark of what another program has written since; null where none has. Two changes after one another are two marks.</summary>
    internal string? Outside => MarkNow is var mark && string.Equals(mark, read, StringComparison.Ordinal) ? null : mark;

    /// <summary>What the file says, in short: another text has another mark.</summary>
    internal string MarkNow => Mark(Target);

    /// <summary>Opens a file for one program at a time.</summary>
    /// <exception cref="RefusedEditException">Another one has it open.</exception>
    public static Store Open(string path)
    {
        var full = System.IO.Path.GetFullPath(path);
        try
        {
            var held = new FileStream(WorkingOf(full) + Held, FileMode.OpenOrCreate, FileAccess.ReadWrite, FileShare.None, 1, FileOptions.DeleteOnClose);
            return new Store(full, TargetOf(full), held);
        }
        catch (IOException)
        {
            throw new RefusedEditException($"{path} is open already in another rehearse, or its folder cannot be written.", "Maybe go on in the page that shows it, or end the other one with Ctrl-C.");
        }
        catch (UnauthorizedAccessException)
        {
            throw new RefusedEditException($"{path}: nothing can be written beside it.", "Maybe copy it into a folder of your own first.");
        }
    }

    /// <summary>What saving has replaced so far, the oldest first: plain files in a folder beside the file.</summary>
    public IReadOnlyList<string> Versions { get; private set; }

    /// <summary>Other routines in the folder, by name; the first hundred.</summary>
    public IReadOnlyList<string> Beside => [.. Directory.EnumerateFiles(System.IO.Path.GetDirectoryName(Target)!, "*.routine.json").Where(f => !string.Equals(f, Target, StringComparison.Ordinal)).Order(StringComparer.Ordinal).Take(MostNew)];

    /// <summary>The file was not there when it was opened, and is not yet.</summary>
    public bool IsNew => !File.Exists(Target);

    /// <summary>A file that is not there yet, in a folder: the first name for a new fight that is neither taken nor open.</summary>
    /// <exception cref="RefusedEditException">Nothing can be written there.</exception>
    public static Store New(string folder)
    {
        for (var i = 1; ; i++)
        {
            var path = System.IO.Path.Combine(folder, i == 1 ? "fight.routine.json" : FormattableString.Invariant($"fight-{i}.routine.json"));
            if (File.Exists(path))
            {
                continue;
            }

            try
            {
                return Open(path);
            }
            catch (RefusedEditException) when (i < MostNew && File.Exists(WorkingOf(System.IO.Path.GetFullPath(path)) + Held))
            {
                // Another rehearse has it open.
                continue;
            }
        }
    }

    /// <summary>The working copy that an earlier run has left, or null.</summary>
    public SourceFile? Left() => File.Exists(Working) ? SourceFile.Load(Working, new ProblemList()) : null;

    /// <summary>Puts a working copy aside that cannot be gone on with, under a name of its own.</summary>
    public string PutAside()
    {
        var aside = Enumerable.Range(1, 9999).Select(i => FormattableString.Invariant($"{Stem(Path)}.live-{i}.json")).First(p => !File.Exists(p));
        File.Move(Working, aside);
        return aside;
    }

    /// <summary>The working copy says so much from now on.</summary>
    public void Keep(Sketch sketch) => RoutineFiles.Write(Working, SketchWriter.Text(sketch));

    /// <summary>The file has been read as it was when it had that mark, so the working copy goes.</summary>
    internal void Read(string mark)
    {
        read = mark;
        File.Delete(Working);
    }

    /// <summary>Writes the file, and the working copy goes.</summary>
    /// <param name="sketch">What it is to say.</param>
    /// <param name="whole">The same as a routine, where nothing is open or locked.</param>
    /// <param name="over">Over what another program has written, too, which stays as a version.</param>
    /// <exception cref="RefusedEditException">Another program has changed it; it is as that one left it.</exception>
    public void Save(Sketch sketch, Routine? whole, bool over = false)
    {
        if (!over && IsChangedOutside)
        {
            throw new RefusedEditException($"{System.IO.Path.GetFileName(Target)} was changed by another program. It is as that one left it, and what you see here is in {System.IO.Path.GetFileName(Working)}.", "Maybe read the file anew, which can be undone, or save over it, which keeps it as a version.") { IsStale = true };
        }

        var isCsv = Target.EndsWith(".csv", StringComparison.OrdinalIgnoreCase);
        var text = (whole, isCsv) switch
        {
            ({ } routine, true) => RoutineWriter.Csv(routine),
            ({ } routine, false) => RoutineWriter.Text(routine),
            (null, true) => SketchWriter.Csv(sketch),
            (null, false) => SketchWriter.Text(sketch),
        };
        if (File.Exists(Target) && !string.Equals(File.ReadAllText(Target), text, StringComparison.Ordinal))
        {
            KeepVersion();
        }

        RoutineFiles.Write(Target, text);
        read = Mark(Target);
        File.Delete(Working);
    }

    public void Dispose() => hold.Dispose();

    /// <summary>What the file says now stays beside it, under the next number.</summary>
    private void KeepVersion()
    {
        Directory.CreateDirectory(FolderOf(Target));
        var number = Versions.Count == 0 ? 1 : NumberOf(Versions[^1]) + 1;
        RoutineFiles.Write(System.IO.Path.Combine(FolderOf(Target), FormattableString.Invariant($"{number}{System.IO.Path.GetExtension(Target)}")), File.ReadAllText(Target));
        Versions = VersionsOf(Target);
    }

    private static string FolderOf(string target) => Stem(target) + ".versions";

    private static IReadOnlyList<string> VersionsOf(string target) => !Directory.Exists(FolderOf(target)) ? []
        : [.. Directory.EnumerateFiles(FolderOf(target)).Where(f => NumberOf(f) > 0).OrderBy(NumberOf)];

    /// <summary>0 for a file of another name.</summary>
    private static int NumberOf(string path) => int.TryParse(System.IO.Path.GetFileNameWithoutExtension(path), NumberStyles.None, CultureInfo.InvariantCulture, out var number) ? number : 0;

    private static string TargetOf(string path) => path.EndsWith(".csv", StringComparison.OrdinalIgnoreCase) || (path.EndsWith(".json", StringComparison.OrdinalIgnoreCase) && !path.EndsWith(".brief.json", StringComparison.OrdinalIgnoreCase))
        ? path : Enumerable.Range(1, 9999).Select(i => Stem(path) + (i == 1 ? ".routine.json" : FormattableString.Invariant($"-{i}.routine.json"))).First(p => !File.Exists(p));

    private static string WorkingOf(string path) => Stem(path) + ".live.json";

    /// <summary>The path without what its name ends in, such as ".notes.txt".</summary>
    private static string Stem(string path)
    {
        var name = System.IO.Path.GetFileName(path);
        foreach (var ending in new[] { ".routine.json", ".notes.txt", ".brief.json", ".json", ".csv", ".txt" })
        {
            if (name.EndsWith(ending, StringComparison.OrdinalIgnoreCase) && name.Length > ending.Length)
            {
                return path[..^ending.Length];
            }
        }

        return path;
    }

    private static string Mark(string path)
    {
        try
        {
            return File.Exists(path) ? Convert.ToHexString(SHA256.HashData(File.ReadAllBytes(path))) : string.Empty;
        }
        catch (IOException error)
        {
            return "unread: " + error.Message;
        }
    }
}
