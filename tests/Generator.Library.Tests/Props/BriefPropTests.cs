using Generator.Domain;
using Generator.Library.Files;
using Generator.Library.Loading;
using Generator.Library.Reading;

namespace Generator.Library.Tests.Props;

/// <summary>Props of a brief: read, written, told when wrong.</summary>
public sealed class BriefPropTests
{
    private const string Least = "\"length\": { \"counts\": 48 }, \"attackers\": [ { \"name\": \"Bruno\" }, { \"name\": \"Wanda\" } ]";

    private static readonly Book Book = LibraryLoader.LoadBundled().Value!;

    [Fact]
    public void What_is_said_of_a_prop_comes_back_from_every_file()
    {
        var brief = Read("""{ "kind": "club", "with": "Bruno" }, { "name": "old umbrella", "kind": "umbrella", "with": "Hero", "hand": "left" }, { "kind": "broom", "bearing": "3", "distance": 1.5 }, { "kind": "bag", "x": 1.2, "y": 2 }""").Value!;
        Assert.Equal(
            [
                new PropPart("stick", "stick") { With = 0 },
                new PropPart("old umbrella", "umbrella") { With = -1, Hand = PropHand.Left },
                new PropPart("broom", "broom") { Hand = PropHand.Both, X = new(550), Y = new(400) },
                new PropPart("bag", "bag") { X = new(120), Y = new(200) },
            ],
            brief.Props);
        var again = BriefReader.Parse(new SourceFile("x.brief.json", BriefWriter.Text(brief)), Book).Value!;
        Assert.Equal(brief.Props, again.Props);
        var routine = new Routine { Brief = brief, LibraryVersion = "1", Placements = [], Moves = [new Move { Start = new HalfCounts(2), Technique = "catch-breath" }] };
        foreach (var (name, text) in new[] { ("x.csv", RoutineWriter.Csv(routine)), ("x.json", RoutineWriter.Text(routine)) })
        {
            var read = RoutineReader.Parse(new SourceFile(name, text), Book);
            Assert.True(read.IsGood, read.ToText());
            Assert.Equal(brief.Props, read.Value.Brief.Props);
        }
    }

    [Theory]
    [InlineData("{ \"kind\": \"stik\", \"with\": \"Bruno\" }", "props[0].kind", "stick")]
    [InlineData("{ \"kind\": 3, \"with\": \"Bruno\" }", "props[0].kind", "Maybe")]
    [InlineData("{ \"with\": \"Bruno\" }", "props[0].kind", "\"kind\": \"stick\"")]
    [InlineData("{ \"kind\": \"stick\", \"with\": \"Brunno\" }", "Nobody in the brief is called \"Brunno\"", "Bruno")]
    [InlineData("{ \"kind\": \"stick\" }", "props[0].with", "\"with\": \"hero\"")]
    [InlineData("{ \"kind\": \"stick\", \"with\": \"Bruno\", \"hand\": \"both\" }", "A stick is held in one hand", "left, right")]
    [InlineData("{ \"kind\": \"staff\", \"with\": \"Bruno\", \"hand\": \"left\" }", "A staff is held in both hands", "leave \"hand\" out")]
    [InlineData("{ \"kind\": \"stick\", \"with\": \"Bruno\", \"hand\": \"third\" }", "props[0].hand", "left")]
    [InlineData("{ \"kind\": \"stick\", \"bearing\": \"3\", \"distance\": 1, \"hand\": \"left\" }", "in no hand", "\"with\" is missing")]
    [InlineData("{ \"kind\": \"stick\", \"with\": \"Bruno\", \"x\": 1, \"y\": 1 }", "in somebody's hand and lies on the floor", "the one or the other")]
    [InlineData("{ \"kind\": \"stick\", \"x\": 1 }", "props[0].y", "\"y\": 2")]
    [InlineData("{ \"kind\": \"stick\", \"distance\": 1 }", "props[0].bearing", "Maybe")]
    [InlineData("{ \"kind\": \"stick\", \"x\": 1, \"y\": 1, \"bearing\": \"3\", \"distance\": 1 }", "given twice", "bearing and distance")]
    [InlineData("{ \"kind\": \"stick\", \"x\": 9, \"y\": 1 }", "lies off the floor", "swapped")]
    [InlineData("{ \"kind\": \"stick\", \"bearing\": \"3\", \"distance\": 5 }", "lies off the floor", "larger")]
    [InlineData("{ \"kind\": \"stick\", \"x\": 4.1, \"y\": 4 }", "under the hero's feet", "half a metre")]
    [InlineData("{ \"kind\": \"stick\", \"bearing\": \"3\", \"distance\": 150 }", "props[0].distance", "centimetres")]
    [InlineData("{ \"kind\": \"stick\", \"with\": \"Bruno\", \"colour\": \"red\" }", "colour", "Maybe")]
    [InlineData("{ \"kind\": \"stick\", \"with\": \"Bruno\" }, { \"kind\": \"stick\", \"with\": \"Wanda\" }", "Two props are called \"stick\"", "number them")]
    [InlineData("{ \"kind\": \"stick\", \"with\": \"Bruno\" }, { \"kind\": \"staff\", \"with\": \"Bruno\" }", "has \"stick\" in that hand", "left")]
    public void What_is_wrong_of_a_prop_is_told(string props, string where, string maybe)
    {
        var read = Read(props);
        Assert.False(read.IsGood);
        Assert.Contains(where, read.ToText(), StringComparison.Ordinal);
        Assert.Contains(maybe, read.ToText(), StringComparison.Ordinal);
    }

    [Fact]
    public void Nothing_lies_inside_a_crate()
    {
        var read = BriefReader.Parse(new SourceFile("a.json", $"{{ {Least}, \"floor\": {{ \"obstacles\": [ {{ \"name\": \"crate\", \"x\": 1, \"y\": 1, \"width\": 1, \"depth\": 1 }} ] }}, \"props\": [ {{ \"kind\": \"stick\", \"x\": 1.5, \"y\": 1.5 }} ] }}"), Book);
        Assert.Contains("lies inside \"crate\"", read.ToText(), StringComparison.Ordinal);
    }

    [Fact]
    public void There_are_twelve_at_most() =>
        Assert.Contains("there may be 12", Read(string.Join(", ", Enumerable.Range(0, 13).Select(i => $"{{ \"name\": \"stick {i}\", \"kind\": \"stick\", \"x\": 1, \"y\": 1 }}"))).ToText(), StringComparison.Ordinal);

    private static Read<Brief> Read(string props) => BriefReader.Parse(new SourceFile("a.json", $"{{ {Least}, \"props\": [ {props} ] }}"), Book);
}
