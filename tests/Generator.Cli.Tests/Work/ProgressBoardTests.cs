using Generator.Cli.Work;
using Generator.Solver;
using Spectre.Console.Testing;

namespace Generator.Cli.Tests.Work;

public class ProgressBoardTests
{
    [Fact]
    public void On_a_screen_one_line_moves_and_nothing_is_written_elsewhere()
    {
        using var screen = new TestConsole().Interactive();
        using var lines = new StringWriter();
        var result = new ProgressBoard(lines, screen).Run(progress =>
        {
            progress.Report(new DraftProgress(TimeSpan.FromSeconds(0.1), 4, 2, "first pass"));
            SpinWait.SpinUntil(() => Shows(screen, "4 points, no fewer than 2"), TimeSpan.FromSeconds(30));
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
        Assert.Throws<InvalidOperationException>(() => new ProgressBoard(TextWriter.Null, screen).Run(_ => throw new InvalidOperationException("two counts differ")));
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
