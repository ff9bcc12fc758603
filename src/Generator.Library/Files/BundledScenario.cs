using Generator.Domain;
using Generator.Library.Reading;

namespace Generator.Library.Files;

/// <summary>The scenario that comes with the tool: an invented fight on the car deck of a night ferry, one hero against three.</summary>
public static class BundledScenario
{
    /// <summary>The brief as a file, to show or to copy.</summary>
    public static SourceFile File { get; } = Open("ferry.brief.json");

    /// <summary>The brief, read with the words of a library.</summary>
    /// <exception cref="InvalidOperationException">The library lacks a word that the scenario uses; the message holds the problems.</exception>
    public static Brief Brief(Book book)
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
