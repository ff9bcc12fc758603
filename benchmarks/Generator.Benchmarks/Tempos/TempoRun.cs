using System.Globalization;
using Generator.Domain;
using Generator.Library;
using Generator.Library.Files;
using Generator.Solver;
using Generator.Solver.Questions;

namespace Generator.Benchmarks.Tempos;

/// <summary>
/// Drafts the same random briefs at a slow and at a fast tempo, by rounds and not by the clock, and says how many are solved in each band of tempos.
/// Options: <c>--briefs 60</c>, <c>--rounds 4</c>, <c>--kind rough</c> for briefs that are less kind (<see cref="TempoBriefs.Rougher"/>), <c>--first 58</c> to begin at that one, <c>--save FOLDER</c> for
/// those that nothing was found for.
/// </summary>
internal static class TempoRun
{
    public static int All(string[] args)
    {
        if (Options(args) is not { } asked)
        {
            Console.Error.WriteLine("These options are known: --briefs 60, --rounds 4, --kind rough, --first 0, --save FOLDER.\nMaybe a value is missing.");
            return 2;
        }

        var book = LongRoutine.Book();
        var drafts = new List<Drafted>();
        for (var i = asked.First; i < asked.First + asked.Briefs; i++)
        {
            foreach (var tempo in (ReadOnlySpan<Tempo>)[TempoBriefs.Slow(i), TempoBriefs.Fast(i)])
            {
                drafts.Add(Draft(asked.Rough ? TempoBriefs.Rougher(i, tempo) : TempoBriefs.Of(i, tempo), i, book, asked));
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

    private static Drafted Draft(Brief brief, int number, Book book, Asked asked)
    {
        var result = Drafting.Draft(brief, book, new DraftOptions { Rounds = asked.Rounds, Time = TimeSpan.FromSeconds(60) });
        var novices = brief.Hero.Skill == Skill.Novice || brief.Attackers.Any(a => a.Skill == Skill.Novice);
        if (result.Status != DraftStatus.Found)
        {
            var why = result.Clash.Count > 0 ? result.Clash[0] : string.Empty;
            var name = string.Create(CultureInfo.InvariantCulture, $"brief {number} at {brief.Tempo.CountsPerMinute}");
            Console.Error.WriteLine($"{name}: {result.Status} after {result.Elapsed.TotalSeconds:0} s {why}");
            if (asked.Save is { } folder)
            {
                File.WriteAllText(Path.Combine(Directory.CreateDirectory(folder).FullName, name.Replace(' ', '-') + ".brief.json"), BriefWriter.Text(brief));
            }
        }

        return new Drafted(brief.Tempo.CountsPerMinute, novices, result.Status, result.Verdict?.Points ?? 0, result.Routine?.Moves.Count ?? 0);
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

    private static Asked? Options(string[] args)
    {
        var asked = new Asked();
        for (var i = 0; i < args.Length; i += 2)
        {
            if (i + 1 >= args.Length || With(asked, args[i], args[i + 1]) is not { } next)
            {
                return null;
            }

            asked = next;
        }

        return asked;
    }

    private static Asked? With(Asked asked, string option, string value) => (option, int.TryParse(value, NumberStyles.None, CultureInfo.InvariantCulture, out var number)) switch
    {
        ("--briefs", true) => asked with { Briefs = number },
        ("--rounds", true) when number > 0 => asked with { Rounds = number },
        ("--first", true) => asked with { First = number },
        ("--kind", _) when value == "rough" => asked with { Rough = true },
        ("--save", _) => asked with { Save = value },
        _ => null,
    };

    private sealed record Asked(int Briefs = 60, int Rounds = 4, int First = 0, bool Rough = false, string? Save = null);

    private sealed record Drafted(int Tempo, bool Novices, DraftStatus Status, int Points, int Moves);
}
