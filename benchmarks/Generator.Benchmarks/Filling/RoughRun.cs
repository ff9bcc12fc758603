using System.Diagnostics;
using System.Globalization;
using Generator.Library;
using Generator.Library.Files.Notes;
using Generator.Rules;
using Generator.Solver.Completing;
using Generator.Testing;

namespace Generator.Benchmarks.Filling;

/// <summary>
/// Completes the rough notes of <c>benchmarks/notes</c>: how soon the first answer comes, in processor time, and how much of them stands in the end. Options:
/// <c>--seeds 5</c>, <c>--seed 3</c> for one, <c>--time 10</c> (seconds each), <c>--of bar</c>, <c>--first yes</c> (stops at the first answer), <c>--within 3</c>, <c>--show yes</c> (what gave).
/// </summary>
internal static class RoughRun
{
    public static int All(string[] args)
    {
        var options = args.Chunk(2).Where(c => c.Length == 2).ToDictionary(c => c[0], c => c[1], StringComparer.Ordinal);
        int Whole(string name, int otherwise) => options.TryGetValue(name, out var text) ? int.Parse(text, CultureInfo.InvariantCulture) : otherwise;
        var (book, within, first) = (LongRoutine.Book(), Whole("--within", 3), options.ContainsKey("--first"));
        var answered = new List<Answer>();
        foreach (var name in RoughNotes.Names.Where(n => !options.TryGetValue("--of", out var of) || n.Contains(of, StringComparison.Ordinal)))
        {
            var read = RoughNotes.Read(name, book);
            var seeds = options.ContainsKey("--seed") ? [Whole("--seed", 1)] : Enumerable.Range(1, Whole("--seeds", 5));
            var answers = seeds.Select(seed => One(read, book, seed, Whole("--time", 10), first, options.ContainsKey("--show"))).ToList();
            answered.AddRange(answers);
            Console.WriteLine(string.Create(CultureInfo.InvariantCulture, $"{name,-12} {string.Join("   ", answers.Select(a => a.ToString()))}"));
        }

        var took = answered.Select(a => a.First).Order().ToList();
        Console.WriteLine(string.Create(CultureInfo.InvariantCulture, $"{took.Count(t => t <= within)} of {took.Count} within {within} s, median {took[took.Count / 2]:0.00} s, worst {took[^1]:0.00} s; {answered.Sum(a => a.Stands)} of {answered.Sum(a => a.Said)} moves stand"));
        return took.Count(t => t <= within) >= 0.95 * took.Count ? 0 : 1;
    }

    private static Answer One(ReadSketch read, Book book, int seed, int time, bool first, bool show)
    {
        using var stop = new CancellationTokenSource();
        var began = Spent();
        var answer = new Answer(double.PositiveInfinity, 0, 0, string.Empty);
        var completed = Complete.Of(read.Sketch, book, new CompleteOptions { Seed = seed, Time = TimeSpan.FromSeconds(time) }, better =>
        {
            answer = new Answer(double.IsFinite(answer.First) ? answer.First : Spent() - began, better.Said, better.Stands, Kinds(better));
            if (first)
            {
                stop.Cancel();
            }
        }, stop.Token);
        if (show && completed is not null)
        {
            GaveText.Show(completed, book);
        }

        return answer;
    }

    private static double Spent() => Process.GetCurrentProcess().TotalProcessorTime.TotalSeconds;

    /// <summary>How many of each kind gave, dearest first.</summary>
    private static string Kinds(Completed completed) =>
        string.Join(' ', completed.Gave.GroupBy(g => g.Part).OrderByDescending(g => g.Key).Select(g => $"{g.Key.ToString()[..2]}{g.Count()}"));

    private sealed record Answer(double First, int Said, int Stands, string Gave)
    {
        public override string ToString() => string.Create(CultureInfo.InvariantCulture, $"{First,5:0.00} s {Stands,2}/{Said} {Gave,-24}");
    }
}
