using System.Runtime.CompilerServices;
using Generator.Domain;
using Generator.Library;
using Generator.Library.Files;
using Generator.Library.Reading;

namespace Generator.Testing;

/// <summary>The long routines that are kept for benchmarks: <c>benchmarks/routines</c>.</summary>
public static class StoredRoutines
{
    /// <summary>All of them, in the order of their names.</summary>
    public static IEnumerable<Routine> All(Book book) => Directory.GetFiles(Folder(), "*.routine.json").Order(StringComparer.Ordinal).Select(f => Read(f, book));

    private static Routine Read(string path, Book book)
    {
        var read = RoutineReader.Parse(new SourceFile(Path.GetFileName(path), File.ReadAllText(path)), book);
        return read.IsGood ? read.Value : throw new InvalidOperationException(read.ToText());
    }

    private static string Folder([CallerFilePath] string caller = "") => Path.GetFullPath(Path.Combine(Path.GetDirectoryName(caller)!, "..", "..", "benchmarks", "routines"));
}
