using System.Text.RegularExpressions;
using Generator.Cli.Work;

namespace Generator.Cli.Tests.Work;

public class TerminalOutputTests
{
    /// <summary>No line is wider than the terminal, and every word stands whole and in its order.</summary>
    [Theory]
    [InlineData("audit", "r.csv", "--brief", "b.json")]
    [InlineData("library", "show", "hip-throw-left")]
    [InlineData("library", "list")]
    [InlineData("explain", "r.csv", "1")]
    [InlineData("draft", "--help")]
    public void Sheets_fit_eighty_letters_without_breaking_a_word(params string[] args)
    {
        using var rig = new Rig();
        rig.File("r.csv", Samples.BrokenCsv);
        rig.File("b.json", Samples.Brief);
        var plain = rig.Run([.. args.Select(a => a is "r.csv" or "b.json" ? Path.Combine(rig.Folder, a) : a)]).Out;
        var shown = Shown(plain, 80, colour: false);
        Assert.All(shown.Split('\n'), l => Assert.True(l.Length <= 80, l));
        Assert.Equal(Words(plain), Words(shown));
        Assert.Equal(plain, Shown(plain, 100, colour: false));
    }

    [Fact]
    public void A_line_goes_on_under_the_column_in_which_it_was_broken()
    {
        var row = "  4&     " + "one".PadRight(20) + "  " + string.Join(' ', Enumerable.Repeat("word", 16));
        Assert.Equal($"  4&     {"one",-20}  {string.Join(' ', Enumerable.Repeat("word", 10))}\n{new string(' ', 31)}{string.Join(' ', Enumerable.Repeat("word", 6))}\n", Shown(row + "\n", 80, colour: false));
    }

    [Fact]
    public void A_rule_is_cut_and_a_word_without_end_stays_whole()
    {
        var word = new string('x', 90);
        Assert.Equal(new string('=', 80) + "\n" + word + "\n", Shown(new string('=', 100) + "\n" + word + "\n", 80, colour: false));
    }

    [Fact]
    public void Colour_says_no_more_than_the_words()
    {
        const string Text = "  4&  blind-side  unsafe  move 3\n  5  x  broken  y\n  6  z  rough\n  unbroken\n";
        var shown = Shown(Text, 100, colour: true);
        Assert.Equal(3, Regex.Count(shown, "\e\\[0m", RegexOptions.None, TimeSpan.FromMinutes(5)));
        Assert.Equal(Text, Regex.Replace(shown, "\e\\[[0-9;]*m", string.Empty, RegexOptions.None, TimeSpan.FromMinutes(5)));
    }

    [Theory]
    [InlineData(null, "xterm-256color", true)]
    [InlineData("", "xterm", true)]
    [InlineData("1", "xterm", false)]
    [InlineData(null, "dumb", false)]
    [InlineData(null, null, false)]
    public void Colours_are_shown_where_there_are_any_and_nobody_says_no(string? no, string? terminal, bool shown) =>
        Assert.Equal(shown, TerminalOutput.HasColour(name => name == "NO_COLOR" ? no : terminal));

    private static string[] Words(string text) => [.. text.Split([' ', '\n'], StringSplitOptions.RemoveEmptyEntries).Where(w => w.Any(char.IsLetterOrDigit))];

    private static string Shown(string text, int width, bool colour)
    {
        using var inner = new StringWriter { NewLine = "\n" };
        using var output = new TerminalOutput(inner, width, colour);
        output.Write(text);
        output.Flush();
        return inner.ToString();
    }
}
