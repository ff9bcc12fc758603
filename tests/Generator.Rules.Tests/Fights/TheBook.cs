using Generator.Library;
using Generator.Library.Loading;

namespace Generator.Rules.Tests.Fights;

/// <summary>The library that comes with the program, loaded once for all tests.</summary>
internal static class TheBook
{
    private static readonly Lazy<Book> Loaded = new(() =>
    {
        var read = LibraryLoader.LoadBundled();
        return read.IsGood ? read.Value : throw new InvalidOperationException(read.ToText());
    });

    public static Book Book => Loaded.Value;
}
