using System.Security.Cryptography;
using System.Text;
using Generator.Domain;
using Generator.Library;
using Generator.Library.Reading;
using Generator.Library.Words;

namespace Generator.Library.Loading;

/// <summary>Reads the files of a library into a <see cref="Book"/>, or tells every problem of every file at once.</summary>
public static class LibraryLoader
{
    private const string SettleFile = "settle.json";

    private const string StancesFile = "stances.json";

    private const string HoldsFile = "holds.json";

    private const string ThingsFile = "things.json";

    private const string PropsFile = "props.json";

    private const string NotebookFile = "notebook.json";

    /// <summary>The files of records that a library folder must hold, in the order of the book.</summary>
    private static readonly string[] RecordFiles =
    [
        "reactions.json", "attacks.json", "defences.json", "strikes.json", "kicks.json", "throws.json",
        "locks.json", "escapes.json", "finishes.json", "setbacks.json", "pauses.json", "travels.json", "room.json", "pairs.json", "props-moves.json", "manners.json", "combinations.json", "styles.json",
    ];

    /// <summary>Names of all files that a library folder must hold.</summary>
    public static IReadOnlyList<string> Files { get; } = [SettleFile, StancesFile, HoldsFile, ThingsFile, PropsFile, .. RecordFiles, NotebookFile];

    /// <summary>The library that comes with the program.</summary>
    public static string BundledFolder => Path.Combine(AppContext.BaseDirectory, "technique-library");

    /// <summary>Loads the library that comes with the program, and files of the user's own.</summary>
    public static Read<Book> LoadBundled(params IReadOnlyList<string> extraFiles) => Load(BundledFolder, extraFiles);

    /// <summary>Loads a library folder.</summary>
    /// <param name="folder">Holds one file for each of <see cref="Files"/>.</param>
    /// <param name="extraFiles">Paths of further files of techniques, attacks and reactions; their records come last.</param>
    public static Read<Book> Load(string folder, params IReadOnlyList<string> extraFiles)
    {
        var problems = new ProblemList();
        var files = Files.Select(f => Path.Combine(folder, f)).Concat(extraFiles).Select(p => SourceFile.Load(p, problems)).OfType<SourceFile>().ToList();
        return Build(files, problems);
    }

    /// <summary>Loads a library from texts: one for each of <see cref="Files"/>, known by its name, and any number of further files.</summary>
    public static Read<Book> Load(IReadOnlyList<SourceFile> files)
    {
        var problems = new ProblemList();
        foreach (var missing in Files.Where(f => !files.Any(s => IsNamed(s, f))))
        {
            problems.Add(new Problem(missing, 0, string.Empty, string.Empty, "There is no such file.", "Maybe it lies in another folder or its name is spelt otherwise."));
        }

        return Build(files, problems);
    }

    private static Read<Book> Build(IReadOnlyList<SourceFile> files, ProblemList problems)
    {
        // The first digest of a process takes as long as reading half the files: it has to find and start the system's own code.
        var fingerprint = Task.Run(() => Fingerprint(files));
        var records = new Records();
        var settle = new Settle();
        var version = string.Empty;
        var stances = new StanceTable([]);
        var holds = HoldTable.Empty;
        var things = ThingTable.Empty;
        var props = PropTable.Empty;
        var (notebook, notebookFile) = (Notebook.Empty, (ObjectReader?)null);
        foreach (var file in files)
        {
            if (StrictJson.Object(file.Name, file.Text, problems) is not { } root)
            {
                continue;
            }

            root.Allow("$schema");
            if (IsNamed(file, SettleFile))
            {
                (settle, version) = SettleReader.Read(root);
            }
            else if (IsNamed(file, StancesFile))
            {
                stances = StanceReader.Read(root);
            }
            else if (IsNamed(file, HoldsFile))
            {
                holds = HoldReader.Read(root);
            }
            else if (IsNamed(file, ThingsFile))
            {
                things = ThingReader.Read(root);
            }
            else if (IsNamed(file, PropsFile))
            {
                props = PropReader.Read(root);
            }
            else if (IsNamed(file, NotebookFile))
            {
                (notebook, notebookFile) = (NotebookReader.Read(root), root);
            }
            else
            {
                records.Read(root);
            }
        }

        NameChecks.Check(records);
        AttackChecks.Check(records);
        TechniqueChecks.Check(records);
        CombinationReader.Check(records);
        StyleReader.Check(records);
        var reactions = records.Reactions.Select(r => r.Record).ToList();
        var atThings = reactions.Where(r => r.Uses is not null).ToList();
        foreach (var (technique, source) in records.Techniques)
        {
            TravelReader.Check(technique, settle, source);
            ThingReader.Check(technique, source, atThings);
            TwoReader.Check(technique, source, reactions);
        }

        PropChecks.Check(records, props);
        LoadChecks.Check(records, stances);
        if (notebookFile is not null && problems.IsEmpty)
        {
            // Records that could not be read would be missed here too.
            NotebookReader.Check(notebookFile, records);
        }

        return new Read<Book>(
            problems.IsEmpty
                ? new Book($"{version}-{fingerprint.GetAwaiter().GetResult()}", stances, settle, records.Techniques.Select(p => p.Record), records.Attacks.Select(p => p.Record), records.Reactions.Select(p => p.Record)) { Holds = holds, Things = things, Props = props, Manners = [.. records.Manners.Select(p => p.Record)], Combinations = [.. records.Combinations.Select(p => p.Record)], Styles = [.. records.Styles.Select(p => p.Record)], Notebook = notebook }
                : null,
            problems);
    }

    private static bool IsNamed(SourceFile file, string name) => string.Equals(Path.GetFileName(file.Name), name, StringComparison.Ordinal);

    /// <summary>Twelve hexadecimal digits that change with any file; line endings do not count.</summary>
    private static string Fingerprint(IReadOnlyList<SourceFile> files)
    {
        var all = new StringBuilder();
        foreach (var file in files)
        {
            all.Append(Path.GetFileName(file.Name)).Append('\0').Append(file.Text.ReplaceLineEndings("\n")).Append('\0');
        }

        return Convert.ToHexStringLower(SHA256.HashData(Encoding.UTF8.GetBytes(all.ToString())))[..12];
    }
}
