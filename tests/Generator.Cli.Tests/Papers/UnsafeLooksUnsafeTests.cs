using System.IO.Compression;
using System.Text;
using System.Xml.Linq;
using AngleSharp.Dom;
using AngleSharp.Html.Parser;
using Generator.Domain;
using Generator.Library;
using Generator.Library.Files;
using Generator.Library.Reading;
using Generator.Paperwork;
using Generator.Rules;
using Generator.Rules.Judging;
using Generator.Testing;
using Xunit.Abstractions;

namespace Generator.Cli.Tests.Papers;

/// <summary>A routine with unsafe or broken findings says so on the first screen and on every paper, in words and by form; one without says nothing of the kind.</summary>
public class UnsafeLooksUnsafeTests(ITestOutputHelper output)
{
    /// <summary>Drafts that are broken: every kind of paper is made of each.</summary>
    private const int Spoilt = 8;

    [Fact]
    public void On_every_paper_of_clean_drafts_that_were_broken_at_random()
    {
        var chance = new Chance(5);
        var counted = new SortedDictionary<string, int>(StringComparer.Ordinal);
        foreach (var draft in Made.Drafts.Take(Spoilt))
        {
            var pack = Made.Pack(Broken(draft, chance));
            Assert.False(pack.Source.Verdict.IsClean);
            foreach (var (name, bytes) in pack.Files)
            {
                Assert.True(Warns(name, bytes, pack.Source.Head.Warning!), $"{draft.Brief.Title}, {name}: {pack.Source.Head.Warning}");
                var kind = name.StartsWith("part-", StringComparison.Ordinal) ? "part" : name;
                counted[kind] = counted.GetValueOrDefault(kind) + 1;
            }
        }

        output.WriteLine(string.Join(", ", counted.Select(c => $"{c.Key} {c.Value}")));
        Assert.InRange(counted.Count, 20, 100);
        Assert.All(counted.Where(c => c.Key != "part"), c => Assert.Equal(Spoilt, c.Value));
    }

    [Fact]
    public void And_on_no_paper_of_a_clean_one()
    {
        foreach (var pack in Made.Packs.Take(3))
        {
            Assert.All(pack.Files, f => Assert.DoesNotContain(PaperHead.Forbidden, Words(f.Key, f.Value), StringComparison.OrdinalIgnoreCase));
        }
    }

    /// <summary>The first lines in a terminal, of every command that takes a whole routine; what is slow to explain, as every other technique is tried in a move, is explained of the last move of the shortest.</summary>
    [Fact]
    public void On_the_first_screen_of_a_terminal()
    {
        using var rig = new Rig();
        var chance = new Chance(7);
        foreach (var (draft, i) in Made.Drafts.Take(6).OrderBy(d => d.Moves.Count).Select((d, i) => (d, i)))
        {
            var broken = Broken(draft, chance);
            var file = rig.File("broken.routine.json", RoutineWriter.Text(broken));
            var warning = PaperHead.Of(broken, Audit.Of(new Scene(broken.Brief, Made.Book), broken)).Warning!;
            string[] screens = [rig.Run("audit", file).Out, .. i < 1 ? [rig.Run("explain", file, broken.Moves.Count.ToString(System.Globalization.CultureInfo.InvariantCulture)).Out] : Array.Empty<string>()];
            foreach (var screen in screens)
            {
                var first = screen.Split('\n').Take(12).ToList();
                Assert.Contains(warning, TextReading.Flat(string.Join(' ', first)).Replace(" !! ", " ", StringComparison.Ordinal), StringComparison.OrdinalIgnoreCase);
                Assert.Equal(2, first.Count(l => l == new string('!', 80)));
            }

            Assert.Contains(warning, TextReading.Flat(rig.Run("paperwork", file, "--out", Path.Combine(rig.Folder, "papers"), "--no-pdf").Err), StringComparison.Ordinal);
        }
    }

    /// <summary>A clean draft in which something is no longer as it was: a move sooner, another technique, attack or attacker. It is a whole routine still: rows that say what cannot be are read as a sketch.</summary>
    private static Routine Broken(Routine draft, Chance chance)
    {
        while (true)
        {
            var moves = draft.Moves.ToList();
            var at = chance.Whole(0, moves.Count - 1);
            moves[at] = chance.Whole(0, 3) switch
            {
                0 => moves[at] with { Start = new HalfCounts(Math.Max(0, moves[at].Start.Value - chance.Whole(1, 6))) },
                1 => moves[at] with { Technique = chance.One([.. Made.Book.Techniques.Where(t => t.Travel is null)]).Id },
                2 => moves[at] with { Attack = chance.One(Made.Book.Attacks).Id },
                _ => moves[at] with { Attacker = chance.Whole(0, draft.Brief.Attackers.Count - 1) },
            };
            var broken = draft with { Moves = [.. moves.OrderBy(m => m.Start)] };
            if (!Audit.Of(new Scene(broken.Brief, Made.Book), broken).IsClean && RoutineReader.Parse(new SourceFile("broken.routine.json", RoutineWriter.Text(broken)), Made.Book).IsGood)
            {
                return broken;
            }
        }
    }

    /// <summary>In words and by form, wherever somebody may begin to read.</summary>
    private static bool Warns(string name, byte[] bytes, string warning)
    {
        var words = Words(name, bytes);
        bool Says(string text) => text.Contains(warning, StringComparison.OrdinalIgnoreCase);
        switch (Path.GetExtension(name))
        {
            case ".txt":
                // Framed, before anything else than title and version.
                return Says(words.Replace(" !! ", " ", StringComparison.Ordinal)) && words.IndexOf("!!!!", StringComparison.Ordinal) is > 0 and < 700;
            case ".html":
                var page = new HtmlParser().ParseDocument(Encoding.UTF8.GetString(bytes));
                IEnumerable<string> places = name == "routine.html" ? ["#cover", "#playback .stage", "#tracks", .. page.QuerySelectorAll("section.phrase .pictures").Select(e => "#" + e.Closest("section")!.Id + " .pictures")]
                    : name.StartsWith("part-", StringComparison.Ordinal) ? ["#cover", "main section"] : ["#cover"];
                return places.All(p => page.QuerySelector(p)!.QuerySelectorAll(".forbidden, .finding.unsafe").Any(b => Says(b.TextContent) && b.TextContent.Contains(PaperHead.Sign, StringComparison.Ordinal)))
                    && page.QuerySelector("style")!.TextContent.Contains("@top-center", StringComparison.Ordinal);
            case ".csv":
                return TableReading.Csv(bytes) is var rows && rows.Count > 1 && rows.Skip(1).All(r => r.Contains(warning) && SaysFirst(r));
            case ".xlsx":
                // Every sheet says it in its first column: the last ones lie off the screen.
                return Says(words) && words.Split("<x:oddHeader>").Length == 4 && new[] { "Moves", "Tracks", "Routine" }.Select(s => SheetReading.Of(bytes, s)).All(s => s.Count > 1 && s.Skip(1).All(SaysFirst));
            case ".ics":
                return words.Split("BEGIN:VEVENT").Skip(1).All(e => Says(e) && e.Contains($"SUMMARY:{PaperHead.Sign} {PaperHead.Forbidden}", StringComparison.Ordinal));
            case ".svg":
                // A long sentence has several lines of text.
                return Says(TextReading.Flat(string.Join(' ', XDocument.Parse(Encoding.UTF8.GetString(bytes)).Descendants().Where(e => e.Name.LocalName == "text").Select(e => e.Value))));
            default:
                return Says(words);
        }
    }

    private static bool SaysFirst(IReadOnlyList<string> row) => row[0] == $"{PaperHead.Sign} {PaperHead.Forbidden}";

    private static string Words(string name, byte[] bytes)
    {
        if (Path.GetExtension(name) != ".xlsx")
        {
            var text = Encoding.UTF8.GetString(bytes);
            return Path.GetExtension(name) == ".ics" ? text.Replace("\r\n ", string.Empty, StringComparison.Ordinal).Replace("\\,", ",", StringComparison.Ordinal) : TextReading.Flat(text);
        }

        using var zip = new ZipArchive(new MemoryStream(bytes));
        return string.Join(' ', zip.Entries.Select(e => new StreamReader(e.Open()).ReadToEnd()));
    }
}
