using Generator.Library;
using Generator.Library.Loading;
using Generator.Library.Reading;
using Generator.Library.Tests.Bundled;
using Generator.Library.Words;

namespace Generator.Library.Tests.Words;

public class NotebookTests
{
    private static readonly Notebook Notes = new(
        ["the", "to"],
        new Dictionary<string, string> { ["thrown"] = "throw" },
        [("edge of the hand", ["chop"]), ("takes", ["take"]), ("grabs", ["take"]), ("edge", ["rim"])],
        new Dictionary<string, IReadOnlyList<string>>(),
        new Dictionary<string, IReadOnlyList<string>>());

    [Theory]
    [InlineData("Kicks to the shins", "kick shin")]
    [InlineData("is thrown", "is throw")]
    [InlineData("grabs the lapel", "take lapel")]
    [InlineData("Edge of the hand to the neck", "chop neck")]
    [InlineData("the edge", "rim")]
    [InlineData("the", "")]
    public void Words_that_mean_the_same_are_one_word(string text, string tokens) => Assert.Equal(tokens, string.Join(' ', Notes.Tokens(text)));

    [Theory]
    [InlineData("grabbing the lapel", "grabs the lapel")]
    [InlineData("a kicked shin", "a kick shin")]
    [InlineData("raising the arm", "raises the arm")]
    [InlineData("tripped", "trip")]
    [InlineData("rolling", "roll")]
    [InlineData("the spring", "the spring")]
    [InlineData("indeed", "indeed")]
    public void Forms_of_one_word_are_one_word(string text, string other) => Assert.Equal(BundledLibrary.Book.Notebook.Stems(other), BundledLibrary.Book.Notebook.Stems(text));

    [Theory]
    [InlineData("slips the jab", "jab")]
    [InlineData("ducking under a wild swing", "swing")]
    [InlineData("jumps over the kick", "kick")]
    [InlineData("seizes the punching arm", "cross punch")]
    [InlineData("stop kick to the knee", "")]
    [InlineData("punch over the arm", "")]
    public void What_something_is_done_about_is_not_what_is_done(string text, string met) =>
        Assert.Equal(met.Split(' ', StringSplitOptions.RemoveEmptyEntries).Order(StringComparer.Ordinal), BundledLibrary.Book.Notebook.Met(text).Order(StringComparer.Ordinal));

    [Fact]
    public void The_best_phrase_decides_and_rare_words_count_more()
    {
        var ranking = new Ranking<string>(Notes, [
            new("kick", ["kick"], []), new("low kick", ["low kick"], []), new("high kick", ["high kick"], []), new("sweep", ["low sweep"], ["ankle"])]);
        Assert.Equal("low kick", ranking.Find("low kick", 2)[0].Record);
        Assert.Equal("sweep", ranking.Find("kick at the ankle, a sweep", 1)[0].Record);
        Assert.Equal("kick", ranking.Find("kicks", 1)[0].Record);
        Assert.Equal("sweep", ranking.Find("swep", 1)[0].Record);
        Assert.Empty(ranking.Find("moonwalk", 3));
    }

    [Fact]
    public void A_handicap_settles_ties_and_hides_nothing()
    {
        var ranking = new Ranking<string>(Notes, [new("knockout punch", ["punch"], [], 0.5), new("punch", ["punch"], [])]);
        Assert.Equal(["punch", "knockout punch"], ranking.Find("punch", 2).Select(r => r.Record));
        Assert.Equal("knockout punch", new Ranking<string>(Notes, [new("knockout punch", ["punch"], [], 5)]).Find("punch", 1)[0].Record);
    }

    [Fact]
    public void What_is_said_of_a_record_leads_to_it()
    {
        var book = BundledLibrary.Book;
        var finder = new WordFinder(book);
        var asked = 0;
        foreach (var (id, phrase) in book.Notebook.Techniques.SelectMany(e => e.Value.Select(p => (e.Key, p))))
        {
            var lookup = finder.Technique(phrase);
            Assert.True(lookup.Found.Any(t => t.BaseId == id) || lookup.Suggestions.Any(s => s == id || s.StartsWith(id + "-", StringComparison.Ordinal)), $"{phrase}: {string.Join(", ", lookup.Suggestions)}, not {id}");
            asked++;
        }

        Assert.True(asked > 150);
    }

    [Theory]
    [InlineData("""{ "techniques": { "hip-trow": ["over the hip"] } }""", "The library has no record \"hip-trow\".", "hip-throw")]
    [InlineData("""{ "meanings": [{ "written": ["x"] }] }""", "\"means\" is missing.", "Maybe add")]
    public void A_notebook_that_is_wrong_is_refused(string text, string message, string advice)
    {
        var read = LibraryLoader.Load(LibraryTexts.With(new SourceFile("notebook.json", text), "notebook.json"));
        Assert.Null(read.Value);
        Assert.Contains(message, read.ToText(), StringComparison.Ordinal);
        Assert.Contains(advice, read.ToText(), StringComparison.Ordinal);
    }
}
