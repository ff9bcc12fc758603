using System.Diagnostics;
using System.Globalization;
using Generator.Domain;
using Generator.Domain.Sketches;
using Generator.Library;
using Generator.Solver.Completing;
using Generator.Testing;

namespace Generator.Benchmarks.Filling;

/// <summary>
/// Routines of stored briefs of which all techniques are said, one of them or one of who attacks wrongly: in how many something gives, and in how many of those it is proven within the time that less cannot.
/// Options: <c>--of 12x2</c>, <c>--count 20</c>, <c>--time 10</c> (seconds each), <c>--say all</c> (everything but counts is said, not the techniques alone).
/// </summary>
internal static class ProofRun
{
    public static int All(string[] args)
    {
        var options = args.Chunk(2).Where(c => c.Length == 2).ToDictionary(c => c[0], c => c[1], StringComparer.Ordinal);
        int Whole(string name, int otherwise) => options.TryGetValue(name, out var text) ? int.Parse(text, CultureInfo.InvariantCulture) : otherwise;
        var (book, size, saysAll) = (LongRoutine.Book(), options.GetValueOrDefault("--of", "12x2"), options.ContainsKey("--say"));
        var took = new List<double>();
        var gave = 0;
        for (var i = 1; i <= Whole("--count", 20); i++)
        {
            var name = string.Create(CultureInfo.InvariantCulture, $"{size}-{i:00}");
            if (FillRun.Draft(name, book) is not { } routine)
            {
                continue;
            }

            var (began, used) = (Stopwatch.GetTimestamp(), Environment.CpuUsage.TotalTime);
            var completed = Complete.Of(Planted(routine, book, new Chance(i), saysAll), book, new CompleteOptions { Time = TimeSpan.FromSeconds(Whole("--time", 10)) });
            var seconds = Stopwatch.GetElapsedTime(began).TotalSeconds;
            var processor = (Environment.CpuUsage.TotalTime - used).TotalSeconds;
            gave += completed is { Price: > 0 } ? 1 : 0;
            if (completed is { Price: > 0, IsLeast: true })
            {
                took.Add(seconds);
            }

            Console.WriteLine(string.Create(CultureInfo.InvariantCulture, $"{name} {seconds,6:0.00} s, processor {processor,6:0.00} s, {(completed is null ? "nothing found" : (completed.IsLeast ? "proven" : "open") + ": " + string.Join(", ", completed.Gave.Select(g => $"{g.Part} {g.Move}")))}"));
        }

        took.Sort();
        Console.WriteLine(string.Create(CultureInfo.InvariantCulture, $"Something gives in {gave}; proven in {took.Count}, median {(took.Count > 0 ? took[took.Count / 2] : double.NaN):0.00} s, worst {(took.Count > 0 ? took[^1] : double.NaN):0.00} s."));
        return took.Count == gave ? 0 : 1;
    }

    /// <summary>The routine with one technique that exists and is another, its opening places and what else is said.</summary>
    private static Sketch Planted(Routine routine, Book book, Chance chance, bool saysAll)
    {
        var sketch = Sketch.Of(routine);
        var at = chance.Whole(0, routine.Moves.Count - 1);
        return sketch with
        {
            Moves =
            [
                .. sketch.Moves.Select((m, i) => (saysAll ? m with { Count = null } : new SketchMove { Line = m.Line, Technique = m.Technique }) is var said && i == at
                    ? said with { Technique = chance.One(book.Techniques).Id is var other ? new SketchCell(other, [other]) : null } : said),
            ],
        };
    }
}
