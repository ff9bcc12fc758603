using Generator.Cli.Changes;
using Generator.Cli.Work;
using Generator.Domain;
using Generator.Domain.Sketches;
using Generator.Library;
using Generator.Rules;
using Generator.Rules.Judging;
using Generator.Solver;
using Generator.Solver.Completing;
using Generator.Solver.Questions;
using Generator.Solver.Reworking;
using Spectre.Console.Testing;

namespace Generator.Cli.Tests.Work;

public class ProgressBoardTests
{
    [Fact]
    public void On_a_screen_one_line_moves_and_nothing_is_written_elsewhere()
    {
        using var screen = new TestConsole().Interactive();
        using var lines = new StringWriter();
        var progress = new Progress(lines, screen);
        var result = progress.Run("Drafting", () =>
        {
            new ProgressBoard(progress).Report(new DraftProgress(TimeSpan.FromSeconds(0.1), 4, 2, "first pass"));
            SpinWait.SpinUntil(() => Shows(screen, "4 points, no fewer than 2"), TimeSpan.FromMinutes(10));
            return new DraftResult { Status = DraftStatus.OutOfTime };
        });
        Assert.Equal(DraftStatus.OutOfTime, result.Status);
        Assert.Contains("Drafting: 4 points, no fewer than 2, after ", screen.Output, StringComparison.Ordinal);
        Assert.Empty(lines.ToString());
    }

    [Fact]
    public void What_the_search_throws_comes_out_of_a_screen_unchanged()
    {
        using var screen = new TestConsole().Interactive();
        Assert.Throws<InvalidOperationException>(() => new Progress(TextWriter.Null, screen).Run<int>("Drafting", () => throw new InvalidOperationException("two counts differ")));
    }

    [Fact]
    public void A_single_point_is_one()
    {
        using var lines = new StringWriter { NewLine = "\n" };
        var progress = new Progress(lines, null);
        var scene = new Scene(QuickBrief.Of(1, 12, null), Rig.Book);
        var routine = new Routine { Brief = scene.Brief, Placements = [], Moves = [] };
        var verdict = new Verdict([], 1, []);
        new ProgressBoard(progress).Report(new DraftProgress(TimeSpan.Zero, 1, 0, "first pass"));
        new ChangeProgress(progress, (_, _) => { }).Report(new Reworked(scene, routine, routine, verdict, new RoutineChange { Moves = [], Opening = 1 }));
        new CompleteProgress(progress, (_, _) => { }).Report(new Completed(new Sketch { Brief = scene.Brief, Placements = [], Moves = [] }, routine, verdict, [], []));
        Assert.True(lines.ToString().Split('\n').Count(l => l.Contains(" 1 point,", StringComparison.Ordinal) || l.StartsWith("1 point,", StringComparison.Ordinal)) == 3, lines.ToString());
    }

    /// <summary>Every command that searches moves its line, news or none.</summary>
    [Theory]
    [InlineData("Drafting", "draft", "--counts", "8", "--attackers", "1", "--rounds", "1")]
    [InlineData("Repairing", "repair", "broken.csv", "--time", "1")]
    [InlineData("Revising", "revise", "clean.csv", "--brief", "brief.json", "--time", "1")]
    [InlineData("Completing", "complete", "notes.txt", "--time", "1")]
    [InlineData("Explaining", "explain", "clean.csv", "1")]
    [InlineData("Looking for alternatives", "alternatives", "brief.json", "--number", "2", "--time", "1")]
    public void Every_search_moves_a_line_on_a_screen(string what, params string[] command)
    {
        using var screen = new TestConsole().Interactive();
        using var rig = new Rig { Screen = screen, Draft = (brief, book, options, progress, stop) => Drafting.Draft(brief, book, options, progress, stop) };
        rig.File("clean.csv", Samples.CleanCsv);
        rig.File("broken.csv", Samples.BrokenCsv);
        rig.File("brief.json", """{ "length": { "counts": 12 }, "attackers": [ { "name": "Bruno" } ] }""");
        rig.File("notes.txt", "Bruno: wide swing > low parry\n");
        var answer = rig.Run([.. command.Select(c => c.Contains('.', StringComparison.Ordinal) ? Path.Combine(rig.Folder, c) : c)]);
        Assert.True(screen.Output.Contains(what + ": ", StringComparison.Ordinal), answer.Err);
        Assert.DoesNotContain("no fewer than", answer.Err, StringComparison.Ordinal);
    }

    /// <summary>The screen's text cannot be read while another thread writes to it: then it is asked again.</summary>
    private static bool Shows(TestConsole screen, string text)
    {
        try
        {
            return screen.Output.Contains(text, StringComparison.Ordinal);
        }
        catch (ArgumentOutOfRangeException)
        {
            return false;
        }
    }
}
