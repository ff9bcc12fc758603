using Generator.Domain;

namespace Generator.Library.Tests.Bundled;

public class BundledLibraryTests
{
    private static Book Book => BundledLibrary.Book;

    [Fact]
    public void Loads_without_a_problem()
    {
        var read = LibraryLoader.LoadBundled();
        Assert.True(read.IsGood, read.ToText());
    }

    [Fact]
    public void Holds_at_least_the_records_of_the_first_edition()
    {
        Assert.True(Book.Techniques.Select(t => t.BaseId).Distinct(StringComparer.Ordinal).Count() >= 205);
        Assert.True(Book.Attacks.Select(a => a.BaseId).Distinct(StringComparer.Ordinal).Count() >= 33);
        Assert.True(Book.Reactions.Count >= 48);
        Assert.Equal(10, Book.Stances.Stances.Count);
    }
}
