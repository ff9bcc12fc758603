using System.Globalization;
using Generator.Domain;
using Generator.Library;
using Generator.Library.Files;
using Generator.Solver;
using Generator.Solver.Questions;

namespace Generator.Benchmarks.Stored;

/// <summary>
/// Draws the tight and loose briefs that are missing from the folder, each from seeds of its own, and keeps only those for which there is a
/// routine, whose points become the first entry of the best known. Draws without a routine within the time are counted and told.
/// </summary>
internal static class FamilyRun
{
    public const int EachFamily = 10;

    private const int Seed = 71100;

    private static readonly TimeSpan Time = TimeSpan.FromSeconds(60);

    public static int All(string[] args)
    {
        var book = LongRoutine.Book();
        var known = BestKnown.Load();
        foreach (var family in Family.All.Where(f => f.Kind != Kind.Mixed && (args.Length == 0 || args.Contains(f.Name, StringComparer.Ordinal))))
        {
            var dropped = 0;
            for (var i = 1; i <= EachFamily; i++)
            {
                var name = string.Create(CultureInfo.InvariantCulture, $"{family.Name}-{i:00}");
                var path = Path.Combine(Places.Briefs, name + ".brief.json");
                for (var draw = 0; !File.Exists(path); draw++)
                {
                    if (Draw(family, name, new Random(Seed + (family.Moves * 1000) + (i * 20) + draw), book) is not { } drawn)
                    {
                        dropped++;
                        continue;
                    }

                    File.WriteAllText(path, BriefWriter.Text(drawn.Brief));
                    known.Lower(name, drawn.Points);
                    known.Save();
                    Console.WriteLine(string.Create(CultureInfo.InvariantCulture, $"{name}: {drawn.Points} points"));
                }
            }

            Console.WriteLine(string.Create(CultureInfo.InvariantCulture, $"{family.Name}: {dropped} draws without a routine"));
        }

        return 0;
    }

    private static (Brief Brief, int Points)? Draw(Family family, string name, Random random, Book book)
    {
        var brief = family.Kind == Kind.Tight ? FamilyBriefs.Tight(family, name, random) : FamilyBriefs.Loose(family, name, random);
        using var found = new CancellationTokenSource();
        var result = Drafting.Draft(brief, book, new DraftOptions { Time = Time }, new StopAtFirst(found), found.Token);
        if (result.Routine is not { } routine)
        {
            return null;
        }

        return family.Kind == Kind.Tight ? Tightening.Of(routine, book, random) : (brief, result.Verdict!.Points);
    }

    private sealed class StopAtFirst(CancellationTokenSource found) : IProgress<DraftProgress>
    {
        public void Report(DraftProgress value) => found.Cancel();
    }
}
