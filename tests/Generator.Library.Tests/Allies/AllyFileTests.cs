using Generator.Domain;
using Generator.Library.Files;
using Generator.Library.Files.Notes;
using Generator.Library.Loading;
using Generator.Library.Reading;

namespace Generator.Library.Tests.Allies;

/// <summary>A second hero in briefs, routines, tables and notes.</summary>
public sealed class AllyFileTests
{
    private const string Ally = """ "ally": { "name": "Mira", "height": 1.74, "bearing": "4:30", "distance": 2.5, "facing": "3", "lead": "right", "limits": ["no-jump"] } """;

    private const string Rows = """
        "moves": [
          { "count": 1, "attacker": "Bruno", "attack": "swing-right", "technique": "outside-block-left", "reaction": "limb-stopped" },
          { "count": 2, "attacker": "Bruno", "technique": "cross-right", "reaction": "head-back", "by": "hero" },
          { "count": 1, "attacker": "Wanda", "attack": "swing-right", "technique": "outside-block-left", "reaction": "limb-stopped", "by": "Mira" },
          { "count": "1&", "attacker": "Wanda", "technique": "cross-right", "reaction": "head-back", "by": "ALLY" } ]
        """;

    private static readonly Book Book = LibraryLoader.LoadBundled().Value!;

    private static string Brief(string more, string rest = "") =>
        $$"""{ "title": "Gate", "length": { "counts": 8 }, "floor": { "width": 12, "depth": 12 }, "hero": { "name": "Zora" }, {{more}}, "attackers": [ { "name": "Bruno" }, { "name": "Wanda" } ]{{rest}} }""";

    private static Read<Routine> Routine(string rows, string brief) => RoutineReader.Parse(new SourceFile("x.json", $$"""{ "brief": {{brief}}, {{rows}} }"""), Book);

    private static Problem Fault(string more, string rest = "") => Assert.Single(BriefReader.Parse(new SourceFile("x.brief.json", Brief(more, rest)), Book).Problems);

    [Fact]
    public void Whatever_is_said_of_an_ally_is_read_and_comes_back()
    {
        var brief = BriefReader.Parse(new SourceFile("x.brief.json", Brief(Ally)), Book).Value!;
        var ally = brief.Ally!;
        Assert.Equal(("Mira", 174, Side.Right, 9, 250, 6, 177, -177), (ally.Part.Name, ally.Part.Height.Value, ally.Part.Lead, ally.Bearing.HalfHours, ally.Distance.Value, ally.Faces.HalfHours, ally.Mark.X, ally.Mark.Y));
        Assert.Equal(BriefWriter.Text(brief), BriefWriter.Text(BriefReader.Parse(new SourceFile("x.brief.json", BriefWriter.Text(brief)), Book).Value!));
        Assert.Contains("\"facing\": \"3\"", BriefWriter.Text(brief), StringComparison.Ordinal);
    }

    [Fact]
    public void What_nobody_says_is_back_to_back()
    {
        var ally = BriefReader.Parse(new SourceFile("x.brief.json", Brief(""" "ally": { "name": "Mira" } """)), Book).Value!.Ally!;
        Assert.Equal((12, 150, 12, Skill.Stunt), (ally.Bearing.HalfHours, ally.Distance.Value, ally.Faces.HalfHours, ally.Part.Skill));
    }

    [Theory]
    [InlineData(""" "ally": {} """, "ally.name", "name")]
    [InlineData(""" "ally": { "name": "zora" } """, "ally.name", "Two performers are called")]
    [InlineData(""" "ally": { "name": "A2" } """, "ally.name", "taken for an attacker")]
    [InlineData(""" "ally": { "name": "Mira", "distance": 0.2 } """, "ally.distance", "between 0.5 and 20")]
    [InlineData(""" "ally": { "name": "Mira", "distance": 15 } """, "ally.distance", "lies off the floor")]
    [InlineData(""" "ally": { "name": "Mira", "facing": "13" } """, "ally.facing", "is not a clock position")]
    [InlineData(""" "ally": { "name": "Mira", "speed": 2 } """, "ally.speed", "speed")]
    [InlineData(""" "ally": { "name": "Bruno" } """, "attackers[0].name", "Two performers are called")]
    public void What_is_wrong_is_told_with_its_field(string ally, string field, string words)
    {
        var fault = Fault(ally);
        Assert.Equal(field, fault.Field);
        Assert.Contains(words, fault.Message, StringComparison.Ordinal);
        Assert.StartsWith("Maybe ", fault.Maybe, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(""", "marks": [ { "name": "a", "x": 6, "y": 6 }, { "name": "b", "x": 9, "y": 6 } ]""", "marks")]
    [InlineData(""", "props": [ { "kind": "stick", "with": "hero" } ]""", "props")]
    public void What_is_not_judged_beside_an_ally_is_refused(string rest, string field) => Assert.Equal(field, Fault(Ally, rest).Field);

    [Fact]
    public void Moves_of_both_stand_in_the_order_in_which_they_start()
    {
        var routine = Routine(Rows, Brief(Ally)).Value!;
        Assert.Equal([(0, false), (0, true), (1, true), (2, false)], routine.Moves.Select(m => (m.Start.Value, m.ByAlly)));
        foreach (var again in new[] { RoutineReader.Parse(new SourceFile("x.json", RoutineWriter.Text(routine)), Book), RoutineReader.Parse(new SourceFile("x.csv", RoutineWriter.Csv(routine)), Book), })
        {
            Assert.Equal(RoutineWriter.Text(routine), RoutineWriter.Text(again.Value!));
        }

        Assert.Equal("count,by,attacker,from", RoutineWriter.Csv(routine)[..22]);
    }

    [Fact]
    public void Everybodys_own_rows_stay_in_the_order_written()
    {
        var rows = Rows.Replace("\"count\": 2", "\"count\": 3", StringComparison.Ordinal).Replace("\"1&\"", "\"1\"", StringComparison.Ordinal).Replace("\"count\": 1, \"attacker\": \"Bruno\"", "\"count\": 4, \"attacker\": \"Bruno\"", StringComparison.Ordinal);
        Assert.Equal([(0, true), (0, true), (6, false), (4, false)], Routine(rows, Brief(Ally)).Value!.Moves.Select(m => (m.Start.Value, m.ByAlly)));
    }

    [Fact]
    public void Without_an_ally_nothing_is_written_of_who_does_it()
    {
        var routine = Routine(Rows.Replace(", \"by\": \"Mira\"", string.Empty, StringComparison.Ordinal).Replace(", \"by\": \"ALLY\"", string.Empty, StringComparison.Ordinal), Brief("\"arc\": \"free\"")).Value!;
        Assert.DoesNotContain("\"by\"", RoutineWriter.Text(routine), StringComparison.Ordinal);
        Assert.StartsWith("count,attacker,", RoutineWriter.Csv(routine), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("Mirra", "is neither the hero nor the ally", "Mira")]
    [InlineData("Bruno", "is neither the hero nor the ally", "Zora")]
    public void A_name_that_is_neithers_is_told(string by, string words, string maybe)
    {
        var fault = Assert.Single(Routine(Rows.Replace("\"by\": \"Mira\"", $"\"by\": \"{by}\"", StringComparison.Ordinal), Brief(Ally)).Problems);
        Assert.Equal("moves[2].by", fault.Field);
        Assert.Contains(words, fault.Message, StringComparison.Ordinal);
        Assert.Contains(maybe, fault.Maybe, StringComparison.Ordinal);
    }

    [Fact]
    public void Without_an_ally_nobody_else_can_do_it() =>
        Assert.All(Routine(Rows, Brief("\"arc\": \"free\"")).Problems, p => Assert.Contains("the brief has no ally", p.Message, StringComparison.Ordinal));

    [Theory]
    [InlineData("Ally: Mira at 6, back to back", 12, 150)]
    [InlineData("Mira: the ally, at 3, 2 m, right lead", 6, 200)]
    public void Notes_say_who_it_is_and_what_they_do(string line, int bearing, int distance)
    {
        var read = NotesReader.Parse(new SourceFile("x.notes.txt", $"Zora: the hero\n{line}\nBruno: 12, 3 m\nBruno: swing > outside block @2\nMira: Wanda from 6: swing > outside block, cross right @2\n"), Book);
        Assert.Empty(read.Problems);
        var sketch = read.Value!.Sketch;
        Assert.Equal(("Mira", bearing, distance), (sketch.Brief.Ally!.Part.Name, sketch.Brief.Ally.Bearing.HalfHours, sketch.Brief.Ally.Distance.Value));
        Assert.Equal(["Bruno", "Wanda"], sketch.Brief.Attackers.Select(a => a.Name));
        Assert.Equal([(false, 0), (true, 1), (true, 1)], sketch.Moves.Select(m => (m.ByAlly, m.Attacker!.Value)));
    }

    [Theory]
    [InlineData("Ally: Mira at 6, fast", "The ally is on a mark of their own")]
    [InlineData("Ally: Mira at 6\nPia: the ally, 3", "Mira is the ally already")]
    public void Notes_that_say_it_wrongly_are_told(string lines, string words) =>
        Assert.Contains(words, Assert.Single(NotesReader.Parse(new SourceFile("x.notes.txt", $"{lines}\nBruno: swing > outside block\n"), Book).Problems).Message, StringComparison.Ordinal);
}
