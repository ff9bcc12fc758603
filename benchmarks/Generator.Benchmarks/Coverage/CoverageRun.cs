using System.Globalization;
using Generator.Benchmarks.Measuring;
using Generator.Domain;
using Generator.Library;
using Generator.Solver;
using Generator.Solver.Questions;

namespace Generator.Benchmarks.Coverage;

/// <summary>
/// Drafts many briefs of many kinds and says what of the library never occurs, and how the moves spread over the families. What did not occur by itself
/// is then asked for as a hero moment. Options: <c>--briefs 200</c>, <c>--time 2</c> (seconds a draft).
/// </summary>
internal static class CoverageRun
{
    /// <summary>Drafts in which something may be asked for before it counts as never occurring.</summary>
    private const int Asks = 10;

    /// <summary>Most setbacks, and drafts for each number of them, in the table of what happens when a brief asks.</summary>
    private const int MostSetbacks = 4;

    private const int DraftsEach = 12;

    public static int All(string[] args)
    {
        if (Options(args) is not var (briefs, time))
        {
            Console.Error.WriteLine("These options are known: --briefs 200, --time 2.\nMaybe a value is missing.");
            return 2;
        }

        var machine = Machine.Now();
        var book = LongRoutine.Book();
        var options = new DraftOptions { Time = TimeSpan.FromSeconds((double)time) };
        var tally = new CoverageTally(book);
        for (var i = 0; i < briefs; i++)
        {
            Add(tally, CoverageBriefs.Free(i), book, options with { Seed = 1 + (i % 7) });
        }

        var report = new CoverageReport(book, Asks);
        report.Head(machine, string.Create(CultureInfo.InvariantCulture, $"coverage --briefs {briefs} --time {time}"), briefs, tally);
        report.Families(tally);
        report.Setbacks([.. Enumerable.Range(0, MostSetbacks + 1).Select(n => (n, WithSetbacks(n, book, options)))]);

        var asked = new CoverageTally(book);
        var found = CoverageKinds.Of(book).Select(kind =>
        {
            var unasked = kind.Ids.Where(id => kind.Count(tally, id) > 0).ToList();
            var others = kind.Ids.Except(unasked, StringComparer.Ordinal).ToList();
            return (kind, others, never: others.Where(id => !Asked(kind, id, book, options, asked)).ToList());
        }).ToList();
        foreach (var (kind, others, never) in found)
        {
            report.Kind(kind, others, never);
        }

        report.Write(Path.Combine(Places.Artifacts, "coverage.md"));
        return found.TrueForAll(f => f.never.Count == 0) ? 0 : 1;
    }

    private static (int Briefs, decimal Time)? Options(string[] args)
    {
        var (briefs, time) = (200, 2m);
        for (var i = 0; i < args.Length; i += 2)
        {
            var good = i + 1 < args.Length && args[i] switch
            {
                "--briefs" => int.TryParse(args[i + 1], NumberStyles.None, CultureInfo.InvariantCulture, out briefs),
                "--time" => decimal.TryParse(args[i + 1], NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out time) && time >= 0.1m,
                _ => false,
            };
            if (!good)
            {
                return null;
            }
        }

        return (briefs, time);
    }

    private static CoverageTally WithSetbacks(int setbacks, Book book, DraftOptions options)
    {
        var tally = new CoverageTally(book);
        for (var i = 0; i < DraftsEach; i++)
        {
            Add(tally, CoverageBriefs.WithSetbacks(setbacks, i), book, options with { Seed = 1 + i });
        }

        return tally;
    }

    /// <summary>Asks for something as a hero moment until it occurs.</summary>
    private static bool Asked(CoverageKind kind, string id, Book book, DraftOptions options, CoverageTally tally)
    {
        var ways = kind.Ways(id).ToList();
        for (var i = 0; i < Asks && ways.Count > 0 && kind.Count(tally, id) == 0; i++)
        {
            Add(tally, CoverageBriefs.Asking(ways[i % ways.Count], i), book, options with { Seed = 1 + i, Time = options.Time * (1 + (i / 2)) });
        }

        return kind.Count(tally, id) > 0;
    }

    private static void Add(CoverageTally tally, Brief brief, Book book, DraftOptions options)
    {
        if (Drafting.Draft(brief, book, options).Routine is { } routine)
        {
            tally.Add(routine);
        }
    }
}
