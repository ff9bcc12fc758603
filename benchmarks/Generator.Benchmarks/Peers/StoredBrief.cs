using Generator.Benchmarks.Measuring;
using Generator.Benchmarks.Stored;
using Generator.Domain;
using Generator.Library;
using Generator.Library.Files;
using Generator.Library.Reading;

namespace Generator.Benchmarks.Peers;

/// <summary>A stored brief, read.</summary>
internal sealed record StoredBrief(string Name, Stored.Family Family, Brief Brief, Book Book)
{
    /// <exception cref="InvalidDataException">The file is no brief of a known family.</exception>
    public static StoredBrief Read(string file)
    {
        var book = LongRoutine.Book();
        var problems = new ProblemList();
        var source = SourceFile.Load(file, problems) ?? throw new InvalidDataException($"{file} cannot be read.");
        var read = BriefReader.Parse(source, book);
        var name = MeasureChild.StoredName(file);
        var family = Stored.Family.All.FirstOrDefault(f => name.StartsWith(f.Name + "-", StringComparison.Ordinal)) ?? throw new InvalidDataException($"{name} belongs to no family.");
        return new StoredBrief(name, family, read.Value ?? throw new InvalidDataException(read.ToText()), book);
    }
}
