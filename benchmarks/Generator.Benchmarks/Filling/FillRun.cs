using System.Diagnostics;
using System.Globalization;
using Generator.Benchmarks.Peers;
using Generator.Domain;
using Generator.Domain.Sketches;
using Generator.Library;
using Generator.Rules;
using Generator.Rules.Judging;
using Generator.Solver;
using Generator.Solver.Completing;
using Generator.Solver.Questions;
using Generator.Testing;

namespace Generator.Benchmarks.Filling;

/// <summary>
/// Takes cells out of clean routines and has them filled again: since the routine itself is a filling, nothing need give. Says in how many cases something did
/// or nothing was found, and how long the rest took, in processor time. Options: <c>--cases 500</c>, <c>--first 0</c>, <c>--work 5000</c> (thousands of moves tried in each), <c>--of 12x2</c>,
/// <c>--only Counts</c>, <c>--case 17,25</c>.
/// </summary>
internal static class FillRun
{
    private static readonly string[] Sizes = ["loose-6x2", "12x2", "24x3", "40x4"];

    private static readonly int[] Percents = [10, 30, 60, 100];

    public static int All(string[] args)
    {
        var options = args.Chunk(2).Where(c => c.Length == 2).ToDictionary(c => c[0], c => c[1], StringComparer.Ordinal);
        var cases = Whole(options, "--cases", 500);
        var numbers = options.TryGetValue("--case", out var some) ? some.Split(',').Select(n => int.Parse(n, CultureInfo.InvariantCulture)) : Enumerable.Range(0, cases).Skip(Whole(options, "--first", 0));
        var work = 1000L * Whole(options, "--work", 5000);
        var book = LongRoutine.Book();
        var outcomes = new List<Outcome>();
        var drafts = new Dictionary<string, Routine?>(StringComparer.Ordinal);
        foreach (var i in numbers)
        {
            var (size, erasing, percent) = (Sizes[i % 4], (Erasing)(i / 4 % 8), Whole(options, "--percent", Percents[i / 32 % 4]));
            if ((options.TryGetValue("--of", out var of) && !size.Contains(of, StringComparison.Ordinal)) || (options.TryGetValue("--only", out var only) && !string.Equals(only, erasing.ToString(), StringComparison.Ordinal)))
            {
                continue;
            }

            var name = string.Create(CultureInfo.InvariantCulture, $"{size}-{(i / 8 % (i % 4 == 0 ? 10 : 20)) + 1:00}");
            if (!drafts.TryGetValue(name, out var routine))
            {
                drafts[name] = routine = Draft(name, book);
            }

            if (routine is not null)
            {
                outcomes.Add(Fill(i, size, erasing, percent, Erased.Of(routine, new Chance(i), erasing, percent), book, work));
            }
        }

        foreach (var kind in outcomes.GroupBy(o => o.Size).Concat(outcomes.GroupBy(o => o.Kind)).Concat(outcomes.GroupBy(_ => "all")))
        {
            var took = kind.Select(o => o.Seconds).Order().ToList();
            Console.WriteLine(string.Create(
                CultureInfo.InvariantCulture,
                $"{kind.Key,-12} {kind.Count(),4} cases {kind.Count(o => o.Gave > 0),4} gave {kind.Count(o => o.Gave < 0),4} not found   median {took[took.Count / 2]:0.000} s, worst {took[^1]:0.00} s"));
        }

        return outcomes.Any(o => o.Gave != 0) ? 1 : 0;
    }

    /// <summary>A routine for a stored brief, the same one each time; null where there is none.</summary>
    public static Routine? Draft(string name, Book book)
    {
        var brief = StoredBrief.Read(Path.Combine(Places.Briefs, name + ".brief.json")).Brief;
        var routine = Drafting.Draft(brief, book, new DraftOptions { Seed = 3, Rounds = 2, Time = TimeSpan.FromSeconds(20) }).Routine;
        return routine is not null && Audit.Of(new Scene(routine.Brief, book), routine).IsClean ? routine : null;
    }

    private static Outcome Fill(int number, string size, Erasing erasing, int percent, Sketch sketch, Book book, long work)
    {
        var began = Spent();
        var completed = Complete.Soon(sketch, book, work);
        var outcome = new Outcome(size, $"{erasing} {percent,3} %", completed?.Gave.Count ?? -1, Spent() - began);
        if (outcome.Gave != 0)
        {
            Console.WriteLine($"case {number}: {size} {outcome.Kind}: {(completed is null ? "nothing found" : string.Join(", ", completed.Gave))}");
        }

        return outcome;
    }

    private static double Spent() => Process.GetCurrentProcess().TotalProcessorTime.TotalSeconds;

    private static int Whole(Dictionary<string, string> options, string name, int otherwise) =>
        options.TryGetValue(name, out var text) && int.TryParse(text, NumberStyles.None, CultureInfo.InvariantCulture, out var value) ? value : otherwise;

    private sealed record Outcome(string Size, string Kind, int Gave, double Seconds);
}
