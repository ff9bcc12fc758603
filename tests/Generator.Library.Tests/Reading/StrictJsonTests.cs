using Generator.Library.Reading;

namespace Generator.Library.Tests.Reading;

public class StrictJsonTests
{
    private readonly ProblemList problems = new();

    [Theory]
    [InlineData("", 0, "The file is empty.")]
    [InlineData("{ \"a\": 1,\n  \"b\": ", 2, "The file ends too early.")]
    [InlineData("{ \"a\": 1", 1, "The file ends too early.")]
    [InlineData("{ \"a\": \"open }", 1, "The file ends too early.")]
    [InlineData("{\n \"a\": 1\n \"b\": 2 }", 3, "This is not JSON, at: \"b\": 2 }")]
    [InlineData("{ \"a\": 1 } x", 1, "This is not JSON, at: x")]
    [InlineData("{ \"a\": 1e400 }", 1, "1e400 is larger than any number that is meant anywhere.")]
    [InlineData("{ \"a\": [ 2,\n -3E999 ] }", 2, "-3E999 is larger than any number that is meant anywhere.")]
    [InlineData("[1]", 1, "The file must hold one object, from { to }.")]
    public void Bad_text_is_reported_with_its_line(string text, int line, string message)
    {
        Assert.Null(StrictJson.Object("x.json", text, problems));
        var problem = Assert.Single(problems.InOrder);
        Assert.Equal((line, message), (problem.Line, problem.Message));
        Assert.StartsWith("Maybe ", problem.Maybe, StringComparison.Ordinal);
    }

    [Fact]
    public void A_number_of_four_hundred_digits_is_called_what_it_is()
    {
        StrictJson.Object("x.json", $"{{ \"a\": {new string('7', 400)} }}", problems);
        Assert.Contains("larger than any number", Assert.Single(problems.InOrder).Message, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("\\ud800", true)]
    [InlineData("a\\udc00b", true)]
    [InlineData("\\udc00\\ud800", true)]
    [InlineData("\\ud83d\\ude00", false)]
    [InlineData("\U0001F600", false)]
    public void Half_a_letter_is_reported(string text, bool told)
    {
        StrictJson.Object("x.json", $"{{ \"a\": \"{text}\" }}", problems);
        Assert.Equal(told, problems.InOrder.Any(p => p.Message.StartsWith("The text holds half a letter", StringComparison.Ordinal)));
        Assert.Equal(!told, problems.IsEmpty);
    }

    [Fact]
    public void A_field_given_twice_is_reported_wherever_it_stands_and_reading_goes_on()
    {
        Assert.NotNull(StrictJson.Object("x.json", "{ \"a\": [ { \"b\": 1,\n \"b\": 2 } ],\n \"a\": 3 }", problems));
        Assert.Equal([(2, "a[0].b"), (3, "a")], problems.InOrder.Select(p => (p.Line, p.Field)));
    }

    [Theory]
    [InlineData("010")]
    [InlineData("-01")]
    [InlineData("0x1F")]
    public void A_number_that_only_some_would_read_alike_is_reported(string number)
    {
        StrictJson.Object("x.json", $"{{ \"a\": {number} }}", problems);
        Assert.Equal(number, Assert.Single(problems.InOrder).Value);
    }

    [Fact]
    public void Comments_trailing_commas_and_dates_pass_as_written()
    {
        var root = StrictJson.Object("x.json", "{ // why\n \"a\": [0, 0.5, -0.5, 0e1, 10, ], \"b\": \"2020-01-01T00:00:00Z\", }", problems);
        Assert.True(problems.IsEmpty);
        Assert.Equal("2020-01-01T00:00:00Z", root!.Text("b"));
    }

    [Theory]
    [InlineData("\f129")]
    [InlineData("{ \"a\":\r\"\u2028\u0085\f\",\r\n \"b\": 010 }")]
    public void Rare_line_separators_do_not_count_as_lines(string text)
    {
        StrictJson.Object("x.json", text, problems);
        var problem = Assert.Single(problems.InOrder);
        Assert.Equal(text.Contains('b', StringComparison.Ordinal) ? 3 : 1, problem.Line);
    }
}
