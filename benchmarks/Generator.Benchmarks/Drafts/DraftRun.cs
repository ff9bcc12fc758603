using System.Diagnostics;
using System.Globalization;
using System.Text;
using Generator.Benchmarks.Stored;
using Newtonsoft.Json;

namespace Generator.Benchmarks.Drafts;

/// <summary>
/// Drafts the stored briefs one after another, each in a process of its own, and prints medians with their spread for each size.
/// Options: <c>--size 12x2</c>, <c>--count 5</c> (briefs of each size), <c>--time 10</c> (seconds a brief), <c>--no-cold</c>.
/// </summary>
internal static class DraftRun
{
    private static readonly string[] Known = ["--size", "--count", "--time"];

    public static int All(string[] args)
    {
        var options = Options(args);
        if (options is null)
        {
            Console.Error.WriteLine("These options are known: --size 12x2, --count 5, --time 10, --no-cold.\nMaybe a value is missing.");
            return 2;
        }

        var (sizes, count, time, cold) = options.Value;
        var all = new Dictionary<string, List<DraftFigures>>(StringComparer.Ordinal);
        var table = new StringBuilder();
        Say(table, "| size | engine | found | first valid, ms | in audits of 200 moves | times whole | points | perfect | memory, MiB | times whole |");
        Say(table, "|---|---|---|---|---|---|---|---|---|---|");
        foreach (var size in sizes)
        {
            var whole = Drafts(size, count, time, DraftChild.Warm);
            all[$"{size} {DraftChild.Warm}"] = whole;
            Say(table, Line(size, "whole", whole, "1", "1"));
            if (cold)
            {
                var alone = Drafts(size, count, time, DraftChild.Cold);
                all[$"{size} {DraftChild.Cold}"] = alone;
                Say(table, Line(size, "CP-SAT alone", alone, AgainstWhole.Time(alone, whole), AgainstWhole.Memory(alone, whole)));
            }
        }

        Directory.CreateDirectory(Places.Artifacts);
        var path = Path.Combine(Places.Artifacts, "draft.json");
        File.WriteAllText(path, JsonConvert.SerializeObject(all, Formatting.Indented));
        File.WriteAllText(Path.ChangeExtension(path, ".md"), table.ToString());
        Console.WriteLine($"\nEvery brief: {path}");
        return 0;
    }

    private static void Say(StringBuilder table, string line)
    {
        Console.WriteLine(line);
        table.Append(line).Append('\n');
    }

    private static List<DraftFigures> Drafts(string size, int count, string time, string mode) =>
        [.. StoredBriefs.Files(size).Take(count).Select(f => Draft(f, time, mode))];

    private static (IReadOnlyList<string> Sizes, int Count, string Time, bool Cold)? Options(string[] args)
    {
        var sizes = StoredBriefs.Sizes.Select(StoredBriefs.SizeText).ToList();
        var (count, time, cold) = (StoredBriefs.EachSize, "10", true);
        for (var i = 0; i < args.Length; i++)
        {
            if (string.Equals(args[i], "--no-cold", StringComparison.Ordinal))
            {
                cold = false;
                continue;
            }

            if (!Known.Contains(args[i], StringComparer.Ordinal) || i + 1 >= args.Length)
            {
                return null;
            }

            var (name, value) = (args[i], args[++i]);
            switch (name)
            {
                case "--size" when sizes.Contains(value, StringComparer.Ordinal):
                    sizes = [value];
                    break;
                case "--count" when int.TryParse(value, NumberStyles.None, CultureInfo.InvariantCulture, out count) && count > 0:
                    break;
                case "--time" when double.TryParse(value, NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out var seconds) && seconds >= 0.1:
                    time = value;
                    break;
                default:
                    return null;
            }
        }

        return (sizes, count, time, cold);
    }

    private static DraftFigures Draft(string file, string time, string mode)
    {
        var start = new ProcessStartInfo(Environment.ProcessPath!) { RedirectStandardOutput = true, UseShellExecute = false };
        foreach (var word in new[] { DraftChild.Word, file, time, mode })
        {
            start.ArgumentList.Add(word);
        }

        using var child = Process.Start(start)!;
        var line = child.StandardOutput.ReadToEnd();
        child.WaitForExit();
        return child.ExitCode == 0 && JsonConvert.DeserializeObject<DraftFigures>(line) is { } figures
            ? figures
            : new DraftFigures { Brief = Path.GetFileName(file), Status = "Failed" };
    }

    private static string Line(string size, string engine, List<DraftFigures> figures, string times, string memories)
    {
        var found = figures.Where(f => f.Points is not null).ToList();
        var first = Spread.Of(found.Where(f => f.First is not null).Select(f => f.First!.Value));
        var ratio = Spread.Of(found.Where(f => f.FirstRatio is not null).Select(f => f.FirstRatio!.Value));
        var points = Spread.Of(found.Select(f => (double)f.Points!.Value));
        var memory = Spread.Of(figures.Where(f => f.Memory > 0).Select(f => f.Memory));
        string[] cells =
        [
            size,
            engine,
            string.Create(CultureInfo.InvariantCulture, $"{found.Count} of {figures.Count}{Others(figures)}"),
            first?.ToText("0") ?? "–",
            ratio?.ToText("0") ?? "–",
            times,
            points?.ToText("0.#") ?? "–",
            string.Create(CultureInfo.InvariantCulture, $"{found.Count(f => f.Points == 0)}"),
            memory?.ToText("0") ?? "–",
            memories,
        ];
        return $"| {string.Join(" | ", cells)} |";
    }

    private static string Others(List<DraftFigures> figures)
    {
        var rest = figures.Where(f => f.Points is null).GroupBy(f => f.Status, StringComparer.Ordinal).OrderBy(g => g.Key, StringComparer.Ordinal);
        return string.Concat(rest.Select(g => string.Create(CultureInfo.InvariantCulture, $", {g.Count()} {g.Key}")));
    }
}
