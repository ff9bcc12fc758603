using System.Diagnostics;
using System.Globalization;
using Generator.Library;
using Generator.Library.Files;
using Generator.Library.Reading;
using Generator.Solver;
using Newtonsoft.Json;

namespace Generator.Benchmarks.Drafts;

/// <summary>Drafts one brief in this process and prints its figures as one line, so that memory is this brief's alone.</summary>
internal static class DraftChild
{
    public const string Word = "draft-one";

    /// <summary>Mode in which CP-SAT works alone.</summary>
    public const string Cold = "cold";

    public const string Warm = "warm";

    public static int Run(string file, string seconds, string mode)
    {
        var book = LongRoutine.Book();
        var problems = new ProblemList();
        var source = SourceFile.Load(file, problems);
        var read = source is null ? null : BriefReader.Parse(source, book);
        if (read?.Value is not { } brief)
        {
            Console.Error.WriteLine(read?.ToText() ?? $"{file} cannot be read.");
            return 2;
        }

        var time = TimeSpan.FromSeconds(double.Parse(seconds, CultureInfo.InvariantCulture));
        var result = Drafting.Draft(brief, book, new DraftOptions { Time = time, Cold = string.Equals(mode, Cold, StringComparison.Ordinal) });
        using var own = Process.GetCurrentProcess();
        var figures = new DraftFigures
        {
            Brief = Path.GetFileName(file),
            Status = result.Status.ToString(),
            First = result.FirstAfter?.TotalMilliseconds,
            Points = result.Routine is null ? null : result.Verdict?.Points,
            Standing = result.Routine is null ? string.Empty : result.Standing.ToString(),
            Elapsed = result.Elapsed.TotalMilliseconds,
            Memory = own.PeakWorkingSet64 / 1048576.0,
            Audit = AuditUnit.Milliseconds(book),
        };
        Console.WriteLine(JsonConvert.SerializeObject(figures));
        return 0;
    }
}
