using Generator.Testing;

namespace Generator.Cli.Tests.Commands;

public class HelpTests
{
    [Theory]
    [InlineData("help", "--help")]
    [InlineData("help-draft", "draft", "--help")]
    [InlineData("help-complete", "complete", "--help")]
    [InlineData("help-audit", "audit", "--help")]
    [InlineData("help-shape", "shape", "--help")]
    [InlineData("help-repair", "repair", "--help")]
    [InlineData("help-alternatives", "alternatives", "--help")]
    [InlineData("help-revise", "revise", "--help")]
    [InlineData("help-explain", "explain", "--help")]
    [InlineData("help-paperwork", "paperwork", "--help")]
    [InlineData("help-rehearse", "rehearse", "--help")]
    [InlineData("help-guide", "guide", "--help")]
    [InlineData("help-library", "library", "-h")]
    [InlineData("help-library-list", "library", "list", "--help")]
    [InlineData("help-library-show", "library", "show", "--help")]
    [InlineData("help-library-pictures", "library", "pictures", "--help")]
    [InlineData("help-library-search", "library", "search", "--help")]
    [InlineData("help-library-add", "library", "add", "--help")]
    [InlineData("help-library-check", "library", "check", "--help")]
    public void Every_command_has_a_page_with_an_example(string golden, params string[] args)
    {
        using var rig = new Rig();
        var answer = rig.Run(args);
        Assert.Equal(ExitCode.Good, answer.Code);
        Assert.Empty(answer.Err);
        Assert.Contains("Example:\n  generator ", answer.Out, StringComparison.Ordinal);
        Golden.Matches(golden, answer.Out);
    }

    [Fact]
    public void Without_a_command_the_page_is_shown()
    {
        using var rig = new Rig();
        Assert.Equal(rig.Run("--help"), rig.Run());
    }

    [Fact]
    public void Help_wins_over_what_else_is_wrong_and_reads_no_library()
    {
        using var rig = new Rig();
        Assert.Equal(rig.Run("draft", "--help"), rig.Run("draft", "--library", "nowhere.json", "--seed", "x", "--help"));
    }
}
