using Generator.Domain;
using Generator.Library.Loading;
using Generator.Library.Reading;
using Generator.Library.Tests.Bundled;
using Generator.Library.Words;
using Newtonsoft.Json.Linq;

namespace Generator.Library.Tests.Schemas;

public class SchemaTests
{
    public static TheoryData<string> DataFiles => [.. LibraryLoader.Files];

    /// <summary>File, JSON path of a value, what to write in its place.</summary>
    public static TheoryData<string, string, string> Breakages => new()
    {
        { "strikes.json", "techniques[0].counts", "1.3" },
        { "strikes.json", "techniques[0].counts", "\"1\"" },
        { "strikes.json", "techniques[0].weight", "6" },
        { "strikes.json", "techniques[0].kind", "\"rough\"" },
        { "strikes.json", "techniques[0].id", "\"jab-left\"" },
        { "strikes.json", "techniques[0].id", "\"Jab 2\"" },
        { "strikes.json", "techniques[0].stances", "[]" },
        { "strikes.json", "techniques[0].stances[0]", "\"lead-left\"" },
        { "strikes.json", "techniques[0].hands.endLeft", "\"gone\"" },
        { "strikes.json", "techniques[0].hands", "{ \"middle\": \"guard\" }" },
        { "strikes.json", "techniques[0].window", "[0]" },
        { "strikes.json", "techniques[0].window", "\"ahead\"" },
        { "strikes.json", "techniques[0].band.from", "-1" },
        { "strikes.json", "techniques[0].band.stepIn", "4.5" },
        { "strikes.json", "techniques[0].band.limb", "\"tail\"" },
        { "strikes.json", "techniques[0].demands", "[\"teleport\"]" },
        { "strikes.json", "techniques[0].safety", "\"\"" },
        { "strikes.json", "techniques[0].reactions", "\"head-back\"" },
        { "strikes.json", "techniques[0].height", "\"tall\"" },
        { "strikes.json", "family", "\"strikes\"" },
        { "defences.json", "techniques[0].answers[0]", "\"high-round-middle\"" },
        { "setbacks.json", "techniques[0].draws", "\"yes\"" },
        { "attacks.json", "attacks[0].line", "\"high-straight\"" },
        { "attacks.json", "attacks[0].startDistance", "1.4" },
        { "attacks.json", "attacks[0].arrives", "\"teleports\"" },
        { "attacks.json", "attacks[0].band", "{ \"limb\": \"arm\", \"from\": 1 }" },
        { "attacks.json", "attacks[0].miss", "{ \"posture\": \"off-balance\" }" },
        { "reactions.json", "reactions[0].posture", "\"wobbly\"" },
        { "reactions.json", "reactions[0].round", "13" },
        { "reactions.json", "reactions[0].fall", "\"down\"" },
        { "reactions.json", "reactions[0].openSeconds", "-0.1" },
        { "stances.json", "stances[0].heightShare", "95" },
        { "stances.json", "stances[0].changes[0].trained", "0" },
        { "stances.json", "stances[0].lead", "\"none\"" },
        { "holds.json", "held[0].posture", "\"kneeling\"" },
        { "holds.json", "grips[0].line", "\"grab-wrist\"" },
        { "holds.json", "hand", "{ \"strain\": [\"tail\"] }" },
        { "finishes.json", "techniques[23].supportLoad", "{ \"lift\": [\"arms\"] }" },
        { "manners.json", "manners[0].attacks[0]", "\"bite\"" },
        { "manners.json", "manners[0].families[0]", "\"finish\"" },
        { "manners.json", "manners[0].answered", "0.6" },
        { "manners.json", "manners[3].combinations", "1.1" },
        { "styles.json", "styles[0].arc", "\"falling\"" },
        { "styles.json", "styles[0].answered", "0.6" },
        { "styles.json", "styles[0].pace.lingerCounts", "61" },
        { "styles.json", "styles[0].pace", "{ \"linger\": 3 }" },
        { "styles.json", "styles[0].attackers", "\"drunk\"" },
        { "combinations.json", "combinations[0].gap", "0.75" },
        { "combinations.json", "combinations[0].gap", "1.5" },
        { "combinations.json", "combinations[0].attacks", "[{ \"attack\": \"shove\" }]" },
        { "combinations.json", "combinations[0].attacks[0].side", "\"front\"" },
        { "combinations.json", "combinations[0].attacks[0]", "\"jab\"" },
        { "settle.json", "turnByGap[0]", "13" },
        { "settle.json", "reactionSeconds", "\"short\"" },
        { "settle.json", "version", "\"new\"" },
        { "settle.json", "wardrobe.heels", "[\"dance\"]" },
    };

    [Theory]
    [MemberData(nameof(DataFiles))]
    public async Task Every_file_names_its_schema_and_keeps_to_it(string file)
    {
        var text = File.ReadAllText(Path.Combine(LibraryLoader.BundledFolder, file));
        var first = JObject.Parse(text).Properties().First();
        Assert.Equal("$schema", first.Name);
        Assert.Equal("schema/" + SchemaFiles.NameFor(file), (string?)first.Value);
        var schema = await SchemaFiles.Read(SchemaFiles.NameFor(file));
        Assert.Empty(schema.Validate(text));
    }

    [Theory]
    [MemberData(nameof(Breakages))]
    public async Task What_the_schema_refuses_the_loader_refuses_too(string file, string path, string value)
    {
        var root = JObject.Parse(File.ReadAllText(Path.Combine(LibraryLoader.BundledFolder, file)));
        root.SelectToken(path, errorWhenNoMatch: true)!.Replace(JToken.Parse(value));
        await BothRefuse(file, root);
    }

    [Theory]
    [MemberData(nameof(DataFiles))]
    public async Task A_field_too_many_is_refused_by_both(string file)
    {
        var root = JObject.Parse(File.ReadAllText(Path.Combine(LibraryLoader.BundledFolder, file)));
        root["colour"] = "red";
        await BothRefuse(file, root);
    }

    [Theory]
    [InlineData("strikes.json", "techniques", "id", "name", "stances", "band", "counts", "fewestSeconds", "weight", "kind", "load", "safety")]
    [InlineData("attacks.json", "attacks", "id", "name", "limb", "line", "stances", "startDistance", "band", "counts", "fewestSeconds", "arrives", "load", "miss", "safety")]
    [InlineData("reactions.json", "reactions", "id", "name", "posture", "load", "sell")]
    [InlineData("stances.json", "stances", "id", "name", "heightShare")]
    [InlineData("holds.json", "held", "posture", "load")]
    [InlineData("styles.json", "styles", "id", "name", "note")]
    [InlineData("combinations.json", "combinations", "id", "name", "attacks", "gap", "note", "safety")]
    [InlineData("manners.json", "manners", "id", "name", "attacks", "families", "note")]
    [InlineData("holds.json", "grips", "line", "load", "heroLoad")]
    public async Task A_field_too_few_is_refused_by_both(string file, string list, params string[] fields)
    {
        foreach (var field in fields)
        {
            var root = JObject.Parse(File.ReadAllText(Path.Combine(LibraryLoader.BundledFolder, file)));
            Assert.True(((JObject)root[list]![0]!).Remove(field), field);
            await BothRefuse(file, root);
        }
    }

    [Fact]
    public async Task A_file_of_ones_own_has_a_schema_as_well()
    {
        var schema = await SchemaFiles.Read("additions.schema.json");
        var good = JObject.Parse(File.ReadAllText(Path.Combine(LibraryLoader.BundledFolder, "kicks.json")));
        good["reactions"] = new JArray(JObject.Parse("""{ "id": "sways", "name": "Sways", "posture": "same", "load": {}, "sell": "Rocks on both feet." }"""));
        Assert.Empty(schema.Validate(good));
        good["reactions"]![0]!["posture"] = "wobbly";
        Assert.NotEmpty(schema.Validate(good));
        good["reactions"]![0]!["posture"] = "same";
        good["techniques"]![3]!["weight"] = 0;
        Assert.NotEmpty(schema.Validate(good));
    }

    [Fact]
    public void The_words_of_the_schemas_are_those_of_the_program()
    {
        var words = (JObject)JObject.Parse(File.ReadAllText(Path.Combine(SchemaFiles.Folder, "words.schema.json")))["definitions"]!;
        AssertWords<Side>("side");
        AssertWords<Stance>("stance");
        AssertWords<Stance>("endStance", "same");
        AssertWords<HandNeed>("handNeed");
        Equal("handEnd", ["same", .. EnumWords.All<HandEnd>().Where(w => w is not "unchanged")]);
        AssertWords<Bound>("bound");
        AssertWords<Bound>("endBound", "same");
        AssertWords<Carry>("carry");
        AssertWords<Limb>("limb");
        AssertWords<Posture>("posture");
        AssertWords<Family>("family");
        AssertWords<Skill>("skill");
        AssertWords<ContactKind>("kind");
        AssertWords<Knap>("knap");
        AssertWords<Sells>("sells");
        AssertWords<Height>("height");
        AssertWords<FallClass>("fall");
        AssertWords<SurfaceNeed>("surface");
        Equal("demand", Demand.All);
        Assert.Equal(BodyPartWords.All, words["parts"]!["items"]!["enum"]!.Select(w => (string)w!));
        Assert.Equal(EnumWords.All<LoadAct>(), ((JObject)words["load"]!["properties"]!).Properties().Select(p => p.Name));
        Equal("lines", LineWords.All);
        Equal("line", Enumerable.Range(0, AttackLine.Count).Select(i => LineWords.Of(AttackLine.FromIndex(i))));

        void AssertWords<T>(string definition, params string[] before)
            where T : struct, Enum => Equal(definition, [.. before, .. EnumWords.All<T>()]);

        void Equal(string definition, IEnumerable<string> expected) =>
            Assert.Equal(expected, words[definition]!["enum"]!.Select(w => (string)w!));
    }

    private static async Task BothRefuse(string file, JObject root)
    {
        var schema = await SchemaFiles.Read(SchemaFiles.NameFor(file));
        Assert.NotEmpty(schema.Validate(root));
        Assert.False(LibraryLoader.Load(LibraryTexts.With(new SourceFile(file, root.ToString()), file)).IsGood);
    }
}
