using Generator.Domain;
using Generator.Library.Files;
using Generator.Library.Reading;
using Generator.Testing;

namespace Generator.Library.Tests.Files;

/// <summary>Rows of a table that say what the brief says: in any order, some of them only, and wrong ones told with their line.</summary>
public class BriefInTableTests
{
    private const string Moves = "count,attacker,attack,technique,reaction,brief,value\n1,Bruno,swing-right,parry-down-left,head-drops,,\n";

    /// <summary>Names that look like something else stay names.</summary>
    [Fact]
    public void Names_that_look_like_numbers_or_marks_come_back()
    {
        var routine = RandomRoutine.Of(3, TinyBook.Book);
        foreach (var name in new[] { "12", "-3.5", "null", "true", "[]", "{}", "\"Jo\"", "\"", "=1+1", "'=1", "007", "2:30", "1e400" })
        {
            var named = routine with { Brief = routine.Brief with { Title = name, Hero = routine.Brief.Hero with { Name = name } } };
            var read = RoutineReader.Parse(new SourceFile("x.csv", RoutineWriter.Csv(named)), TinyBook.Book);
            Assert.Equal(string.Empty, read.ToText());
            Assert.Equal((name, name), (read.Value!.Brief.Title, read.Value.Brief.Hero.Name));
        }
    }

    [Fact]
    public void Rows_that_a_spreadsheet_has_sorted_say_the_same()
    {
        foreach (var routine in Enumerable.Range(0, 40).Select(s => RandomRoutine.Of(s, TinyBook.Book)).Where(r => r.Moves.All(m => !m.Note.Contains('\n', StringComparison.Ordinal))))
        {
            var lines = RoutineWriter.Csv(routine).Split("\r\n", StringSplitOptions.RemoveEmptyEntries).ToList();
            var moves = lines.FindIndex(l => l.StartsWith(",,,,,,,,,,,,,", StringComparison.Ordinal));
            IEnumerable<string> sorted = [.. lines[..moves], .. lines[moves..].OrderDescending(StringComparer.Ordinal)];
            var read = RoutineReader.Parse(new SourceFile("x.csv", string.Join('\n', sorted)), TinyBook.Book);
            Assert.Equal(string.Empty, read.ToText());
            Assert.Equal(DeepText.Of(routine), DeepText.Of(read.Value));
        }
    }

    /// <summary>Whoever writes two rows by hand need not write all; who fights are those who are named.</summary>
    [Fact]
    public void Some_of_a_brief_is_enough()
    {
        var read = RoutineReader.Parse(new SourceFile("x.csv", Moves + ",,,,,tempo,90\n,,,,,hero.name,Ines\n,,,,,title,\n"), TinyBook.Book);
        Assert.Equal(string.Empty, read.ToText());
        Assert.Equal((90, "Ines", "Bruno", "Untitled fight"), (read.Value!.Brief.Tempo.CountsPerMinute, read.Value.Brief.Hero.Name, read.Value.Brief.Attackers.Single().Name, read.Value.Brief.Title));
    }

    [Theory]
    [InlineData(",,,,,tempo,900\n", 3, "tempo", "900 is not a tempo")]
    [InlineData(",,,,,tempos,90\n", 3, "tempos", "There is no field")]
    [InlineData(",,,,,tempo,90\n,,,,,tempo,95\n", 4, "brief", "said twice")]
    [InlineData(",,,,,hero,90\n,,,,,hero.name,Ines\n", 4, "brief", "said twice")]
    [InlineData(",,,,,a b,90\n", 3, "brief", "names no field")]
    [InlineData(",,,,,a.a.a.a.a.a.a.a.a,90\n", 3, "brief", "names no field")]
    [InlineData("3,,,,,tempo,90\n", 3, "brief", "fills the column count too")]
    [InlineData(",,,,,hero.name,Ines\n,,,,,cameras[1].name,A\n,,,,,cameras[1].bearing,3\n,,,,,cameras[1].distance,4\n", 4, "brief", "the number 0 is missing")]
    [InlineData(",,,,,hero.height,tall\n", 3, "hero.height", "is not a number")]
    [InlineData(",,,,,attackers[0].height,1.8\n", 3, "attackers[0].name", "is missing")]
    public void What_is_wrong_is_told_with_its_line(string rows, int line, string field, string message)
    {
        var read = RoutineReader.Parse(new SourceFile("x.csv", Moves + rows), TinyBook.Book);
        Assert.Contains(read.Problems, p => p.Line == line && p.Field == field && p.Message.Contains(message, StringComparison.Ordinal));
    }
}
