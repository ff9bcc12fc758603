using Generator.Library.Tests.Bundled;
using Generator.Library.Words;

namespace Generator.Library.Tests.Words;

/// <summary>What printed forms say beside the move itself: stances, with which foot one steps, who it is, and that a move is performed.</summary>
public class PrintedWordsTests
{
    private static readonly WordFinder Finder = new(BundledLibrary.Book);

    [Theory]
    [InlineData("counters with a reverse punch to the solar plexus", "body-punch")]
    [InlineData("steps on partner's instep", "foot-stomp")]
    [InlineData("sweeps the right foot out", "foot-sweep")]
    public void A_technique_is_found_among_them(string text, string id) => Assert.StartsWith(id, Finder.Technique(text).Suggestions[0], StringComparison.Ordinal);

    [Fact]
    public void A_front_stance_is_no_front_kick()
    {
        const string written = "move the right foot forward into a front stance with a right hand punch straight forward";
        Assert.DoesNotContain("kick", Finder.Attack(written).Suggestions[0], StringComparison.Ordinal);
    }

    [Fact]
    public void Whoever_is_called_uke_blocks_nothing() =>
        Assert.All(new MeaningFinder(BundledLibrary.Book).Attack("uke seizes both sleeves").Ids, id => Assert.DoesNotContain("headlock", id, StringComparison.Ordinal));

    [Fact]
    public void A_stance_that_was_not_read_is_told() =>
        Assert.Contains(new MeaningFinder(BundledLibrary.Book).Technique("knocks the fist upward in a long front stance").Unread, u => u.Contains("stance", StringComparison.Ordinal));
}
