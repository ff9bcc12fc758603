using System.Globalization;
using System.Text;
using Generator.Domain;
using Generator.Library;
using Generator.Library.Files;
using Generator.Library.Reading;
using Generator.Paperwork;
using Generator.Paperwork.HandOffs;
using Generator.Paperwork.Json;
using Generator.Rules;
using Generator.Rules.Judging;
using Generator.Rules.Replaying;
using Generator.Solver;
using Generator.Solver.Completing;
using Generator.Solver.Questions;
using Generator.Solver.Repairing;
using Generator.Solver.Revising;
using Generator.Solver.Reworking;
using Generator.Testing;
using Newtonsoft.Json.Linq;

namespace Generator.Cli.Tests.Files;

/// <summary>A draft is the same routine, with the same findings and points, as JSON, as CSV, and as a sheet of the workbook read by MiniExcel.</summary>
public class SameInEveryFileTests
{
    /// <summary>Drafts that are looked at; <c>GENERATOR_FILES=300</c> asks for so many.</summary>
    private static readonly int Wanted = int.TryParse(Environment.GetEnvironmentVariable("GENERATOR_FILES"), NumberStyles.None, CultureInfo.InvariantCulture, out var more) ? more : 40;

    private static readonly string[] Names = ["Bruno", "=1+1", "+Wanda", "@Piet", "'=Ama", "O'Dell", "Jürgen \"Jo\"", "Le, Mai", "-", "小林", "'Ned", "A; B"];

    private static readonly Book Book = Rig.Book;

    [Fact]
    public void Many_drafts_are_the_same_in_every_kind_of_file()
    {
        var drafts = ParallelEnumerable.Range(0, 4 * Wanted).AsOrdered().WithDegreeOfParallelism(2).Select(Draft).OfType<Routine>().Take(Wanted).ToList();
        Assert.Equal(Wanted, drafts.Count);
        drafts.ForEach(Same);
        Covered(drafts);
    }

    /// <summary>Whatever else writes routines: what was filled in, mended, changed for another brief, and rows put together anyhow, most of which break rules.</summary>
    [Fact]
    public void So_is_what_was_completed_repaired_revised_or_broken_by_hand()
    {
        var made = new Dictionary<string, List<Routine>>(StringComparer.Ordinal);
        void Add(string kind, Routine? routine)
        {
            if (routine is not null)
            {
                made.TryAdd(kind, []);
                made[kind].Add(routine);
            }
        }

        foreach (var (routine, seed) in Enumerable.Range(1000, 40).Select(s => (Draft(s), s)).Where(d => d.Item1 is not null).Take(3))
        {
            // A pause of the hero alone has nobody to whom another technique could be done.
            var at = routine!.Moves.ToList().FindIndex(1, m => m.Attacker is not null);
            var broken = routine with { Moves = [.. routine.Moves.Select((m, i) => i == at ? m with { Start = m.Start - new HalfCounts(1), Technique = Book.Techniques[seed % Book.Techniques.Count].Id } : m)] };
            Add("broken", broken);
            Add("completed", First<Completed>((told, stop) => Complete.Of(Erased.Of(routine, new Chance(seed), Erasing.Mixed, 40), Book, new CompleteOptions { Time = Desk.Untimed }, told, stop))?.Routine);
            Add("repaired", First<Reworked>((told, stop) => Repair.Of(broken, Book, new RepairOptions { Time = Desk.Untimed }, told, stop).Repaired)?.Routine);
            var shorter = routine.Brief with { Length = new Length(null, routine.Moves.Count - 1, 0) };
            Add("revised", First<Reworked>((told, stop) => Revise.Of(routine, shorter, Book, new ReviseOptions { Time = Desk.Untimed }, told, stop).Revised)?.Routine);
        }

        // A cell of a workbook knows one kind of line end.
        made["by hand"] = [.. Enumerable.Range(1, 60).Select(s => RandomRoutine.Of(s, Book)).Where(r => r.Moves.Count > 0).Select(r => r with { Moves = [.. r.Moves.Select(m => m with { Note = m.Note.ReplaceLineEndings("\n") })] })];
        foreach (var routine in made.Values.SelectMany(r => r))
        {
            Same(routine);
        }

        var clean = made["by hand"].Concat(made["broken"]).Count(r => Audit.Of(new Scene(r.Brief, Book), r).IsClean);
        var told = string.Join(", ", made.Select(m => $"{m.Key} {m.Value.Count}")) + $"; {clean} clean";
        Assert.True(made.Count == 5 && made.Values.All(r => r.Count >= 3) && made["by hand"].Count > 40 && clean < 20, told);
    }

    /// <summary>Said from outside the program: what a draft writes for a spreadsheet is judged, with nothing beside it, as the same draft in JSON is.</summary>
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
        Assert.Equal(expected, rig.Run("audit", csv, "--json"));
        Assert.Equal(expected, rig.Run("audit", csv, "--brief", json, "--json"));
        Assert.NotNull(JObject.Parse(File.ReadAllText(json))["brief"]!["acts"]);
    }

    private static string Text(int number) => number.ToString(CultureInfo.InvariantCulture);

    /// <summary>Some draft of a random brief, with an odd note in it, and now and then an attack from elsewhere, which drafts seldom have; null where two rounds find none.</summary>
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
        return routine with { Moves = [.. routine.Moves.Select((m, i) => i == 0 ? m with { Note = chance.One(["", "=SUM(A1)", "two\nlines", " kept", "'-"]) } : m.Attack is not null && chance.Percent(5) ? m with { From = new Bearing(chance.Whole(0, 23)) } : m)] };
    }

    private static string Audited(Routine routine) => AuditJson.Of(Audit.Of(new Scene(routine.Brief, Book), routine), []);

    /// <summary>Read back from each kind of file it is the same in every field, and has the same findings and points.</summary>
    private static void Same(Routine routine)
    {
        var (wanted, audit) = (DeepText.Of(routine), Audited(routine));
        var head = PaperHead.Of(routine, new Verdict([], 0, []));
        var forbidden = head with { Warning = PaperHead.Forbidden };
        foreach (var file in new[]
        {
            new SourceFile("r.routine.json", RoutineWriter.Text(routine)),
            new SourceFile("r.csv", RoutineWriter.Csv(routine)),
            new SourceFile("sheet", SheetAsCsv(Workbook.Of(head, RoutineSheet.Of(routine, head)))),
            new SourceFile("sheet that must not be performed", SheetAsCsv(Workbook.Of(forbidden, RoutineSheet.Of(routine, forbidden)))),
        })
        {
            var read = RoutineReader.Parse(file, Book);
            Assert.Equal(string.Empty, read.ToText());
            Assert.Equal(wanted, DeepText.Of(read.Value!));
            Assert.Equal(audit, Audited(read.Value!));
        }
    }

    /// <summary>The first answer of a search.</summary>
    private static T? First<T>(Func<Action<T>, CancellationToken, T?> search)
    {
        using var stop = new CancellationTokenSource();
        return search(_ => stop.Cancel(), stop.Token);
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
            n => Assert.True(n >= 5, Text(n)));
    }

    /// <summary>What a spreadsheet program would save: the cells as they are shown.</summary>
    private static string SheetAsCsv(byte[] workbook)
    {
        var text = new StringBuilder();
        foreach (var row in SheetReading.Of(workbook, "Routine"))
        {
            CsvText.Append(text, row.Select(CsvText.Harmless));
        }

        return text.ToString();
    }
}
