using Generator.Figures.Poses;
using Generator.Library;
using Generator.Library.Loading;
using Generator.Library.Reading;
using Newtonsoft.Json.Linq;
using NJsonSchema;

namespace Generator.Figures.Tests;

public class PoseFileTests
{
    /// <summary>JSON path of a value, what to write in its place, words of the message; all are against the schema too but those that it cannot see.</summary>
    public static TheoryData<string, string, string, bool> Breakages => new()
    {
        { "poses[0].leftArm", "[45, 10, 20]", "There must be 4 numbers", true },
        { "poses[0].leftArm", "[45, 10, 20, -5]", "Maybe the other way is meant", true },
        { "poses[0].whole", "[0, 0]", "There must be 3 numbers", true },
        { "poses[0].lift", "\"high\"", "Maybe write the number alone", true },
        { "poses[0].colour", "\"red\"", "There is no field", true },
        { "poses[1].id", "\"guard-left\"", "This pose is given twice", false },
        { "stances.low", "\"lo\"", "There is no pose", false },
        { "stances.sitting", "\"low\"", "There is no field", false },
        { "shapes[0].of", "\"blow\"", "Maybe", true },
        { "shapes[0].records[0]", "\"jabb\"", "There is no technique", false },
        { "shapes[1].records[0]", "\"jab\"", "named by two shapes", false },
        { "shapes[0].contact.pose", "\"lead-strait\"", "Maybe one of these is meant: lead-straight", false },
        { "shapes[0].contact.aims[0].at", "\"nose\"", "Maybe", true },
        { "shapes[0].contact.aims[0].gap", "600", "Maybe", true },
        { "shapes[0].contact.distance", "140", "Maybe it is in metres or centimetres", true },
        { "shapes[0].reaction", "\"sleeps\"", "There is no reaction", false },
    };

    [Fact]
    public async Task The_file_keeps_to_its_schema() => Assert.Empty((await Schema()).Validate(File.ReadAllText(Library.File)));

    [Theory]
    [MemberData(nameof(Breakages))]
    public async Task What_is_wrong_is_told_with_its_place_and_what_may_be_meant(string path, string value, string says, bool schemaSees)
    {
        var root = JObject.Parse(File.ReadAllText(Library.File));
        var (parent, last) = (path[..path.LastIndexOf('.')], path[(path.LastIndexOf('.') + 1)..]);
        if (last.EndsWith(']'))
        {
            root.SelectToken(path)!.Replace(JToken.Parse(value));
        }
        else
        {
            root.SelectToken(parent)![last] = JToken.Parse(value);
        }

        var read = PoseReader.Load(new SourceFile("poses.json", root.ToString()), Library.Book);
        Assert.False(read.IsGood);
        var problem = read.Problems[0];
        Assert.Contains(says, problem.ToText(), StringComparison.Ordinal);
        Assert.StartsWith("poses.json, line ", problem.ToText(), StringComparison.Ordinal);
        Assert.Contains("\n  Maybe ", problem.ToText(), StringComparison.Ordinal);
        Assert.Equal(schemaSees, (await Schema()).Validate(root).Count > 0);
    }

    [Theory]
    [InlineData("poses")]
    [InlineData("walking")]
    [InlineData("shapes")]
    public void A_part_that_is_missing_is_told(string part)
    {
        var root = JObject.Parse(File.ReadAllText(Library.File));
        root.Remove(part);
        Assert.Contains("Maybe", PoseReader.Load(new SourceFile("poses.json", root.ToString()), Library.Book).ToText(), StringComparison.Ordinal);
    }

    [Fact]
    public void The_words_of_the_schema_are_those_of_the_program()
    {
        var schema = JObject.Parse(File.ReadAllText(SchemaFile));
        var aim = schema["definitions"]!["aims"]!["items"]!["properties"]!;
        Assert.Equal(EnumWords.All<Part>(), aim["part"]!["enum"]!.Select(w => (string)w!));
        Assert.Equal(EnumWords.All<Target>(), aim["at"]!["enum"]!.Select(w => (string)w!));
        Assert.Equal(EnumWords.All<RecordKind>(), schema["definitions"]!["shape"]!["properties"]!["of"]!["enum"]!.Select(w => (string)w!));
    }

    private static string SchemaFile => Path.Combine(LibraryLoader.BundledFolder, "schema", "poses.schema.json");

    private static Task<JsonSchema> Schema() => JsonSchema.FromFileAsync(SchemaFile);
}
