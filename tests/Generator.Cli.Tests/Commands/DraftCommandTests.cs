using Generator.Domain;
using Generator.Solver;
using Generator.Solver.Questions;
using Newtonsoft.Json.Linq;

namespace Generator.Cli.Tests.Commands;

/// <summary>What the command makes of its options and of each outcome; the search itself is played by the test.</summary>
public class DraftCommandTests
{
    [Fact]
    public void A_routine_is_printed_as_a_sheet_with_exit_code_0()
    {
        using var rig = new Rig { Draft = (brief, book, _, _, _) => Samples.Found(brief, book) };
        var answer = rig.Run("draft");
        Assert.Equal(ExitCode.Good, answer.Code);
        Assert.StartsWith("Night ferry, car deck\n", answer.Out, StringComparison.Ordinal);
        Assert.Contains("For trained performers under a qualified fight coordinator.", answer.Out, StringComparison.Ordinal);
        Assert.Contains("best found, ", answer.Err, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("ferry", "Night ferry, car deck\n")]
    [InlineData("INN", "The Blue Heron, kitchen and yard\n")]
    public void A_scenario_of_the_program_is_asked_for_by_its_name(string name, string title)
    {
        using var rig = new Rig { Draft = (brief, book, _, _, _) => Samples.Found(brief, book) };
        var answer = rig.Run("draft", "--scenario", name);
        Assert.Equal(ExitCode.Good, answer.Code);
        Assert.StartsWith(title, answer.Out, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(Standing.Perfect, "perfect")]
    [InlineData(Standing.ProvenBest, "proven best")]
    [InlineData(Standing.BestFound, "best found")]
    public void Json_has_exactly_the_members_that_are_promised_and_can_be_audited(Standing standing, string words)
    {
        using var rig = new Rig { Draft = (brief, book, _, _, _) => Samples.Found(brief, book, standing) };
        var answer = rig.Run("draft", "--json", "--attackers", "2");
        var root = JObject.Parse(answer.Out);
        Assert.Equal(["routine", "findings", "points", "standing"], root.Properties().Select(p => p.Name));
        Assert.Equal(["brief", "library", "attackers", "moves"], ((JObject)root["routine"]!).Properties().Select(p => p.Name));
        Assert.Equal(words, root["standing"]);
        using var audit = new Rig { Input = answer.Out };
        Assert.Equal(JObject.Parse(audit.Run("audit", "-", "--json").Out)["findings"], root["findings"]);
    }

    [Fact]
    public void No_routine_is_possible_exit_code_3_with_the_clash()
    {
        using var rig = new Rig { Draft = (_, _, _, _, _) => new DraftResult { Status = DraftStatus.Impossible, Clash = ["a hip throw of Bruno", "Bruno takes no falls"] } };
        var answer = rig.Run("draft");
        Assert.Equal((ExitCode.Impossible, string.Empty), (answer.Code, answer.Out));
        Assert.Equal("No routine can satisfy this brief. These clash:\n  - a hip throw of Bruno\n  - Bruno takes no falls\n  Maybe give up one of them.\n", answer.Err);
    }

    [Theory]
    [InlineData(false, "Time ran out before there was a routine.")]
    [InlineData(true, "The search was stopped before there was a routine.")]
    public void No_routine_in_time_is_exit_code_4(bool stopped, string words)
    {
        using var rig = new Rig { Stop = new CancellationToken(stopped), Draft = (_, _, _, _, _) => new DraftResult { Status = DraftStatus.OutOfTime } };
        var answer = rig.Run("draft");
        Assert.Equal((ExitCode.OutOfTime, string.Empty), (answer.Code, answer.Out));
        Assert.StartsWith(words + "\n  Maybe ", answer.Err, StringComparison.Ordinal);
    }

    [Fact]
    public void Stopping_keeps_the_best_and_says_so()
    {
        var seen = CancellationToken.None;
        using var rig = new Rig
        {
            Stop = new CancellationToken(canceled: true),
            Draft = (brief, book, _, _, stop) =>
            {
                seen = stop;
                return Samples.Found(brief, book);
            },
        };
        var answer = rig.Run("draft");
        Assert.True(seen.IsCancellationRequested);
        Assert.Equal(ExitCode.Good, answer.Code);
        Assert.Contains("Stopped; this is the best so far: ", answer.Err, StringComparison.Ordinal);
    }

    [Fact]
    public void Options_reach_the_search()
    {
        var asked = new List<DraftOptions>();
        using var rig = new Rig
        {
            Draft = (brief, book, options, _, _) =>
            {
                asked.Add(options);
                return Samples.Found(brief, book);
            },
        };
        rig.Run("draft");
        rig.Run("draft", "--seed", "7", "--time", "2.5", "--cold");
        rig.Run("draft", "--rounds", "12");
        Assert.Equal([new DraftOptions(), new DraftOptions { Seed = 7, Time = TimeSpan.FromSeconds(2.5), Cold = true }, new DraftOptions { Rounds = 12, Time = Desk.Untimed }], asked);
    }

    [Fact]
    public void A_brief_comes_from_a_file_from_standard_input_or_from_three_options()
    {
        var briefs = new List<Brief>();
        using var rig = new Rig
        {
            Input = Samples.Brief,
            Draft = (brief, book, _, _, _) =>
            {
                briefs.Add(brief);
                return Samples.Found(brief, book);
            },
        };
        rig.Run("draft", rig.File("b.json", Samples.Brief));
        rig.Run("draft", "-");
        rig.Run("draft", "--attackers", "4", "--counts", "32");
        rig.Run("draft", "--moves", "12");
        Assert.Equal(["Two in the yard", "Two in the yard", "One against four", "One against three"], briefs.Select(b => b.Title));
        Assert.Equal([new Length(24, null, 4), new Length(24, null, 4), new Length(32, null, 4), new Length(null, 12, 1)], briefs.Select(b => b.Length));
        Assert.Equal(["Ash", "Birch", "Cedar", "Elm"], briefs[2].Attackers.Select(a => a.Name));
    }

    [Fact]
    public void Better_routines_are_told_line_by_line()
    {
        using var rig = new Rig
        {
            Draft = (brief, book, _, progress, _) =>
            {
                progress.Report(new DraftProgress(TimeSpan.FromSeconds(0.1), null, 0, "first pass"));
                progress.Report(new DraftProgress(TimeSpan.FromSeconds(0.26), 5, 0, "first pass"));
                progress.Report(new DraftProgress(TimeSpan.FromSeconds(0.5), 5, 1, "whole model"));
                progress.Report(new DraftProgress(TimeSpan.FromSeconds(1), 1, 1, "whole model"));
                return Samples.Found(brief, book);
            },
        };
        Assert.Matches("^5 points, no fewer than 0, after [0-9.]+ s\n1 point, no fewer than 1, after [0-9.]+ s\n", rig.Run("draft").Err);
    }

    /// <summary>A search that was ended before its own end, by a stop instead of the clock: whatever it gives says so, and nothing calls it perfect or proven.</summary>
    [Fact]
    public void A_draft_that_was_ended_is_nowhere_called_done()
    {
        using var later = new Rig();
        var (file, papers) = (Path.Combine(later.Folder, "ended.routine.json"), Path.Combine(later.Folder, "papers"));
        var (told, json) = (Ended("--out", file), Ended("--json"));
        Assert.Equal("best found", (string?)JObject.Parse(json.Out)["standing"]);
        Assert.Contains("best found, ", told.Err, StringComparison.Ordinal);
        Assert.Contains("The search was stopped, so another run may give another.", told.Err, StringComparison.Ordinal);
        Assert.Equal(ExitCode.Good, later.Run("paperwork", file, "--out", papers, "--no-pdf").Code);
        var texts = Directory.GetFiles(papers).Where(f => Path.GetExtension(f) is ".txt" or ".html" or ".csv" or ".json" or ".ics").Select(File.ReadAllText).Concat([told.Out, told.Err, json.Out, json.Err, File.ReadAllText(file)]).ToList();
        Assert.True(texts.Count > 12);
        Assert.All(texts, t => Assert.DoesNotMatch("(?i)(?<!would be )\\bperfect\\b|proven best|same brief and seed give it again", t));
    }

    /// <summary>A draft that would never be done, stopped at its first routine.</summary>
    private static Answer Ended(params string[] more)
    {
        using var stop = new CancellationTokenSource();
        using var rig = new Rig { Stop = stop.Token, Keep = (_, _) => stop.Cancel(), Draft = (brief, book, options, progress, ended) => Drafting.Draft(brief, book, options, progress, ended) };
        return rig.Run(["draft", rig.File("b.brief.json", Guarding.Guarded.NeverDone), "--time", "1200", .. more]);
    }

    [Theory]
    [InlineData("r.routine.json", "{\n  \"brief\"")]
    [InlineData("r.CSV", "count,attacker,")]
    public void Out_writes_the_routine_and_still_prints_the_sheet(string name, string start)
    {
        using var rig = new Rig { Draft = (brief, book, _, _, _) => Samples.Found(brief, book) };
        var path = rig.File(name, "old");
        var answer = rig.Run("draft", "--out", path);
        Assert.Equal(ExitCode.Good, answer.Code);
        Assert.StartsWith("Night ferry", answer.Out, StringComparison.Ordinal);
        Assert.Contains($"The routine is in FOLDER/{name}.\n", answer.Err, StringComparison.Ordinal);
        Assert.StartsWith(start, File.ReadAllText(path), StringComparison.Ordinal);
        Assert.Single(Directory.GetFiles(rig.Folder));
    }
}
