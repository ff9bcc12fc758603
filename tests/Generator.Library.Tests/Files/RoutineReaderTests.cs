using Generator.Domain;
using Generator.Library.Files;
using Generator.Library.Reading;
using Generator.Testing;

namespace Generator.Library.Tests.Files;

public class RoutineReaderTests
{
    private const string Header = "count,attacker,from,cue,attack,technique,reaction,linger,note\n";

    [Theory]
    [InlineData("swing-right,outside-block-left", "swing-right", "outside-block-left")]
    [InlineData("swing right,outside block", "swing-right", "outside-block-left")]
    [InlineData("swing left,Outer Block", "swing-left", "outside-block-right")]
    [InlineData("hook,outside block left", "swing-right", "outside-block-left")]
    [InlineData("haymaker,outside-block-right", "swing-left", "outside-block-right")]
    [InlineData("rush,stare-down", "rush", "stare-down")]
    [InlineData("swing-left,outside-block-left", "swing-left", "outside-block-left")]
    [InlineData("swing-left,", "swing-left", null)]
    public void A_word_without_a_side_takes_the_side_that_meets_the_other(string words, string attack, string? technique)
    {
        var move = Good($"{Header}1,Bruno,,,{words},,,\n").Moves[0];
        Assert.Equal((attack, technique), (move.Attack, move.Technique));
    }

    [Fact]
    public void All_fields_of_a_row_are_read()
    {
        var routine = Good(Header + "2&,Wanda,2:30,Voice,swing right,outside block left,blocked,1.5,\"mind, the step\"\n5,,,,,breather,,,\n");
        Assert.Equal(
            [
                new Move { Start = new HalfCounts(3), Attacker = 0, From = new Bearing(5), Cue = Cue.Voice, Attack = "swing-right", Technique = "outside-block-left", Reaction = "limb-stopped", Linger = new HalfCounts(3), Note = "mind, the step" },
                new Move { Start = new HalfCounts(8), Technique = "catch-breath" },
            ],
            routine.Moves);
    }

    [Fact]
    public void A_technique_with_one_reaction_only_need_not_name_it() =>
        Assert.Equal("staggers-back", Good($"{Header}1,Bruno,,,,shove off,,,\n").Moves[0].Reaction);

    /// <summary>What is wrong with the fight, and not with the file, is for the audit to tell.</summary>
    [Theory]
    [InlineData("r.csv", Header + "8,Bruno,,,,side-kick-right,,,\n5&,Bruno,,,,side-kick-right,head-back,,\n9,,,,,catch-breath,folds,,\n")]
    [InlineData("r.json", """{ "moves": [ { "count": 8, "attacker": "Bruno", "technique": "side-kick-right" }, { "count": "5&", "attacker": "Bruno", "technique": "side-kick-right", "reaction": "head-back" }, { "count": 9, "technique": "catch-breath", "reaction": "folds" } ] }""")]
    public void Reactions_that_lack_or_do_not_suit_and_rows_out_of_order_are_read_as_they_stand(string name, string text)
    {
        var read = RoutineReader.Parse(new SourceFile(name, text), TinyBook.Book);
        Assert.Equal(string.Empty, read.ToText());
        Assert.Equal(
            [(14, "side-kick-right", null), (9, "side-kick-right", "head-back"), (16, "catch-breath", "folds")],
            read.Value!.Moves.Select(m => (m.Start.Value, m.Technique, m.Reaction)));
    }

    [Fact]
    public void Without_a_brief_the_attackers_are_those_named_spread_round_the_clock()
    {
        var routine = Good(Header + "1,Wanda,,,,shove off,,,\n3,Bruno,8,,,shove off,,,\n5,wanda,4,,,shove off,,,\n7,Piet,,,,shove off,,,\n");
        Assert.Equal(["Wanda", "Bruno", "Piet"], routine.Brief.Attackers.Select(a => a.Name));
        Assert.Null(routine.Brief.Length);
        Assert.Equal([0, 1, 0, 2], routine.Moves.Select(m => m.Attacker));
        Assert.Equal(["12", "8", "8"], routine.Placements.Select(p => p.Bearing.ToClockText()));
        Assert.All(routine.Placements, p => Assert.Equal((300, 0), (p.Distance.Value, p.Entrance.Value)));
    }

    [Theory]
    [InlineData("A2,A1", "A1 A2")]
    [InlineData("Bruno,A2,a1", "Bruno A2")]
    [InlineData("A3,Bruno", "Bruno A3")]
    public void Labels_stand_for_names_or_are_names(string words, string expected)
    {
        var text = Header + string.Concat(words.Split(',').Select((w, i) => $"{i + 1},{w},,,,shove off,,,\n"));
        Assert.Equal(expected, string.Join(' ', Good(text).Brief.Attackers.Select(a => a.Name)));
    }

    [Fact]
    public void The_routine_says_where_they_open_before_the_brief_does()
    {
        const string Text = """
            { "library": "tiny-1", "attackers": [ { "name": "a2", "bearing": "7:30", "entrance": "4&" } ],
              "moves": [ { "count": 1, "attacker": "A1", "technique": "shove-off", "linger": 0.5, "note": "" } ] }
            """;
        var brief = new Brief
        {
            Attackers = [new AttackerPart { Name = "Bruno", Bearing = new Bearing(2), Distance = new Centimetres(450) }, new AttackerPart { Name = "Wanda", Bearing = new Bearing(9), Entrance = new HalfCounts(2) }],
        };
        var routine = Good(Text, brief);
        Assert.Equal([new Placement(new Bearing(2), new(450), new(0)), new Placement(new Bearing(15), new(300), new(7))], routine.Placements);
        Assert.Equal("tiny-1", routine.LibraryVersion);
        Assert.Same(brief, routine.Brief);
    }

    [Theory]
    [InlineData("5")]
    [InlineData("\"5\"")]
    public void A_whole_count_may_be_a_number_or_text(string count)
    {
        var routine = Good($$"""
            { "brief": { "attackers": [ { "name": "Bruno", "entrance": {{count}} } ], "moments": [ { "technique": "shove-off", "counts": [{{count}}, null] } ] },
              "attackers": [ { "name": "Bruno", "entrance": {{count}} } ], "moves": [ { "count": {{count}}, "attacker": "Bruno", "technique": "shove-off" } ] }
            """);
        HalfCounts?[] read = [routine.Brief.Attackers[0].Entrance, routine.Brief.Moments[0].Earliest, routine.Placements[0].Entrance, routine.Moves[0].Start];
        Assert.All(read, c => Assert.Equal(8, c?.Value));
    }

    [Fact]
    public void A_brief_that_is_given_replaces_the_one_inside()
    {
        const string Text = """{ "brief": { "title": "inside", "attackers": [ { "name": "Bruno" } ] }, "moves": [ { "count": 1, "attacker": "Bruno", "technique": "shove-off" } ] }""";
        Assert.Equal("inside", Good(Text).Brief.Title);
        Assert.Equal("given", Good(Text, new Brief { Title = "given", Attackers = [new AttackerPart { Name = "Bruno" }] }).Brief.Title);
    }

    [Fact]
    public void What_a_draft_printed_is_a_routine()
    {
        const string Text = """{ "routine": { "moves": [ { "count": 1, "attacker": "Bruno", "technique": "shove-off" } ] }, "findings": [], "points": 0, "standing": "perfect" }""";
        Assert.Equal("shove-off", Good(Text).Moves[0].Technique);
    }

    [Theory]
    [InlineData("x.csv")]
    [InlineData("-")]
    [InlineData("rows.txt")]
    public void The_kind_of_file_is_seen_from_its_name_or_its_beginning(string name)
    {
        var read = RoutineReader.Parse(new SourceFile(name, Header + "1,Bruno,,,,shove off,,,\n"), TinyBook.Book);
        Assert.Equal(string.Empty, read.ToText());
    }

    [Fact]
    public void Columns_may_stand_in_any_order_and_be_left_out()
    {
        var move = Good("Technique;Count;Attacker\nshove off;4;Bruno\n").Moves[0];
        Assert.Equal(("shove-off", 6, 0), (move.Technique, move.Start.Value, move.Attacker));
    }

    [Fact]
    public void Opening_places_stand_in_columns_of_their_own_on_any_row_of_an_attacker()
    {
        const string Text = """
            count,attacker,technique,opening bearing,opening distance,entrance
            ,Wanda,,2:30,2.65,4&
            1,Bruno,shove off,7,,
            3,Wanda,shove off,,,
            ,Piet,,02:30:00,,
            """;
        var routine = Good(Text);
        Assert.Equal(["Wanda", "Bruno", "Piet"], routine.Brief.Attackers.Select(a => a.Name));
        Assert.Equal([1, 0], routine.Moves.Select(m => m.Attacker));
        Assert.Equal([new Placement(new(5), new(265), new(7)), new Placement(new(14), new(300), new(0)), new Placement(new(5), new(300), new(0))], routine.Placements);
    }

    [Theory]
    [InlineData(",Wanda,,2:15,,", "\"2:15\" is not a clock position.")]
    [InlineData(",Wanda,,,40,", "\"40\" is not a distance between 1 and 20 m.")]
    [InlineData(",Wanda,,,,0", "\"0\" is not a count.")]
    [InlineData(",,,12,,", "The row does not say who opens there.")]
    [InlineData(",Wanda,,12,,\n1,Wanda,shove off,12,,", "Wanda is placed twice.")]
    [InlineData("1,Wanda,,12,,", "The row has neither an attack nor a technique.")]
    public void Opening_places_that_cannot_be_are_told(string rows, string message)
    {
        var read = RoutineReader.Parse(new SourceFile("x.csv", "count,attacker,technique,opening bearing,opening distance,entrance\n" + rows + "\n3,Bruno,shove off,,,\n"), TinyBook.Book);
        Assert.Contains(message, read.ToText(), StringComparison.Ordinal);
    }

    [Fact]
    public void A_text_without_an_end_is_refused()
    {
        var problems = new ProblemList();
        Assert.Null(SourceFile.Read("endless", new Endless(), problems));
        Assert.Contains("There is no end after 4 million letters.", Assert.Single(problems.InOrder).ToText(), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("moves.xlsx", "This is a workbook, which holds many sheets.", "as CSV")]
    [InlineData("moves.csv", "The file is not text in UTF-8.", "Maybe save it again as UTF-8")]
    public void What_is_no_text_is_told_with_what_to_save(string name, string message, string maybe)
    {
        var path = Path.Combine(Directory.CreateTempSubdirectory("no-text-").FullName, name);
        File.WriteAllBytes(path, [(byte)'P', (byte)'K', 3, 4, 0xFF, 0xFE]);
        var problems = new ProblemList();
        Assert.Null(SourceFile.Load(path, problems));
        Directory.Delete(Path.GetDirectoryName(path)!, recursive: true);
        var told = Assert.Single(problems.InOrder).ToText();
        Assert.Contains(message, told, StringComparison.Ordinal);
        Assert.Contains(maybe, told, StringComparison.Ordinal);
    }

    private sealed class Endless : TextReader
    {
        public override int Read(char[] buffer, int index, int count)
        {
            Array.Fill(buffer, 'y', index, count);
            return count;
        }
    }

    private static Routine Good(string text, Brief? brief = null)
    {
        var read = RoutineReader.Parse(new SourceFile("-", text), TinyBook.Book, brief);
        Assert.Equal(string.Empty, read.ToText());
        return read.Value!;
    }
}
