using System.Globalization;
using Generator.Domain;
using Generator.Library;
using Generator.Solver;
using Generator.Solver.Questions;

namespace Generator.Benchmarks.Tempos;

/// <summary>
/// Drafts the same random briefs at a slow and at a fast tempo, by rounds and not by the clock, and says how many are solved in each band of tempos.
/// Options: <c>--briefs 60</c>, <c>--rounds 4</c>, <c>--kind rough</c> for briefs that are less kind (<see cref="TempoBriefs.Rougher"/>).
/// </summary>
internal static class TempoRun
{
    public static int All(string[] args)
    {
        if (Options(args) is not var (briefs, rounds, rough))
        {
            Console.Error.WriteLine("These options are known: --briefs 60, --rounds 4, --kind rough.\nMaybe a value is missing.");
            return 2;
        }

        var book = LongRoutine.Book();
        var drafts = new List<Drafted>();
        for (var i = 0; i < briefs; i++)
        {
            foreach (var tempo in (ReadOnlySpan<Tempo>)[TempoBriefs.Slow(i), TempoBriefs.Fast(i)])
            {
                drafts.Add(Draft(rough ? TempoBriefs.Rougher(i, tempo) : TempoBriefs.Of(i, tempo), i, tempo, book, rounds));
            }
        }

        Console.WriteLine("| tempo | drafts | found | impossible | neither | of these without novices | found | median points | median moves |");
        Console.WriteLine("|---|---|---|---|---|---|---|---|---|");
        foreach (var band in drafts.GroupBy(d => (d.Tempo - 1) / 20).OrderBy(g => g.Key))
        {
            Line(string.Create(CultureInfo.InvariantCulture, $"{(band.Key * 20) + 1} to {(band.Key + 1) * 20}"), [.. band]);
        }

        Line("up to 100", [.. drafts.Where(d => d.Tempo <= 100)]);
        Line("above 100", [.. drafts.Where(d => d.Tempo > 100)]);
        return 0;
    }

    private static Drafted Draft(Brief brief, int number, Tempo tempo, Book book, int rounds)
    {
        var result = Drafting.Draft(brief, book, new DraftOptions { Rounds = rounds, Time = TimeSpan.FromSeconds(60) });
        var novices = brief.Hero.Skill == Skill.Novice || brief.Attackers.Any(a => a.Skill == Skill.Novice);
        if (result.Status != DraftStatus.Found)
        {
            var why = result.Clash.Count > 0 ? result.Clash[0] : string.Empty;
            Console.Error.WriteLine(string.Create(CultureInfo.InvariantCulture, $"brief {number} at {tempo.CountsPerMinute}: {result.Status} {why}"));
        }

        return new Drafted(tempo.CountsPerMinute, novices, result.Status, result.Verdict?.Points ?? 0, result.Routine?.Moves.Count ?? 0);
    }

    private static void Line(string name, IReadOnlyList<Drafted> drafts)
    {
        var found = drafts.Where(d => d.Status == DraftStatus.Found).ToList();
        var (others, impossible) = (drafts.Where(d => !d.Novices).ToList(), drafts.Count(d => d.Status == DraftStatus.Impossible));
        Console.WriteLine(string.Create(
            CultureInfo.InvariantCulture,
            $"| {name} | {drafts.Count} | {found.Count} | {impossible} | {drafts.Count - found.Count - impossible} | {others.Count} | {others.Count(d => d.Status == DraftStatus.Found)} | {Median(found.Select(d => d.Points))} | {Median(found.Select(d => d.Moves))} |"));
    }

    private static int Median(IEnumerable<int> values) => values.Order().ToList() is { Count: > 0 } sorted ? sorted[sorted.Count / 2] : 0;

    private static (int Briefs, int Rounds, bool Rough)? Options(string[] args)
    {
        var (briefs, rounds, rough) = (60, 4, false);
        for (var i = 0; i < args.Length; i += 2)
        {
            var good = i + 1 < args.Length && args[i] switch
            {
                "--briefs" => int.TryParse(args[i + 1], NumberStyles.None, CultureInfo.InvariantCulture, out briefs),
                "--rounds" => int.TryParse(args[i + 1], NumberStyles.None, CultureInfo.InvariantCulture, out rounds) && rounds > 0,
                "--kind" => rough = args[i + 1] == "rough",
                _ => false,
            };
            if (!good)
            {
                return null;
            }
        }

        return (briefs, rounds, rough);
    }

    private sealed record Drafted(int Tempo, bool Novices, DraftStatus Status, int Points, int Moves);
}
