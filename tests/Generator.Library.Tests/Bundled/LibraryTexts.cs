using Generator.Library.Loading;
using Generator.Library.Reading;

namespace Generator.Library.Tests.Bundled;

/// <summary>The texts of the library files, so that a test can change one of them.</summary>
internal static class LibraryTexts
{
    public static IReadOnlyList<SourceFile> All() =>
        [.. LibraryLoader.Files.Select(f => new SourceFile(f, File.ReadAllText(Path.Combine(LibraryLoader.BundledFolder, f))))];

    /// <summary>The files with one put in the place of its namesake, or at the end.</summary>
    public static IReadOnlyList<SourceFile> With(SourceFile changed, string inPlaceOf = "")
    {
        var files = All();
        return inPlaceOf.Length > 0
            ? [.. files.Select(f => string.Equals(f.Name, inPlaceOf, StringComparison.Ordinal) ? changed : f)]
            : [.. files, changed];
    }
}
