using System.Globalization;
using System.Text;
using Generator.Domain;
using Generator.Library;
using Generator.Library.Files;
using Generator.Library.Reading;
using Generator.Rules;
using Generator.Rules.Shapes;
using Generator.Solver;
using Generator.Solver.Questions;

namespace Generator.Benchmarks.Taste;

/// <summary>
/// Drafts the thirty kinds of brief in <c>benchmarks/briefs-taste</c> by several seeds, by rounds and not by the clock, and prints what a practitioner looks for, the
/// seventeen checks and the figures of the rough rules. Options: <c>--seeds 3</c>, <c>--rounds 4</c>, <c>--only 09</c>, <c>--acts no</c> (no brief is drafted as a story), <c>--drafts FOLDER</c> (writes every draft there), <c>--out FILE</c>.
/// </summary>
internal static class TasteRun
{
    /// <summary>Times the rounds that a brief gets of which the first rounds find nothing.</summary>
    private const int MoreRounds = 8;

    public static int All(string[] args)
    {
        if (Options(args) is not { } options)
        {
            Console.Error.WriteLine("These options are known: --seeds 3, --rounds 4, --only 09, --acts no, --drafts FOLDER, --out FILE.\nMaybe a value is missing.");
            return 2;
        }

        var book = LongRoutine.Book();
        var (drafts, missing) = (new List<TasteDraft>(), new List<string>());
        foreach (var file in Directory.EnumerateFiles(Path.Combine(Places.Benchmarks, "briefs-taste"), options.Only + "*.brief.json").Order(StringComparer.Ordinal))
        {
            for (var seed = 1; seed <= options.Seeds; seed++)
            {
                Draft(file, seed, book, options, drafts, missing);
            }
        }

        if (drafts.Count == 0)
        {
            Console.Error.WriteLine("Nothing was drafted.");
            return 1;
        }

        var text = Report(drafts, missing, book, options);
        Console.Write(text);
        if (options.Out is { } path)
        {
            File.WriteAllText(path, text);
        }

        return 0;
    }

    private static void Draft(string file, int seed, Book book, TasteOptions options, List<TasteDraft> drafts, List<string> missing)
    {
        var name = Path.GetFileName(file).Replace(".brief.json", string.Empty, StringComparison.Ordinal);
        var problems = new ProblemList();
        var brief = BriefReader.Parse(SourceFile.Load(file, problems)!, book).Value ?? throw new InvalidOperationException($"{file} is no brief.");
        brief = options.Acts ? brief : brief with { Acts = [] };
        var draft = new DraftOptions { Seed = seed, Rounds = options.Rounds, Time = TimeSpan.FromSeconds(120) };
        var result = Drafting.Draft(brief, book, draft);
        if (result.Routine is null)
        {
            // What a few rounds do not find is looked for once more.
            result = Drafting.Draft(brief, book, draft with { Rounds = MoreRounds * options.Rounds });
        }

        if (result.Routine is not { } routine)
        {
            missing.Add(string.Create(CultureInfo.InvariantCulture, $"{name} by seed {seed}: {result.Status} {string.Join(' ', result.Clash.Take(1))}"));
            Console.Error.WriteLine(missing[^1]);
            return;
        }

        if (options.Drafts is { } folder)
        {
            Directory.CreateDirectory(folder);
            File.WriteAllText(Path.Combine(folder, string.Create(CultureInfo.InvariantCulture, $"{name}.s{seed}.routine.json")), RoutineWriter.Text(routine));
        }

        drafts.Add(new TasteDraft(int.Parse(name[..2], CultureInfo.InvariantCulture), seed, result.Verdict!.Points, routine, FightShape.Of(new Scene(routine.Brief, book), routine)));
    }

    private static string Report(List<TasteDraft> drafts, List<string> missing, Book book, TasteOptions options)
    {
        var text = new StringBuilder();
        var passed = drafts.Select(d => d.Passed.Count(p => p)).Order().ToList();
        text.Append(CultureInfo.InvariantCulture, $"# Is it a good fight?\n\n{drafts.Count} drafts of {drafts.Select(d => d.Brief).Distinct().Count()} kinds of brief by {options.Seeds} seeds, {options.Rounds} rounds each{(options.Acts ? string.Empty : ", no acts")}; library {book.Version}, {Tools.Commit()}; {drafts.Sum(d => d.Steps.Count)} moves, {drafts.Sum(d => d.Shape.Exchanges.Count)} exchanges.\n");
        text.Append(CultureInfo.InvariantCulture, $"Of 17 checks a median of {passed[passed.Count / 2]} is passed, {passed[0]} at least, {passed[^1]} at most.\n");
        text.Append(missing.Count == 0 ? "Every draft was found.\n" : $"Not found: {string.Join("; ", missing)}.\n");
        text.Append("\n## What is looked for\n\n| looked for | found |\n|---|---|\n");
        foreach (var (name, found) in TasteRows.Of(drafts))
        {
            text.Append(CultureInfo.InvariantCulture, $"| {name} | {found} |\n");
        }

        text.Append("\n## The checks\n\n| check | passed |\n|---|---|\n");
        for (var i = 0; i < TasteChecks.All.Count; i++)
        {
            text.Append(CultureInfo.InvariantCulture, $"| {TasteChecks.All[i].Name} | {100.0 * drafts.Count(d => d.Passed[i]) / drafts.Count:0} % |\n");
        }

        text.Append("\n## The figures of the rough rules\n\n| rule | figure | band | within | lowest | median | highest | nothing to judge |\n|---|---|---|---|---|---|---|---|\n");
        foreach (var figures in drafts.SelectMany(d => Figures.Of(d.Shape)).GroupBy(f => f.Id, StringComparer.Ordinal))
        {
            var values = figures.Select(f => f.Value).OfType<int>().Order().ToList();
            var first = figures.First();
            var shares = values.Count == 0 ? "- | - | - | -" : string.Create(CultureInfo.InvariantCulture, $"{100.0 * figures.Count(f => f.IsMet == true) / values.Count:0} % | {values[0]} | {values[values.Count / 2]} | {values[^1]}");
            text.Append(CultureInfo.InvariantCulture, $"| {first.Rule} | {first.Name} ({first.Unit}) | {(first.Least is { } least ? $"at least {least} " : string.Empty)}{(first.Most is { } most ? $"at most {most}" : string.Empty)} | {shares} | {figures.Count(f => f.Value is null)} |\n");
        }

        text.Append("\n## Each brief\n\n| brief | attackers | moves | seconds | checks passed, by seed |\n|---|---|---|---|---|\n");
        foreach (var brief in drafts.GroupBy(d => d.Brief))
        {
            var one = brief.First();
            text.Append(CultureInfo.InvariantCulture, $"| {brief.Key:00} {one.Routine.Brief.Title} | {one.Cast} | {one.Steps.Count} | {one.Shape.Seconds:0} | {string.Join(", ", brief.Select(d => d.Passed.Count(p => p)))} |\n");
        }

        return text.ToString();
    }

    private static TasteOptions? Options(string[] args)
    {
        var options = new TasteOptions(3, 4, string.Empty, true, null, null);
        for (var i = 0; i < args.Length; i += 2)
        {
            if (i + 1 >= args.Length)
            {
                return null;
            }

            var whole = int.TryParse(args[i + 1], NumberStyles.None, CultureInfo.InvariantCulture, out var number) && number > 0;
            switch (args[i])
            {
                case "--seeds" when whole:
                    options = options with { Seeds = number };
                    break;
                case "--rounds" when whole:
                    options = options with { Rounds = number };
                    break;
                case "--only":
                    options = options with { Only = args[i + 1] };
                    break;
                case "--acts" when args[i + 1] == "no":
                    options = options with { Acts = false };
                    break;
                case "--drafts":
                    options = options with { Drafts = args[i + 1] };
                    break;
                case "--out":
                    options = options with { Out = args[i + 1] };
                    break;
                default:
                    return null;
            }
        }

        return options;
    }

    private sealed record TasteOptions(int Seeds, int Rounds, string Only, bool Acts, string? Drafts, string? Out);
}
