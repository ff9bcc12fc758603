using System.Text;
using Generator.Domain;
using Generator.Library;
using Generator.Library.Files;
using Generator.Library.Reading;
using Generator.Paperwork;
using Generator.Paperwork.Text;
using Generator.Rules;
using Generator.Rules.Sight;
using Generator.Solver;
using Generator.Testing;
using Xunit.Abstractions;

namespace Generator.Cli.Tests.Papers;

/// <summary>All papers of a routine, read back, say the same of every count, name, fall, contact, time and version.</summary>
public class PapersAgreeTests(ITestOutputHelper output)
{
    /// <summary>How many routines are looked at; GENERATOR_PAPERS=40 for more than the suite has time for.</summary>
    private static readonly int Routines = int.TryParse(Environment.GetEnvironmentVariable("GENERATOR_PAPERS"), System.Globalization.CultureInfo.InvariantCulture, out var many) ? many : 12;

    private static readonly Book Book = LibraryLoader.LoadBundled().Value!;

    [Fact]
    public void Of_random_routines_clean_and_faulty()
    {
        var drafts = Enumerable.Range(1, 200).Select(Draft).OfType<Routine>().Take(Routines / 2);
        var faulty = Enumerable.Range(1, 200).Select(s => RandomRoutine.Of(s, Book)).Where(r => r.Moves.Count > 0 && r.Moves.Zip(r.Moves.Skip(1)).All(m => m.First.Start <= m.Second.Start)).Take(Routines / 2);
        var routines = drafts.Concat(faulty).ToList();
        Assert.Equal(Routines, routines.Count);
        var (facts, clean) = (0, 0);
        var faults = new List<string>();
        foreach (var routine in routines)
        {
            var source = Source(routine);
            var read = Read(source, Papers(source));
            facts += read.Count;
            clean += source.Verdict.IsClean ? 1 : 0;
            faults.AddRange(Fact.Faults(read).Take(5).Select(f => $"{routine.Moves.Count} moves, {(source.Verdict.IsClean ? "clean" : "faulty")}: {f}"));
        }

        output.WriteLine($"{facts} facts of {routines.Count} routines, {clean} of them clean");
        output.WriteLine(string.Join('\n', faults));
        Assert.Empty(faults);
        Assert.InRange(clean, Routines / 2, Routines - (Routines / 4));
        Assert.True(facts > 100 * Routines, $"only {facts} facts");
    }

    /// <summary>A lie in any kind of paper is found: a checker that finds none would prove nothing.</summary>
    [Theory]
    [InlineData("wall.txt", "  m2    c", "  m2    c1")]
    [InlineData("wall.txt", "fall: ", "tumble: ")]
    [InlineData("cue-list.txt", "  fall  ", "  out   ")]
    [InlineData("cue-list.txt", "  00:00:0", "  00:00:4")]
    [InlineData("teaching-plan.txt", " moves 1 to ", " bars 1 to ")]
    [InlineData("fight-call.txt", "m2 c", "m3 c")]
    [InlineData("risk-assessment.txt", "m2 c", "m3 c")]
    [InlineData("camera-plan.txt", ": m", ": m9")]
    [InlineData("routine.html", "dd class=\"technique\">", "dd class=\"technique\">Not ")]
    [InlineData("routine.html", "class=\"count\">count ", "class=\"count\">count 9")]
    [InlineData("part-ines.html", "contact at count ", "contact at count 9")]
    [InlineData("part-bruno.html", "<dt>Falls</dt><dd>", "<dt>Falls</dt><dd>9")]
    [InlineData("moves.csv", "Bruno", "Wanda")]
    [InlineData("tracks.csv", "Trip right", "Trip left")]
    [InlineData("risk-assessment.html", "Version ", "Version 0")]
    [InlineData("rehearsals.ics", "ersion ", "ersion 0")]
    public void A_lie_in_any_paper_is_found(string paper, string truth, string lie)
    {
        var (source, papers) = (Ferries.Value.Source, new Dictionary<string, byte[]>(Ferries.Value.Papers));
        var text = Encoding.UTF8.GetString(papers[paper]);
        Assert.Contains(truth, text, StringComparison.Ordinal);
        papers[paper] = Encoding.UTF8.GetBytes(text.Replace(truth, lie, StringComparison.Ordinal));
        Assert.NotEmpty(Fact.Faults(Read(source, papers)));
    }

    [Fact]
    public void Of_the_stored_fight() => Assert.Empty(Fact.Faults(Read(Ferries.Value.Source, Ferries.Value.Papers)));

    /// <summary>The same of the workbook, which is no text: that of another routine.</summary>
    [Fact]
    public void A_workbook_of_another_version_is_found()
    {
        var (source, other) = (Ferries.Value.Source, Source(Ferry with { Moves = [.. Ferry.Moves.Select((m, i) => i == 3 ? m with { Start = m.Start + new HalfCounts(1) } : m)] }));
        var papers = new Dictionary<string, byte[]>(Ferries.Value.Papers);
        papers["routine.xlsx"] = Papers(other)["routine.xlsx"];
        Assert.NotEmpty(Fact.Faults(Read(source, papers)));
    }

    private static Routine Ferry => RoutineReader.Parse(new SourceFile("ferry.routine.json", File.ReadAllText(Path.Combine(AppContext.BaseDirectory, "Data", "ferry.routine.json"))), Book, null).Value!;

    private static readonly Lazy<(PaperSource Source, Dictionary<string, byte[]> Papers)> Ferries = new(() => Source(Ferry) is var source ? (source, Papers(source)) : default);

    private static Routine? Draft(int seed)
    {
        var chance = new Chance(seed);
        string[] names = ["Bruno", "Wanda", "Piet", "Ama"];
        var cast = chance.Whole(1, 4);
        var brief = new Brief
        {
            Title = "Fight " + seed,
            Tempo = new Tempo(chance.Whole(70, 120)),
            Length = new Length(null, 3 + (cast * chance.Whole(2, 4)), 2),
            Hero = new HeroPart { Name = "Ines", Skill = Skill.Stunt },
            Attackers = [.. names.Take(cast).Select(n => new AttackerPart { Name = n, Skill = chance.One([Skill.Trained, Skill.Stunt]), Entrance = chance.Percent(25) ? new HalfCounts(chance.Whole(2, 12)) : null })],
            Cameras = chance.List(0, 2, i => new Camera("camera " + i, new Bearing(chance.Whole(0, 23)), new Centimetres(500), new Centimetres(150))),
            Setbacks = chance.Maybe(() => chance.Whole(0, 1)),
        };
        return Drafting.Draft(brief, Book, new DraftOptions { Seed = seed, Rounds = 1, Time = TimeSpan.FromSeconds(60) }).Routine;
    }

    private static PaperSource Source(Routine routine)
    {
        var source = PaperSource.Of(new Scene(routine.Brief, Book), routine);
        return source.With(PaperOptions.Default with { From = new DateOnly(2027, 3, 15), Cameras = new CameraPlan(Hit.Of(source.Scene, source.Steps), source.Brief.Cameras, []) });
    }

    private static Dictionary<string, byte[]> Papers(PaperSource source) => Pack.Of(source).Where(p => !p.FileName.StartsWith("click.", StringComparison.Ordinal)).ToDictionary(
        p => p.FileName,
        p =>
        {
            using var stream = new MemoryStream();
            p.Write(source, stream);
            return stream.ToArray();
        },
        StringComparer.Ordinal);

    private static List<Fact> Read(PaperSource source, Dictionary<string, byte[]> papers)
    {
        IReadOnlyList<string> cast = [Page.Clean(source.Brief.Hero.Name), .. source.Brief.Attackers.Select(a => Page.Clean(a.Name))];
        return [.. papers.SelectMany(p => (Path.GetExtension(p.Key), p.Value) switch
        {
            (".txt", var bytes) => TextReading.Of(p.Key, Encoding.UTF8.GetString(bytes), cast),
            (".html", var bytes) => PageReading.Of(p.Key, Encoding.UTF8.GetString(bytes), cast),
            (".csv", var bytes) => TableReading.Of(p.Key, TableReading.Csv(bytes), cast),
            (".xlsx", var bytes) => TableReading.Of(p.Key, TableReading.Sheet(bytes, "Moves"), cast),
            (".ics", var bytes) => TableReading.Calendar(Encoding.UTF8.GetString(bytes)),
            _ => [],
        })];
    }
}
