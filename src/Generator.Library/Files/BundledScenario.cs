using Generator.Domain;
using Generator.Library.Reading;

namespace Generator.Library.Files;

/// <summary>
/// A scenario that comes with the tool, place and people invented: a brief that everybody can draft. <see cref="All"/> names them, the first where none is asked for.
/// </summary>
/// <param name="Name">The word by which it is asked for: "ferry".</param>
/// <param name="About">What it shows, as the end of a sentence.</param>
public sealed record BundledScenario(string Name, string About)
{
    /// <summary>Every scenario, the plainest first.</summary>
    public static IReadOnlyList<BundledScenario> All { get; } =
    [
        new("ferry", "a fight on the car deck of a night ferry"),
        new("inn", "one that goes through the kitchen of an inn into its yard, with three marks, furniture, hand props and a boss"),
    ];

    /// <summary>The brief as a file, to show or to copy.</summary>
    public SourceFile File { get; } = Open(Name + ".brief.json");

    /// <summary>The brief of the first, read with the words of a library.</summary>
    /// <exception cref="InvalidOperationException">The library lacks a word that the scenario uses; the message holds the problems.</exception>
    public static Brief Brief(Book book) => All[0].BriefBy(book);

    /// <summary>The brief, read with the words of a library.</summary>
    /// <exception cref="InvalidOperationException">The library lacks a word that the scenario uses; the message holds the problems.</exception>
    public Brief BriefBy(Book book)
    {
        var read = BriefReader.Parse(File, book);
        return read.Value ?? throw new InvalidOperationException(read.ToText());
    }

    private static SourceFile Open(string name)
    {
        using var stream = typeof(BundledScenario).Assembly.GetManifestResourceStream("Scenarios/" + name)
            ?? throw new InvalidOperationException($"The scenario {name} is not built in.");
        using var reader = new StreamReader(stream);
        return new SourceFile(name, reader.ReadToEnd());
    }
}
