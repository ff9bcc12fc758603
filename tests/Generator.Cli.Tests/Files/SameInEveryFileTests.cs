using System.Globalization;
using System.Text;
using DocumentFormat.OpenXml.Packaging;
using DocumentFormat.OpenXml.Spreadsheet;
using Generator.Domain;
using Generator.Library;
using Generator.Library.Files;
using Generator.Library.Reading;
using Generator.Paperwork.HandOffs;
using Generator.Paperwork.Json;
using Generator.Rules;
using Generator.Rules.Judging;
using Generator.Rules.Replaying;
using Generator.Solver;
using Generator.Testing;

namespace Generator.Cli.Tests.Files;

/// <summary>A draft is the same routine, with the same findings and points, as JSON, as CSV, and as a sheet of the workbook read by the Open XML SDK.</summary>
public class SameInEveryFileTests
{
    private const int Wanted = 120;

    private static readonly string[] Names = ["Bruno", "=1+1", "+Wanda", "@Piet", "'=Ama", "O'Dell", "Jürgen \"Jo\"", "Le, Mai", "-", "小林", "'Ned", "A; B"];

    private static readonly Book Book = LibraryLoader.LoadBundled().Value!;

    [Fact]
    public void Many_drafts_are_the_same_in_every_kind_of_file()
    {
        var drafts = ParallelEnumerable.Range(0, 4 * Wanted).AsOrdered().WithDegreeOfParallelism(2).Select(Draft).OfType<Routine>().Take(Wanted).ToList();
        Assert.Equal(Wanted, drafts.Count);
        var wanted = drafts.Select(r => DeepText.Of(r with { LibraryVersion = string.Empty })).ToList();
        var audits = drafts.Select(Audited).ToList();
        for (var i = 0; i < drafts.Count; i++)
        {
            Same(wanted[i], audits[i], new SourceFile("r.routine.json", RoutineWriter.Text(drafts[i])), null);
            Same(wanted[i], audits[i], new SourceFile("r.csv", RoutineWriter.Csv(drafts[i])), drafts[i].Brief);
            Same(wanted[i], audits[i], new SourceFile("sheet", SheetAsCsv(Paperwork.HandOffs.Workbook.Of(Paperwork.PaperHead.Of(drafts[i], new Verdict([], 0, [])), RoutineSheet.Of(drafts[i])))), drafts[i].Brief);
        }

        Covered(drafts);
    }

    /// <summary>Said from outside the program: what a draft writes for a spreadsheet is clean, and so is what is read back with its brief.</summary>
    [Theory]
    [InlineData(3, 5, 44)]
    [InlineData(7, 3, 30)]
    public void A_draft_in_csv_passes_the_audit_that_it_passed(int seed, int attackers, int counts)
    {
        using var rig = new Rig { Draft = (brief, book, options, progress, stop) => Drafting.Draft(brief, book, options, progress, stop) };
        string[] asked = ["--attackers", Text(attackers), "--counts", Text(counts), "--seed", Text(seed), "--rounds", "4"];
        var (csv, json) = (Path.Combine(rig.Folder, "r.csv"), Path.Combine(rig.Folder, "r.routine.json"));
        Assert.Equal(ExitCode.Good, rig.Run(["draft", .. asked, "--out", csv]).Code);
        Assert.Equal(ExitCode.Good, rig.Run(["draft", .. asked, "--out", json]).Code);
        var expected = rig.Run("audit", json, "--json");
        Assert.Equal(ExitCode.Good, expected.Code);
        Assert.Equal(expected, rig.Run("audit", csv, "--brief", json, "--json"));
        var alone = rig.Run("audit", csv, "--json");
        Assert.Equal((ExitCode.Good, expected.Out), (alone.Code, alone.Out));
        Assert.Contains("holds no brief", alone.Err, StringComparison.Ordinal);
    }

    private static string Text(int number) => number.ToString(CultureInfo.InvariantCulture);

    /// <summary>Some draft of a random brief, with an odd note in it; null where two rounds find none.</summary>
    private static Routine? Draft(int seed)
    {
        var chance = new Chance(seed);
        var names = Names.OrderBy(_ => chance.Whole(0, 1000)).Take(chance.Whole(1, 4)).ToList();
        var brief = new Brief
        {
            Title = "Round trip",
            Length = new Length(chance.Whole(10, 26), null, 6),
            Hero = new HeroPart { Name = "Ines", Skill = Skill.Stunt, Height = new Centimetres(chance.Whole(160, 185)), Lead = chance.Any<Side>() },
            Attackers = [.. names.Select(n => new AttackerPart { Name = n, Skill = Skill.Stunt, Entrance = chance.Percent(20) ? new HalfCounts(chance.Whole(0, 12)) : null })],
            Pauses = chance.Percent(20) ? 1 : null,
        };
        var result = Drafting.Draft(brief, Book, new DraftOptions { Seed = seed, Rounds = 1, Time = Desk.Untimed });
        if (result.Routine is not { } routine)
        {
            return null;
        }

        routine = StanceNotes.Written(new Scene(routine.Brief, Book), routine);
        return routine with { Moves = [.. routine.Moves.Select((m, i) => i == 0 ? m with { Note = chance.One(["", "=SUM(A1)", "two\nlines", " kept", "'-"]) } : m)] };
    }

    private static string Audited(Routine routine) => AuditJson.Of(Audit.Of(new Scene(routine.Brief, Book), routine));

    private static void Same(string wanted, string audit, SourceFile file, Brief? brief)
    {
        var read = RoutineReader.Parse(file, Book, brief);
        Assert.Equal(string.Empty, read.ToText());
        Assert.Equal(wanted, DeepText.Of(read.Value! with { LibraryVersion = string.Empty }));
        Assert.Equal(audit, Audited(read.Value!));
    }

    /// <summary>Drafts that never use a column would say nothing of it.</summary>
    private static void Covered(List<Routine> drafts)
    {
        var moves = drafts.SelectMany(r => r.Moves).ToList();
        Assert.All(
            [
                moves.Count(m => m.From is not null),
                moves.Count(m => m.Cue != Cue.None),
                moves.Count(m => m.Linger > HalfCounts.Zero),
                moves.Count(m => m.Stance is not null),
                moves.Count(m => m.Attacker is null),
                moves.Count(m => m.Note.Length > 0),
                drafts.Count(r => r.Placements.Any(p => p.Entrance > HalfCounts.Zero)),
                drafts.Count(r => r.Brief.Attackers.Any(a => a.Name.StartsWith('='))),
            ],
            n => Assert.True(n >= 10, Text(n)));
    }

    /// <summary>What a spreadsheet program would save: the cells as they are shown.</summary>
    private static string SheetAsCsv(byte[] workbook)
    {
        using var document = SpreadsheetDocument.Open(new MemoryStream(workbook), isEditable: false);
        var part = document.WorkbookPart!;
        var shared = part.SharedStringTablePart?.SharedStringTable!.Elements<SharedStringItem>().Select(s => s.InnerText).ToList() ?? [];
        var id = part.Workbook!.Descendants<Sheet>().Single(s => s.Name == "Routine").Id!.Value!;
        var text = new StringBuilder();
        foreach (var row in ((WorksheetPart)part.GetPartById(id)).Worksheet!.Descendants<DocumentFormat.OpenXml.Spreadsheet.Row>())
        {
            CsvText.Append(text, row.Elements<DocumentFormat.OpenXml.Spreadsheet.Cell>().Select(c => CsvText.Harmless(c.DataType?.Value == CellValues.SharedString ? shared[int.Parse(c.InnerText, CultureInfo.InvariantCulture)] : c.InnerText)));
        }

        return text.ToString();
    }
}
