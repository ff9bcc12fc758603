using FsCheck;
using FsCheck.Xunit;
using Generator.Paperwork.Text;

namespace Generator.Paperwork.Tests.Text;

public class PageTests
{
    [Theory]
    [InlineData("one two three", 7, "one two|three")]
    [InlineData("abcdefghij", 4, "abcd|efgh|ij")]
    [InlineData("  a \t b\n", 9, "a b")]
    [InlineData("", 9, "")]
    [InlineData("e\u0301e\u0301 e\u0301", 2, "e\u0301e\u0301|e\u0301")]
    public void Wraps(string text, int width, string expected) => Assert.Equal(expected, string.Join('|', Page.Wrap(text, width)));

    [Property]
    public bool Wrapping_loses_nothing_and_keeps_the_width(NonNull<string> text, PositiveInt width)
    {
        var lines = Page.Wrap(text.Get, width.Get);
        var kept = string.Concat(lines).Replace(" ", string.Empty, StringComparison.Ordinal);
        var whole = Page.Clean(text.Get).Replace(" ", string.Empty, StringComparison.Ordinal);
        return string.Equals(kept, whole, StringComparison.Ordinal) && lines.All(l => l.Length > 0 && Page.LengthOf(l) <= width.Get);
    }

    [Fact]
    public void A_cell_that_is_too_long_goes_on_below_in_its_column() =>
        Assert.Equal(["  7   Parry  Head", "      down   drops"], Page.Row(2, ("7", 2), ("Parry down", 5), ("Head drops", 5)));
}
