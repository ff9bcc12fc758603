using System.Globalization;
using Generator.Domain;
using Generator.Library;
using Generator.Solver;

namespace Generator.Benchmarks.Coverage;

/// <summary>
/// Drafts many briefs of many kinds and says what of the library never occurs, and how the moves spread over the families. What did not occur by itself
/// is then asked for as a hero moment. Options: <c>--briefs 200</c>, <c>--time 2</c> (seconds a draft).
/// </summary>
internal static class CoverageRun
{
    /// <summary>Drafts in which a technique may be asked for before it counts as never occurring.</summary>
    private const int Asks = 6;

    public static int All(string[] args)
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
                Console.Error.WriteLine("These options are known: --briefs 200, --time 2.\nMaybe a value is missing.");
                return 2;
            }
        }

        var book = LongRoutine.Book();
        var options = new DraftOptions { Time = TimeSpan.FromSeconds((double)time) };
        var tally = new CoverageTally();
        var found = 0;
        for (var i = 0; i < briefs; i++)
        {
            if (Drafting.Draft(CoverageBriefs.Free(i), book, options with { Seed = 1 + (i % 7) }).Routine is { } routine)
            {
                found++;
                tally.Add(routine, book);
            }
        }

        Console.WriteLine(string.Create(CultureInfo.InvariantCulture, $"{found} of {briefs} briefs drafted, {tally.Moves} moves."));
        Distribution(tally);
        var missing = book.Techniques.Select(t => t.BaseId).Distinct(StringComparer.Ordinal).Where(id => !tally.Techniques.ContainsKey(id)).ToList();
        Console.WriteLine(string.Create(CultureInfo.InvariantCulture, $"Techniques that occurred unasked: {tally.Techniques.Count}; not: {missing.Count} ({string.Join(", ", missing)})"));
        var never = missing.Where(id => !Asked(id, book, options, tally)).ToList();
        List("techniques", never);
        List("attacks", book.Attacks.Select(a => a.BaseId).Distinct(StringComparer.Ordinal).Where(id => !tally.Attacks.ContainsKey(id)));
        List("reactions", book.Reactions.Select(r => r.Id).Where(id => !tally.Reactions.ContainsKey(id)));
        return never.Count == 0 ? 0 : 1;
    }

    private static void Distribution(CoverageTally tally)
    {
        foreach (var family in Enum.GetValues<Family>().OrderByDescending(f => tally.Families.GetValueOrDefault(f)))
        {
            Console.WriteLine(string.Create(CultureInfo.InvariantCulture, $"  {family,-10} {tally.Share(tally.Families.GetValueOrDefault(family)),5} %"));
        }

        Console.WriteLine(string.Create(CultureInfo.InvariantCulture, $"  leaving somebody held {tally.Share(tally.Holds)} %, supported or while holding another {tally.Share(tally.Supported)} %"));
        var most = tally.Techniques.OrderByDescending(p => p.Value).Take(12).Select(p => string.Create(CultureInfo.InvariantCulture, $"{p.Key} {p.Value}"));
        Console.WriteLine($"  most frequent: {string.Join(", ", most)}");
    }

    /// <summary>Asks for a technique as a hero moment until it occurs.</summary>
    private static bool Asked(string id, Book book, DraftOptions options, CoverageTally tally)
    {
        for (var i = 0; i < Asks; i++)
        {
            if (tally.Techniques.ContainsKey(id))
            {
                return true;
            }

            var result = Drafting.Draft(CoverageBriefs.Asking(book.Techniques.First(t => string.Equals(t.BaseId, id, StringComparison.Ordinal)), book, i), book, options with { Seed = 1 + i, Time = options.Time * (1 + (i / 2)) });
            if (result.Routine is { } routine)
            {
                tally.Add(routine, book);
            }
        }

        return tally.Techniques.ContainsKey(id);
    }

    private static void List(string what, IEnumerable<string> never)
    {
        var all = never.ToList();
        Console.WriteLine(all.Count == 0 ? $"Never, of {what}: none" : string.Create(CultureInfo.InvariantCulture, $"Never, of {what}: {all.Count} ({string.Join(", ", all)})"));
    }
}
