using System.Diagnostics;
using System.Globalization;
using Generator.Library.Files;
using Generator.Library.Reading;
using Generator.Solver;
using Generator.Solver.Questions;

namespace Generator.Benchmarks.Explaining;

/// <summary>
/// Drafts every kind of brief of which anybody sees that it cannot be (those of the tests), as a user would: how it ends, in how much processor time of all threads, and the smallest clash. The first
/// pays for what is compiled on the way. Options: <c>--time 20</c> (seconds each), <c>--only 13</c>. Exit code 1 where fewer than 40 end within 3 s with a clash, or refused when read.
/// </summary>
internal static class KindsRun
{
    private const double Soon = 3;

    private const int Wanted = 40;

    public static int All(string[] args)
    {
        var options = args.Chunk(2).Where(c => c.Length == 2).ToDictionary(c => c[0], c => c[1], StringComparer.Ordinal);
        var time = TimeSpan.FromSeconds(options.TryGetValue("--time", out var seconds) ? double.Parse(seconds, CultureInfo.InvariantCulture) : 20);
        var (book, good, all) = (LongRoutine.Book(), 0, 0);
        foreach (var file in Directory.EnumerateFiles(Places.Kinds, "*.brief.json").Order(StringComparer.Ordinal))
        {
            var name = Path.GetFileName(file)[..^".brief.json".Length];
            if (options.TryGetValue("--only", out var only) && !name.Contains(only, StringComparison.Ordinal))
            {
                continue;
            }

            var began = Work();
            var read = BriefReader.Parse(new SourceFile(Path.GetFileName(file), File.ReadAllText(file)), book);
            var drafted = read is { IsGood: true, Value: { } brief } ? Drafting.Draft(brief, book, new DraftOptions { Time = time }) : null;
            var spent = Work() - began;
            var (exit, said) = drafted switch
            {
                null => (2, read.ToText().ReplaceLineEndings(" ")),
                { Status: DraftStatus.Impossible } => (3, string.Join(" + ", drafted.Clash)),
                { Status: DraftStatus.Found } => (0, string.Empty),
                _ => (4, string.Empty),
            };
            good += exit is 2 or 3 && spent <= Soon && said.Length > 0 ? 1 : 0;
            all++;
            Console.WriteLine(string.Create(CultureInfo.InvariantCulture, $"{name,-60} exit {exit} {spent,5:0.00} s  {said}"));
        }

        Console.WriteLine(string.Create(CultureInfo.InvariantCulture, $"{good} of {all} say within {Soon} s of processor time why they cannot be."));
        return good >= Math.Min(Wanted, all) ? 0 : 1;
    }

    private static double Work()
    {
        using var own = Process.GetCurrentProcess();
        return own.TotalProcessorTime.TotalSeconds;
    }
}
