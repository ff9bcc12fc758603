using System.Runtime.CompilerServices;
using Generator.Library;
using Generator.Library.Files;
using Generator.Library.Files.Notes;
using Generator.Library.Reading;

namespace Generator.Testing;

/// <summary>Fights as a coordinator scribbles them down: <c>benchmarks/notes</c>, some with a brief beside.</summary>
public static class RoughNotes
{
    private const string Ending = ".notes.txt";

    /// <summary>Their names, in order.</summary>
    public static IReadOnlyList<string> Names => [.. Directory.GetFiles(Folder(), "*" + Ending).Select(f => Path.GetFileName(f)[..^Ending.Length]).Order(StringComparer.Ordinal)];

    /// <summary>What the reader makes of them.</summary>
    public static ReadSketch Read(string name, Book book)
    {
        var beside = Path.Combine(Folder(), name + ".brief.json");
        var brief = File.Exists(beside) ? Good(BriefReader.Parse(Source(beside), book)) : null;
        return Good(NotesReader.Parse(Source(Path.Combine(Folder(), name + Ending)), book, brief));
    }

    private static T Good<T>(Read<T> read)
        where T : class => read.IsGood ? read.Value : throw new InvalidOperationException(read.ToText());

    private static SourceFile Source(string path) => new(Path.GetFileName(path), File.ReadAllText(path));

    private static string Folder([CallerFilePath] string caller = "") =>
        Path.GetFullPath(Path.Combine(Path.GetDirectoryName(caller)!, "..", "..", "benchmarks", "notes"));
}
