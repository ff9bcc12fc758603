using System.Globalization;
using Generator.Solver.Completing;
using Generator.Testing;

namespace Generator.Benchmarks.Filling;

/// <summary>
/// Completes the published forms and the fights joined from them (<c>forms.json</c>): of how many forms no technique and no attack changes, and how many moves of the fights stand. Lists everything
/// else that gave. Options: <c>--time 10</c> (seconds each), <c>--work 3000</c> (thousands of moves tried in each, instead of a time), <c>--of fight</c>, <c>--show yes</c> (why each gave).
/// </summary>
internal static class FormsRun
{
    private const double Stand = 0.95;

    public static int All(string[] args)
    {
        var options = args.Chunk(2).Where(c => c.Length == 2).ToDictionary(c => c[0], c => c[1], StringComparer.Ordinal);
        var (book, time) = (LongRoutine.Book(), TimeSpan.FromSeconds(Whole("--time") ?? 10));
        var done = new List<(bool IsFight, Completed? Completed)>();
        foreach (var form in PublishedForms.All(book).Where(f => !options.TryGetValue("--of", out var of) || f.Name.Contains(of, StringComparison.Ordinal)))
        {
            var completed = Whole("--work") is { } work ? Complete.Soon(form.Read.Sketch, book, 1000L * work) : Complete.Of(form.Read.Sketch, book, new CompleteOptions { Time = time });
            done.Add((form.IsFight, completed));
            Console.WriteLine(string.Create(CultureInfo.InvariantCulture, $"{form.Name,-40} {completed?.Stands ?? 0,2} of {form.Read.Sketch.Moves.Count,2} {(completed is null ? "nothing found" : string.Join(", ", completed.Gave.Select(g => $"{g.Part} line {g.Move + 1}")))}"));
            if (completed is not null && options.ContainsKey("--show"))
            {
                GaveText.Show(completed, book);
            }
        }

        var forms = done.Where(d => !d.IsFight).ToList();
        var kept = forms.Count(d => d.Completed?.Keeps == true);
        var (said, stands) = (done.Where(d => d.IsFight).Sum(d => d.Completed?.Said ?? 1), done.Where(d => d.IsFight).Sum(d => d.Completed?.Stands ?? 0));
        Console.WriteLine(string.Create(CultureInfo.InvariantCulture, $"Forms: no technique and no attack changed in {kept} of {forms.Count}. Fights: {stands} of {said} moves stand ({100.0 * stands / Math.Max(1, said):0.0} %)."));
        return kept == forms.Count && stands >= Stand * said ? 0 : 1;

        int? Whole(string name) => options.TryGetValue(name, out var text) ? int.Parse(text, CultureInfo.InvariantCulture) : null;
    }
}
