using Generator.Library.Files;
using Generator.Library.Files.Notes;
using Generator.Library.Reading;
using Generator.Testing;

namespace Generator.Library.Tests.Files;

/// <summary>Names that papers would not show as they are, in every kind of file.</summary>
public class NameFormTests
{
    private const string Header = "count,attacker,from,cue,attack,technique,reaction,linger,note\n";

    [Theory]
    [InlineData("\u200B\u200D", "Nobody could see this name.")]
    [InlineData("\u3164", "Nobody could see this name.")]
    [InlineData("Bru\u202Eno", "A mark in this name turns the line round, so that papers would show something else.")]
    [InlineData("\u2066Bruno", "A mark in this name turns the line round, so that papers would show something else.")]
    [InlineData("Bru\u200Bno", "A mark in this name has no shape, so that it looks like another name.")]
    [InlineData("Bru\u200Dno", "A mark in this name has no shape, so that it looks like another name.")]
    [InlineData("Bruno\u200F", "A mark in this name has no shape, so that it looks like another name.")]
    [InlineData("Bru\u00ADno", "A mark in this name has no shape, so that it looks like another name.")]
    [InlineData("Bruno\u2028Piet", "A name is one line of text.")]
    public void A_name_that_is_not_seen_as_it_is_is_refused_in_every_file(string name, string message)
    {
        var csv = RoutineReader.Parse(new SourceFile("x.csv", $"{Header}1,{name},,,,shove off,,,\n"), TinyBook.Book);
        Assert.Contains("x.csv, line 2, attacker: " + message, csv.ToText(), StringComparison.Ordinal);
        var brief = BriefReader.Parse(new SourceFile("x.json", $$"""{ "length": { "counts": 24 }, "attackers": [ { "name": "{{name}}" } ] }"""), TinyBook.Book);
        Assert.Contains(message, brief.ToText(), StringComparison.Ordinal);
        var rows = RoutineReader.Parse(new SourceFile("x.json", $$"""{ "moves": [ { "count": 1, "attacker": "{{name}}", "technique": "shove off" } ] }"""), TinyBook.Book);
        Assert.Contains(message, rows.ToText(), StringComparison.Ordinal);
        foreach (var notes in name.Contains('\u2028', StringComparison.Ordinal) ? [] : (string[])[$"{name}: jab > duck\n", $"# {name}\nBruno: jab > duck\n", $"{name}: the hero\nBruno: jab > duck\n"])
        {
            Assert.Contains(message, NotesReader.Parse(new SourceFile("x.notes.txt", notes), TinyBook.Book).ToText(), StringComparison.Ordinal);
        }

        Assert.All([csv.ToText(), brief.ToText(), rows.ToText()], t => Assert.DoesNotContain(t, c => c is '\u2028' or (>= '\u200B' and <= '\u200F') or (>= '\u202A' and <= '\u202E') or (>= '\u2066' and <= '\u2069')));
    }

    /// <summary>One fault of one name is one message, however often the file goes by the name.</summary>
    [Fact]
    public void A_refused_name_is_refused_once()
    {
        var brief = BriefReader.Parse(new SourceFile("x.json", """{ "length": { "counts": 24 }, "attackers": [ { "name": "Bru\u202Eno" }, { "name": "Piet" } ], "moments": [ { "attacker": "Bru\u202Eno", "technique": "shove off" } ] }"""), TinyBook.Book);
        Assert.Single(brief.Problems);
    }

    [Theory]
    [InlineData("小林")]
    [InlineData("Zoë")]
    [InlineData("مها")]
    [InlineData("👩‍🎤")]
    [InlineData("نی\u200Cلوفر")]
    public void Names_of_all_scripts_are_read(string name) =>
        Assert.Equal(name, RoutineReader.Parse(new SourceFile("x.csv", $"{Header}1,{name},,,,shove off,,,\n"), TinyBook.Book).Value!.Brief.Attackers[0].Name);
}
