using Generator.Domain;
using Generator.Library.Tests.Bundled;
using Generator.Library.Words;

namespace Generator.Library.Tests.Words;

public class WordFinderTests
{
    private static readonly WordFinder Finder = new(BundledLibrary.Book);

    [Theory]
    [InlineData("outside-block-left", "outside-block-left")]
    [InlineData("Outside block LEFT", "outside-block-left")]
    [InlineData("  left   outside-block ", "outside-block-left")]
    [InlineData("forearm block R", "outside-block-right")]
    [InlineData("r hook", "hook-right")]
    [InlineData("hook L", "hook-left")]
    [InlineData("lead hook left", "hook-left")]
    [InlineData("lefthook", "hook-left")]
    [InlineData("HookRight", "hook-right")]
    [InlineData("straight right", "cross-right")]
    [InlineData("headbutt", "head-butt")]
    [InlineData("two on one, left", "two-on-one-left")]
    [InlineData("Bob-and-weave (right)", "duck-under-right")]
    [InlineData("ducks", "duck")]
    [InlineData("duck left", "duck")]
    public void One_technique_is_meant(string text, string id)
    {
        var lookup = Finder.Technique(text);
        Assert.Equal(id, Assert.Single(lookup.Found).Id);
        Assert.Empty(lookup.Suggestions);
    }

    [Theory]
    [InlineData("hook", "hook-left", "hook-right")]
    [InlineData("rear hook", "hook-left", "hook-right")]
    [InlineData("Lead Cross", "cross-right", "cross-left")]
    [InlineData("hip toss", "hip-throw-right", "hip-throw-left")]
    [InlineData("lead-kick", "lead-kick-left", "lead-kick-right")]
    [InlineData("matador pass", "pivot-away-left", "pivot-away-right")]
    public void Without_a_side_both_are_meant(string text, params string[] ids) => Assert.Equal(ids, Finder.Technique(text).Found.Select(t => t.Id));

    [Fact]
    public void A_word_of_two_kinds_is_settled_by_the_finder_asked()
    {
        Assert.Equal(["swing-right", "swing-left"], Finder.Attack("hook").Found.Select(a => a.Id));
        Assert.Equal(["hook-left", "hook-right"], Finder.Technique("hook").Found.Select(t => t.Id));
        Assert.Equal("shove", Assert.Single(Finder.Attack("push").Found).Id);
        Assert.Equal("double-palm", Assert.Single(Finder.Technique("shove").Found).Id);
        Assert.Equal("folds", Assert.Single(Finder.Reaction("Doubles over").Found).Id);
    }

    [Theory]
    [InlineData("outsid block", "outside-block")]
    [InlineData("right elbow acros", "elbow-across-right")]
    [InlineData("left bakc fist", "back-fist-left")]
    [InlineData("hpi throw", "hip-throw")]
    [InlineData("dukc", "duck")]
    public void A_typing_slip_gets_the_word_meant_first(string text, string first)
    {
        var lookup = Finder.Technique(text);
        Assert.Empty(lookup.Found);
        Assert.Equal(first, lookup.Suggestions[0]);
        Assert.Equal(3, lookup.Suggestions.Count);
    }

    [Theory]
    [InlineData("block")]
    [InlineData("Punch")]
    [InlineData("kick")]
    [InlineData("throw")]
    [InlineData("grab")]
    [InlineData("dodge")]
    [InlineData("parry")]
    [InlineData("fall")]
    [InlineData("lock")]
    [InlineData("hit")]
    [InlineData("finish")]
    [InlineData("left kick")]
    public void A_wide_word_is_asked_about_with_three_offers(string text)
    {
        var lookup = Finder.Technique(text);
        Assert.Empty(lookup.Found);
        Assert.True(lookup.IsTooWide);
        Assert.Equal(3, lookup.Suggestions.Count);
        Assert.Equal(3, lookup.Suggestions.Distinct(StringComparer.Ordinal).Count());
    }

    [Theory]
    [InlineData("punch")]
    [InlineData("kick")]
    [InlineData("grab")]
    [InlineData("hit")]
    public void A_wide_word_is_asked_about_among_attacks_too(string text)
    {
        Assert.Empty(Finder.Attack(text).Found);
        Assert.Equal(3, Finder.Attack(text).Suggestions.Count);
    }

    [Theory]
    [InlineData("")]
    [InlineData("   ")]
    [InlineData("--")]
    public void What_is_no_word_finds_and_suggests_nothing(string text)
    {
        Assert.Empty(Finder.Technique(text).Found);
        Assert.Empty(Finder.Technique(text).Suggestions);
    }

    [Theory]
    [InlineData("moonwalk")]
    [InlineData("quxzyjv")]
    [InlineData("outsid block left")]
    [InlineData("swin")]
    public void An_unknown_word_always_gets_three_suggestions(string text)
    {
        Assert.All(new[] { Finder.Technique(text).Suggestions, Finder.Attack(text).Suggestions, Finder.Reaction(text).Suggestions }, near =>
            Assert.Equal(3, near.Distinct(StringComparer.Ordinal).Count()));
        Assert.False(Finder.Technique(text).IsTooWide);
    }

    [Theory]
    [InlineData("left")]
    [InlineData("R")]
    [InlineData("lead")]
    public void A_side_alone_means_nothing(string text) => Assert.False(Finder.Technique(text).IsFound);

    [Fact]
    public void Every_suggestion_is_itself_a_word_that_is_found()
    {
        var seen = 0;
        foreach (var technique in BundledLibrary.Book.Techniques.DistinctBy(t => t.BaseId, StringComparer.Ordinal))
        {
            foreach (var suggestion in Finder.Technique(technique.Name[1..] + "x").Suggestions)
            {
                Assert.True(Finder.Technique(suggestion).IsFound, suggestion);
                seen++;
            }
        }

        Assert.True(seen > 300);
    }

    [Fact]
    public void Every_id_name_and_alias_finds_its_own_record_and_no_other()
    {
        var book = BundledLibrary.Book;
        Assert.All(book.Techniques, t => Finds(Finder.Technique, t.Id, t.BaseId, t.Name, t.Aliases, t.Side, r => (r.Id, r.BaseId)));
        Assert.All(book.Attacks, a => Finds(Finder.Attack, a.Id, a.BaseId, a.Name, a.Aliases, a.Side, r => (r.Id, r.BaseId)));
        Assert.All(book.Reactions, r => Finds(Finder.Reaction, r.Id, r.Id, r.Name, r.Aliases, side: null, x => (x.Id, x.Id)));
    }

    private static void Finds<T>(
        Func<string, Lookup<T>> find, string id, string baseId, string name, IReadOnlyList<string> aliases, Side? side, Func<T, (string Id, string BaseId)> idsOf)
    {
        Assert.Equal(id, idsOf(Assert.Single(find(id).Found)).Id);
        Assert.Equal(id, idsOf(Assert.Single(find(name).Found)).Id);
        Assert.Equal(side is null ? 1 : 2, find(baseId).Found.Count);
        Assert.All(aliases.Append(baseId), word =>
        {
            var found = find(word).Found;
            Assert.NotEmpty(found);
            Assert.All(found, r => Assert.Equal(baseId, idsOf(r).BaseId));
        });
    }
}
