using Generator.Library.Loading;
using Generator.Library.Reading;
using Generator.Library.Tests.Bundled;

namespace Generator.Library.Tests.Loading;

/// <summary>Each file in Malformed that belongs to a library is refused with exactly the text beside it.</summary>
public class MalformedLibraryTests
{
    private static readonly string Folder = Path.Combine(AppContext.BaseDirectory, "Malformed");

    public static TheoryData<string> Own => Names("own-");

    public static TheoryData<string> Settings => Names("settle-");

    public static TheoryData<string> Stances => Names("stances-");

    public static TheoryData<string> Holds => Names("holds-");

    [Theory]
    [MemberData(nameof(Own))]
    public void A_file_of_ones_own_is_refused_with_every_problem(string name) => Refused(name, inPlaceOf: string.Empty, name + ".json");

    [Theory]
    [MemberData(nameof(Settings))]
    public void Settings_are_refused_with_every_problem(string name) => Refused(name, "settle.json", "settle.json");

    [Theory]
    [MemberData(nameof(Stances))]
    public void Stances_are_refused_with_every_problem(string name) => Refused(name, "stances.json", "stances.json");

    [Theory]
    [MemberData(nameof(Holds))]
    public void Holds_are_refused_with_every_problem(string name) => Refused(name, "holds.json", "holds.json");

    [Fact]
    public void There_are_many_such_files() => Assert.True(Ids("own-").Count + Ids("settle-").Count + Ids("stances-").Count >= 20);

    private static void Refused(string name, string inPlaceOf, string shownAs)
    {
        var text = File.ReadAllText(Path.Combine(Folder, name + ".json"));
        var read = LibraryLoader.Load(LibraryTexts.With(new SourceFile(shownAs, text), inPlaceOf));
        Assert.False(read.IsGood);
        Assert.All(read.Problems, p => Assert.StartsWith("Maybe ", p.Maybe, StringComparison.Ordinal));
        Assert.Equal(File.ReadAllText(Path.Combine(Folder, name + ".txt")), read.ToText() + "\n");
    }

    private static TheoryData<string> Names(string prefix) => [.. Ids(prefix)];

    private static List<string> Ids(string prefix) =>
        [.. Directory.EnumerateFiles(Folder, prefix + "*.json").Select(f => Path.GetFileNameWithoutExtension(f)).Order(StringComparer.Ordinal)];
}
