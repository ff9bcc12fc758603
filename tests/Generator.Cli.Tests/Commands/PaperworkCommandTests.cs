namespace Generator.Cli.Tests.Commands;

public class PaperworkCommandTests
{
    [Fact]
    public void Papers_land_in_a_folder_that_is_made_for_them()
    {
        using var rig = new Rig();
        var folder = Path.Combine(rig.Folder, "papers");
        var answer = rig.Run("paperwork", rig.File("r.csv", Samples.CleanCsv), "--out", folder);
        Assert.Equal((ExitCode.Good, "The papers are in FOLDER/papers.\n"), (answer.Code, answer.Told));
        var listed = answer.Out.Split('\n', StringSplitOptions.RemoveEmptyEntries).Where(l => l[0] != ' ').Select(l => l.Split(' ')[0]);
        Assert.Equal(listed.Order(StringComparer.Ordinal), Directory.GetFiles(folder).Select(Path.GetFileName).Order(StringComparer.Ordinal));
        Assert.All(Directory.GetFiles(folder), f => Assert.NotEqual(0, new FileInfo(f).Length));
    }

    [Fact]
    public void The_same_routine_gives_the_same_bytes_over_older_papers()
    {
        using var rig = new Rig();
        var routine = rig.File("r.csv", Samples.CleanCsv);
        rig.Run("paperwork", routine, "--out", rig.Folder);
        var first = Directory.GetFiles(rig.Folder).ToDictionary(f => f, File.ReadAllBytes, StringComparer.Ordinal);
        rig.Run("paperwork", routine, "--out", rig.Folder);
        Assert.Equal(first.Keys.Order(StringComparer.Ordinal), Directory.GetFiles(rig.Folder).Order(StringComparer.Ordinal));
        Assert.All(first, f => Assert.Equal(f.Value, File.ReadAllBytes(f.Key)));
    }

    [Fact]
    public void A_broken_routine_gets_papers_and_a_warning()
    {
        using var rig = new Rig();
        var answer = rig.Run("paperwork", rig.File("r.csv", Samples.BrokenCsv), "--out", rig.Folder);
        Assert.Equal(ExitCode.Forbidden, answer.Code);
        Assert.EndsWith("Not to be performed like this: the audit found 1 broken, at move 1. The papers say why.\n", answer.Err, StringComparison.Ordinal);
    }

    [Fact]
    public void A_file_in_place_of_the_folder_is_refused()
    {
        using var rig = new Rig();
        var routine = rig.File("r.csv", Samples.CleanCsv);
        var answer = rig.Run("paperwork", routine, "--out", routine);
        Assert.Equal((ExitCode.Input, string.Empty), (answer.Code, answer.Out));
        Assert.Equal("--out FOLDER/r.csv: this is not a folder.\n  Maybe choose another name; the papers need a folder of their own.\n", answer.Err);
        Assert.Equal(Samples.CleanCsv, File.ReadAllText(routine));
    }

    [Fact]
    public void A_first_day_gives_a_calendar()
    {
        using var rig = new Rig();
        var folder = Path.Combine(rig.Folder, "papers");
        var answer = rig.Run("paperwork", rig.File("r.csv", Samples.CleanCsv), "--out", folder, "--from", "2027-03-15");
        Assert.Contains("\nrehearsals.ics ", answer.Out, StringComparison.Ordinal);
        Assert.Contains("DTSTART;VALUE=DATE:20270315\r\n", File.ReadAllText(Path.Combine(folder, "rehearsals.ics")), StringComparison.Ordinal);
        Assert.Contains("Day 1  Mon 15 Mar 2027, week 2027-W11", File.ReadAllText(Path.Combine(folder, "teaching-plan.txt")), StringComparison.Ordinal);
    }

    [Fact]
    public void Papers_of_an_earlier_run_that_this_one_does_not_make_are_named_and_kept()
    {
        using var rig = new Rig { Printer = () => (_, _) => [1] };
        var folder = Path.Combine(rig.Folder, "papers");
        rig.Run("paperwork", rig.File("r.csv", Samples.CleanCsv), "--out", folder, "--from", "2027-03-15");
        File.WriteAllText(Path.Combine(folder, "part-somebody-else.html"), "x");
        File.WriteAllText(Path.Combine(folder, "my-notes.txt"), "x");
        var answer = rig.Run("paperwork", rig.File("r.csv", Samples.CleanCsv), "--out", folder, "--no-pdf");
        Assert.Equal(
            "Left over from an earlier run and not part of these papers: pack.pdf, part-somebody-else.html, rehearsals.ics, wall-a2.pdf, wall-a3.pdf.\n" +
            "  Maybe delete them before anything is handed out.\nThe papers are in FOLDER/papers.\n",
            answer.Told);
        Assert.True(File.Exists(Path.Combine(folder, "rehearsals.ics")));
        Assert.DoesNotContain("Left over", rig.Run("paperwork", rig.File("r.csv", Samples.CleanCsv), "--out", Path.Combine(rig.Folder, "other"), "--no-pdf").Err, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("size: 420mm 297mm; size: 594mm 420mm; size: A4", "--guidance", "uk")]
    [InlineData("size: 17in 11in; size: 22in 17in; size: letter", "--guidance", "us")]
    [InlineData("size: 17in 11in; size: 22in 17in; size: letter", "--page", "Letter")]
    [InlineData("size: 420mm 297mm; size: 594mm 420mm; size: A4", "--page", "a4", "--guidance", "ontario")]
    public void Pack_and_posters_are_printed_on_the_paper_of_the_country_or_the_one_that_is_named(string sizes, params string[] options)
    {
        var printed = new List<string>();
        using var rig = new Rig
        {
            Printer = () => (page, _) =>
            {
                printed.Add(page);
                return [1];
            },
        };
        Assert.Equal(ExitCode.Good, rig.Run(["paperwork", rig.File("r.csv", Samples.CleanCsv), "--out", Path.Combine(rig.Folder, "papers"), .. options]).Code);
        Assert.Equal(sizes.Split("; "), printed.Select(p => p.Split("</style>")[0].Split("@page { size: ")[1].Split(';')[0]).Select(s => "size: " + s));
        Assert.DoesNotContain("size:", File.ReadAllText(Path.Combine(rig.Folder, "papers", "routine.html")).Split("</style>")[0].Replace("box-sizing:", string.Empty, StringComparison.Ordinal).Replace("font-size:", string.Empty, StringComparison.Ordinal), StringComparison.Ordinal);
    }

    [Fact]
    public void Another_routine_clears_the_sign_offs_in_the_folder()
    {
        using var rig = new Rig();
        var log = Path.Combine(rig.Folder, "papers", "change-log.json");
        rig.Run("paperwork", rig.File("r.csv", Samples.CleanCsv), "--out", Path.Combine(rig.Folder, "papers"));
        File.WriteAllText(log, File.ReadAllText(log).Replace("\"name\": \"\"", "\"name\": \"A. Nyone\"", StringComparison.Ordinal));
        rig.Run("paperwork", Path.Combine(rig.Folder, "r.csv"), "--out", Path.Combine(rig.Folder, "papers"));
        Assert.DoesNotContain("\"clearedSignOffs\": [{", File.ReadAllText(log), StringComparison.Ordinal);
        Assert.Contains("A. Nyone", File.ReadAllText(log), StringComparison.Ordinal);
        rig.Run("paperwork", rig.File("r.csv", Samples.BrokenCsv), "--out", Path.Combine(rig.Folder, "papers"));
        var cleared = Newtonsoft.Json.Linq.JObject.Parse(File.ReadAllText(log));
        Assert.All(cleared["signOffs"]!, s => Assert.Equal(string.Empty, (string?)s["name"]));
        Assert.Equal(cleared["signOffs"]!.Count(), cleared["changes"]!.Last!["clearedSignOffs"]!.Count());
    }

    [Fact]
    public void A_change_log_that_cannot_be_read_is_refused_before_anything_is_written()
    {
        using var rig = new Rig();
        var log = rig.File("change-log.json", "{ \"mine\": true }");
        var answer = rig.Run("paperwork", rig.File("r.csv", Samples.CleanCsv), "--out", rig.Folder);
        Assert.Equal((ExitCode.Input, string.Empty), (answer.Code, answer.Out));
        Assert.Matches("^FOLDER/change-log.json: the change log cannot be read: .+\n  Maybe .+\n$", answer.Told);
        Assert.Equal("{ \"mine\": true }", File.ReadAllText(log));
        Assert.False(File.Exists(Path.Combine(rig.Folder, "wall.txt")));
    }

    [Fact]
    public void Without_a_browser_everything_else_is_made_and_it_is_said()
    {
        using var rig = new Rig { Printer = () => null };
        var folder = Path.Combine(rig.Folder, "papers");
        var answer = rig.Run("paperwork", rig.File("r.csv", Samples.CleanCsv), "--out", folder);
        Assert.Equal(ExitCode.Good, answer.Code);
        Assert.Equal(
            "wall-a3.pdf, wall-a2.pdf, pack.pdf are not made: there is no Chromium or Chrome on the search path. All other papers are.\n" +
            "  Maybe install Chromium, or open routine.html and wall.html in a browser and print them; --no-pdf leaves all PDF out.\nThe papers are in FOLDER/papers.\n",
            answer.Told);
        Assert.False(File.Exists(Path.Combine(folder, "pack.pdf")));
        Assert.True(File.Exists(Path.Combine(folder, "routine.html")));
        Assert.DoesNotContain("pack.pdf", answer.Out, StringComparison.Ordinal);
    }

    [Fact]
    public void A_browser_that_fails_leaves_an_older_pack_and_says_so()
    {
        using var rig = new Rig { Printer = () => (_, _) => throw new Paperwork.Printing.PrintException("the printer is on fire") };
        var old = rig.File("pack.pdf", "old");
        var answer = rig.Run("paperwork", rig.File("r.csv", Samples.CleanCsv), "--out", rig.Folder);
        Assert.Equal(ExitCode.Good, answer.Code);
        Assert.Contains("wall-a3.pdf, wall-a2.pdf, pack.pdf are not made: the printer is on fire.", answer.Err, StringComparison.Ordinal);
        Assert.Contains("Left over from an earlier run and not part of these papers: pack.pdf.\n", answer.Err, StringComparison.Ordinal);
        Assert.Equal("old", File.ReadAllText(old));
    }

    [Fact]
    public void No_pdf_asks_for_no_browser()
    {
        using var rig = new Rig { Printer = () => throw new InvalidOperationException("Nothing was to be printed.") };
        Assert.Equal(ExitCode.Good, rig.Run("paperwork", rig.File("r.csv", Samples.CleanCsv), "--out", Path.Combine(rig.Folder, "papers"), "--no-pdf").Code);
    }
}
