using System.Globalization;
using System.Text;
using AngleSharp.Html.Parser;
using Generator.Domain;
using Generator.Paperwork;
using Generator.Paperwork.Printing;
using Generator.Paperwork.Text;
using Generator.Testing;
using Newtonsoft.Json.Linq;
using Xunit.Abstractions;

namespace Generator.Cli.Tests.Papers;

/// <summary>All papers of a routine, read back, say the same of every count, name, fall, contact, time and version.</summary>
public class PapersAgreeTests(ITestOutputHelper output)
{
    /// <summary>One in so many of the routines is printed, too; <c>GENERATOR_PRINTED=1</c> prints all.</summary>
    private static readonly int Printing = int.TryParse(Environment.GetEnvironmentVariable("GENERATOR_PRINTED"), NumberStyles.None, CultureInfo.InvariantCulture, out var every) && every > 0 ? every : 16;

    [Fact]
    public void Of_random_routines_clean_and_faulty()
    {
        var (facts, clean) = (0, 0);
        var faults = new List<string>();
        foreach (var pack in Made.Packs)
        {
            var read = Read(pack.Source, pack.Files);
            facts += read.Count;
            clean += pack.Source.Verdict.IsClean ? 1 : 0;
            faults.AddRange(Fact.Faults(read).Take(5).Select(f => $"{pack.Source.Steps.Count} moves, {(pack.Source.Verdict.IsClean ? "clean" : "faulty")}: {f}"));
        }

        output.WriteLine($"{facts} facts of {Made.Packs.Count} routines, {clean} of them clean");
        output.WriteLine(string.Join('\n', faults));
        Assert.Empty(faults);
        Assert.Equal(Made.Routines, Made.Packs.Count);
        Assert.InRange(clean, Made.Routines / 2, Made.Routines * 3 / 4);
        Assert.True(facts > 100 * Made.Routines, $"only {facts} facts");
    }

    /// <summary>A lie in any kind of paper is found: a checker that finds none would prove nothing.</summary>
    [Theory]
    [InlineData("wall.txt", "  m2    c", "  m2    c1")]
    [InlineData("wall.txt", " falls on the ", " tumbles on the ")]
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
        var (source, papers) = (Made.Ferry.Source, new Dictionary<string, byte[]>(Made.Ferry.Files));
        var text = Encoding.UTF8.GetString(papers[paper]);
        Assert.Contains(truth, text, StringComparison.Ordinal);
        papers[paper] = Encoding.UTF8.GetBytes(text.Replace(truth, lie, StringComparison.Ordinal));
        Assert.NotEmpty(Fact.Faults(Read(source, papers)));
    }

    [Fact]
    public void Of_a_fight_with_marks_things_and_props()
    {
        Assert.True(Made.Inn.Source.Verdict.IsClean);
        Assert.Empty(Fact.Faults(Read(Made.Inn.Source, Made.Inn.Files)));
        string Text(string file) => Encoding.UTF8.GetString(Made.Inn.Files[file]);
        Assert.Contains("On the floor before the first count: the ladle at ", Text("wall.txt").ReplaceLineEndings(" "), StringComparison.Ordinal);
        Assert.Contains("Carries on the rolling pin in the right hand. ", Text("routine.html"), StringComparison.Ordinal);
    }

    [Fact]
    public void Of_the_stored_fight() => Assert.Empty(Fact.Faults(Read(Made.Ferry.Source, Made.Ferry.Files)));

    /// <summary>The lines of the cover and those of the change log are the same ones, in the same order.</summary>
    [Fact]
    public void Who_signs_the_cover_signs_the_log()
    {
        string Text(string file) => Encoding.UTF8.GetString(Made.Ferry.Files[file]);
        var cover = new HtmlParser().ParseDocument(Text("routine.html")).QuerySelectorAll(".signs li span:first-child").Select(s => s.TextContent.Trim().ToLowerInvariant()).ToList();
        Assert.Equal(8, cover.Count);
        Assert.Equal(cover, JObject.Parse(Text("change-log.json"))["signOffs"]!.Select(s => ((string?)s["who"] is { Length: > 0 } who ? who : (string?)s["role"])!.ToLowerInvariant()));
    }

    /// <summary>The same of the workbook, which is no text: that of another routine.</summary>
    [Fact]
    public void A_workbook_of_another_version_is_found()
    {
        var other = Made.Pack(Made.FerryRoutine with { Moves = [.. Made.FerryRoutine.Moves.Select((m, i) => i == 3 ? m with { Start = m.Start + new HalfCounts(1) } : m)] });
        var papers = new Dictionary<string, byte[]>(Made.Ferry.Files) { ["routine.xlsx"] = other.Files["routine.xlsx"] };
        Assert.NotEmpty(Fact.Faults(Read(Made.Ferry.Source, papers)));
    }

    /// <summary>The printed pack says what the papers say of which it is made: plans, parts of the page and every text paper, on numbered pages.</summary>
    [BrowserFact]
    public void And_the_printed_pack_with_them()
    {
        var (facts, packs) = (0, 0);
        var faults = new List<string>();

        foreach (var pack in new[] { Made.Ferry }.Concat(Made.Packs.Where((_, i) => i % Printing == 3 % Printing).Select(InPrint)))
        {
            var read = Read(pack.Source, Printed(pack, p => p));
            facts += read.Count(f => PackReading.All.Contains(f.Paper));
            packs++;
            faults.AddRange(Fact.Faults(read).Take(5).Select(f => $"{pack.Source.Brief.Title}, {pack.Source.Steps.Count} moves, {(pack.Source.Verdict.IsClean ? "clean" : "faulty")}: {f}"));
        }

        output.WriteLine($"{facts} facts in {packs} packs printed");
        Assert.True(faults.Count == 0, string.Join('\n', faults));
        Assert.True(facts > 300, $"only {facts}");
    }

    [BrowserTheory]
    [InlineData("class=\"count\">count 1", "class=\"count\">count 8")]
    [InlineData("dd class=\"technique\">Trip", "dd class=\"technique\">Skip")]
    [InlineData("<td>00:00:0", "<td>00:00:4")]
    public void A_lie_in_the_printed_pack_is_found(string truth, string lie) =>
        Assert.NotEmpty(Fact.Faults(Read(Made.Ferry.Source, Printed(Made.Ferry, p => p.Contains(truth, StringComparison.Ordinal) ? p.Replace(truth, lie, StringComparison.Ordinal) : throw new InvalidOperationException(truth)))));

    /// <summary>Letters for which the machine has no font are blanks in print: whoever has a name of such goes by another.</summary>
    private static PaperPack InPrint(PaperPack pack)
    {
        var (routine, brief) = (pack.Source.Routine, pack.Source.Brief);
        return pack.Cast.All(IsInPrint) ? pack : Made.Pack(routine with
        {
            Brief = brief with
            {
                Hero = brief.Hero with { Name = IsInPrint(brief.Hero.Name) ? brief.Hero.Name : "Olga" },
                Attackers = [.. brief.Attackers.Select((a, i) => IsInPrint(a.Name) ? a : a with { Name = "Igor " + (i + 1) })],
            },
        });
    }

    private static bool IsInPrint(string name) => name.All(c => c < 'ɐ');

    private static Dictionary<string, byte[]> Printed(PaperPack pack, Func<string, string> change)
    {
        var browser = Browser.Find(Environment.GetEnvironmentVariable("PATH")) ?? throw new InvalidOperationException("There is no Chromium to print with, and GENERATOR_ALL_TESTS says that no test may be left out.");
        return new Dictionary<string, byte[]>(pack.Files) { [PackPage.FileName] = browser.Print(change(PackPage.Of(pack.Source))) };
    }

    private static List<Fact> Read(PaperSource source, IReadOnlyDictionary<string, byte[]> papers)
    {
        IReadOnlyList<string> cast = [Page.Clean(source.Brief.Hero.Name), .. source.Brief.Attackers.Select(a => Page.Clean(a.Name))];
        return [.. papers.SelectMany(p => (Path.GetExtension(p.Key), p.Value) switch
        {
            (".txt", var bytes) => TextReading.Of(p.Key, Encoding.UTF8.GetString(bytes), cast),
            (".html", var bytes) => PageReading.Of(p.Key, Encoding.UTF8.GetString(bytes), cast),
            (".csv", var bytes) => TableReading.Of(p.Key, TableReading.Csv(bytes), cast),
            (".xlsx", var bytes) => TableReading.Of(p.Key, SheetReading.Of(bytes, "Moves"), cast),
            (".pdf", var bytes) => PackReading.Of(bytes, cast),
            (".ics", var bytes) => TableReading.Calendar(Encoding.UTF8.GetString(bytes)),
            _ => [],
        })];
    }
}
