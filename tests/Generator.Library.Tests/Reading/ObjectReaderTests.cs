using Generator.Domain;
using Generator.Library.Reading;

namespace Generator.Library.Tests.Reading;

public class ObjectReaderTests
{
    private static readonly Quantity Height = new("a height", 1.40m, 2.10m, "m", "Maybe it is in feet or centimetres; write metres, such as 1.76.");
    private readonly ProblemList problems = new();

    [Fact]
    public void A_problem_names_file_line_field_value_and_what_may_be_meant()
    {
        var root = Open("{\n \"attackers\": [\n  { \"height\": 1.8 },\n  { \"height\": 17.6 } ] }");
        Assert.Equal([1.8m, null], root.Objects("attackers").Select(a => a.Number("height", Height)));
        var problem = Assert.Single(problems.InOrder);
        Assert.Equal("17.6", problem.Value);
        Assert.Equal(
            "x.json, line 4, attackers[1].height: 17.6 is not a height between 1.40 and 2.10 m.\n  Maybe it is in feet or centimetres; write metres, such as 1.76.",
            problem.ToText());
    }

    [Theory]
    [InlineData("1.40", true)]
    [InlineData("2.10", true)]
    [InlineData("1.39", false)]
    [InlineData("2.11", false)]
    [InlineData("\"1.76\"", false)]
    [InlineData("true", false)]
    [InlineData("99999999999999999999999999999999", false)]
    public void A_number_lies_in_its_range(string value, bool good)
    {
        Assert.Equal(good, Open($"{{ \"height\": {value} }}").Number("height", Height) is not null);
        Assert.Equal(good ? 0 : 1, problems.Count);
    }

    [Theory]
    [InlineData("3", 3)]
    [InlineData("3.0", 3)]
    [InlineData("3.5", null)]
    [InlineData("11", null)]
    public void A_whole_number_is_whole(string value, int? expected) =>
        Assert.Equal(expected, Open($"{{ \"runs\": {value} }}").Whole("runs", new Quantity("a number of runs", 1, 10)));

    [Fact]
    public void Words_are_written_with_hyphens_and_the_nearest_is_offered()
    {
        var root = Open("""{ "a": "left-lead", "b": "left-laed", "c": 4 }""");
        Assert.Equal(Stance.LeftLead, root.Word<Stance>("a"));
        Assert.Null(root.Word<Stance>("b"));
        Assert.Null(root.Word<Stance>("c"));
        Assert.Equal("Maybe left-lead is meant.", problems.InOrder[0].Maybe);
        Assert.Equal(2, problems.Count);
    }

    [Fact]
    public void Every_word_of_every_enumeration_reads_back()
    {
        Assert.All(Enum.GetValues<LineKind>(), k => Assert.True(EnumWords.TryParse<LineKind>(EnumWords.Of(k), out var back) && back == k));
        Assert.False(EnumWords.TryParse<LineKind>("3", out _));
    }

    [Fact]
    public void A_field_that_nobody_asked_for_is_a_problem_with_the_nearest_name()
    {
        var root = Open("{ \"name\": \"Bruno\",\n \"hieght\": 1.8, \"hat\": 1 }");
        root.Text("name");
        root.Number("height", Height);
        root.Finish();
        Assert.Equal(
            "x.json, line 2, hieght: There is no field \"hieght\" here.\n  Maybe \"height\" is meant.\n"
            + "x.json, line 2, hat: There is no field \"hat\" here.\n  Maybe one of these is meant: height, name.",
            new Read<ObjectReader>(root, problems).ToText());
    }

    [Fact]
    public void Null_counts_as_absent_and_absent_is_no_problem()
    {
        var root = Open("""{ "a": null }""");
        Assert.False(root.Has("a"));
        Assert.Null(root.Text("a"));
        Assert.Empty(root.Texts("b"));
        Assert.Null(root.Object("c"));
        root.Finish();
        Assert.True(problems.IsEmpty);
    }

    [Theory]
    [InlineData("[1, 2]", 2, true)]
    [InlineData("[1]", 2, false)]
    [InlineData("[1, \"2\"]", 2, false)]
    [InlineData("5", 2, false)]
    public void A_series_has_its_number_of_numbers(string value, int count, bool good)
    {
        Assert.Equal(good, Open($"{{ \"mark\": {value} }}").Numbers("mark", count, new Quantity("a place", 0, 9)) is not null);
        Assert.Equal(good ? 0 : 1, problems.Count);
    }

    private ObjectReader Open(string text) => StrictJson.Object("x.json", text, problems) ?? throw new InvalidOperationException(problems.InOrder[0].ToText());
}
