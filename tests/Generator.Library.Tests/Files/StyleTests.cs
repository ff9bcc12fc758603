using Generator.Domain;
using Generator.Library.Files;
using Generator.Library.Reading;
using Generator.Library.Tests.Bundled;

namespace Generator.Library.Tests.Files;

/// <summary>A style is a word for settings; what the brief says itself stands.</summary>
public sealed class StyleTests
{
    private static Read<Brief> Read(string words) => BriefReader.Parse(
        new SourceFile("a.json", $$"""{ "length": { "counts": 48 }, "attackers": [ { "name": "Bruno" }, { "name": "Wanda", "manner": "kicker" }, { "name": "Piet" } ]{{words}} }"""), BundledLibrary.Book);

    public static TheoryData<string> All => [.. BundledLibrary.Book.Styles.Select(s => s.Id)];

    [Fact]
    public void There_are_at_least_six() => Assert.True(BundledLibrary.Book.Styles.Count >= 6);

    [Theory]
    [MemberData(nameof(All))]
    public void Each_sets_something_and_comes_back_from_the_file_with_its_word(string id)
    {
        var brief = Read($", \"style\": \"{id}\"").Value!;
        var text = BriefWriter.Text(brief);
        Assert.NotEqual(BriefWriter.Text(Read(string.Empty).Value!), text);
        Assert.Equal(id, brief.Style);
        Assert.Contains($"\"style\": \"{id}\"", text, StringComparison.Ordinal);
        Assert.Equal(text, BriefWriter.Text(BriefReader.Parse(new SourceFile("b.json", text), BundledLibrary.Book).Value!));
        Assert.Equal("kicker", brief.Attackers[1].Manner);
        Assert.Null(brief.Setbacks);
    }

    [Fact]
    public void It_goes_by_its_other_names_and_deals_manners_in_turn()
    {
        var brief = Read(", \"style\": \"Slapstick\"").Value!;
        Assert.Equal((Arc.Even, 20, 6, 16), (brief.Arc, brief.AnsweredPercent, brief.Pace.LongestPause.Value, brief.Pace.Linger.Value));
        Assert.Equal(Pace.Default.Patience, brief.Pace.Patience);
        Assert.Equal(["clumsy", "kicker", "drunk"], brief.Attackers.Select(a => a.Manner));
    }

    [Fact]
    public void What_the_brief_says_itself_stands()
    {
        var brief = Read(", \"style\": \"comic\", \"arc\": \"free\", \"answered\": 0, \"pace\": { \"lingerCounts\": 2 }, \"favour\": [], \"hero\": { \"manner\": \"boxer\" }").Value!;
        Assert.Equal((Arc.Free, 0, 6, 4), (brief.Arc, brief.AnsweredPercent, brief.Pace.LongestPause.Value, brief.Pace.Linger.Value));
        Assert.Empty(brief.Favour);
        Assert.Equal("boxer", brief.Hero.Manner);
        var again = BriefReader.Parse(new SourceFile("b.json", BriefWriter.Text(brief)), BundledLibrary.Book).Value!;
        Assert.Equal((Arc.Free, 0, 6, 4), (again.Arc, again.AnsweredPercent, again.Pace.LongestPause.Value, again.Pace.Linger.Value));
        Assert.Empty(again.Favour);
    }

    [Theory]
    [InlineData("\"favour\": [\"tackle\"]", "walk-in")]
    [InlineData("\"moments\": [ { \"technique\": \"outside-block-left\", \"attack\": \"walk-in\" } ]", "rush")]
    [InlineData("\"avoid\": [\"headlock\"]", "headlock")]
    [InlineData("\"title\": \"Plain\"", "rush walk-in")]
    public void It_avoids_nothing_that_the_brief_wants(string words, string avoided) => Assert.Equal(avoided, string.Join(' ', Read($", \"style\": \"graceful\", {words}").Value!.Avoid));

    [Fact]
    public void An_unknown_one_is_refused_with_the_nearest() =>
        Assert.Equal("a.json, line 1, style: The library has no style called \"brutl\".\n  Maybe brutal is meant.", Read(", \"style\": \"brutl\"").ToText());
}
