using System.Globalization;
using Generator.Domain;
using Generator.Library;
using Generator.Library.Files;
using Generator.Library.Reading;
using Generator.Rules;
using Generator.Rules.Judging;
using Generator.Solver;
using Generator.Solver.Questions;

namespace Generator.Benchmarks.Rework;

/// <summary>Routines of forty moves against four attackers, drafted once from stored briefs and kept as files, so that every run changes the same ones.</summary>
internal static class StoredRoutines
{
    public const int Number = 16;

    private static string Folder => Path.Combine(Places.Benchmarks, "routines");

    /// <summary>In order.</summary>
    public static IReadOnlyList<string> Files() => [.. Directory.EnumerateFiles(Folder, "*.routine.json").Order(StringComparer.Ordinal)];

    /// <summary>Reads one.</summary>
    /// <exception cref="InvalidOperationException">It cannot be read, or the library has changed so that the audit no longer passes it.</exception>
    public static Routine Read(string file, Book book)
    {
        var problems = new ProblemList();
        var read = SourceFile.Load(file, problems) is { } source ? RoutineReader.Parse(source, book) : null;
        var routine = read?.Value ?? throw new InvalidOperationException(read?.ToText() ?? $"{file} cannot be read.");
        return Audit.Of(new Scene(routine.Brief, book), routine).IsClean ? routine : throw new InvalidOperationException($"{file} is not clean with this library: repair it first.");
    }

    /// <summary>Drafts them anew; results before and after cannot be compared.</summary>
    public static void Write(Book book)
    {
        Directory.CreateDirectory(Folder);
        for (var i = 1; i <= Number; i++)
        {
            var name = string.Create(CultureInfo.InvariantCulture, $"40x4-{i:00}");
            var problems = new ProblemList();
            var brief = SourceFile.Load(Path.Combine(Places.Briefs, name + ".brief.json"), problems) is { } source ? BriefReader.Parse(source, book).Value : null;
            var draft = brief is null ? null : Drafting.Draft(brief, book, new DraftOptions { Seed = i, Time = TimeSpan.FromSeconds(6) });
            if (draft?.Routine is { } routine)
            {
                File.WriteAllText(Path.Combine(Folder, name + ".routine.json"), RoutineWriter.Text(routine));
            }

            Console.WriteLine($"{name}: {(draft?.Routine is { } r ? string.Create(CultureInfo.InvariantCulture, $"{r.Moves.Count} moves") : "no routine")}");
        }
    }
}
