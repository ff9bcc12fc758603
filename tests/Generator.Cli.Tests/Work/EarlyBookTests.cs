using Generator.Cli.Work;

namespace Generator.Cli.Tests.Work;

/// <summary>What nobody asks for is not read: help and pages of rules need no library, and files of the user's own make another one.</summary>
public sealed class EarlyBookTests
{
    [Theory]
    [InlineData(true, "draft")]
    [InlineData(true, "audit", "a.routine.json", "--json")]
    [InlineData(false)]
    [InlineData(false, "--help")]
    [InlineData(false, "draft", "--help")]
    [InlineData(false, "audit", "-h")]
    [InlineData(false, "audit", "--explain", "dead-air")]
    [InlineData(false, "library", "list")]
    [InlineData(false, "draft", "--library", "mine.json")]
    [InlineData(false, "draft", "--library=mine.json")]
    public void The_library_is_read_early_only_where_it_is_needed_as_it_is(bool wanted, params string[] args) => Assert.Equal(wanted, EarlyBook.IsWanted(args));
}
