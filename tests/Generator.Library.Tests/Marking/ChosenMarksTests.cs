using Generator.Domain;
using Generator.Library.Files;
using Generator.Library.Reading;
using Generator.Library.Tests.Bundled;
using Newtonsoft.Json.Linq;

namespace Generator.Library.Tests.Marking;

/// <summary>Marks of briefs that say how many, or a way.</summary>
public sealed class ChosenMarksTests
{
    private const string Least = """ "length": { "counts": 48 }, "attackers": [ { "name": "Bruno" } ] """;

    /// <summary>Two rooms with a wall between them, round which the way leads at its upper end.</summary>
    private const string Rooms = """
        "floor": { "width": 10, "depth": 8, "waysIn": [ { "name": "door", "x": 0, "y": 2 }, { "name": "window", "x": 10, "y": 2 } ],
        "obstacles": [ { "name": "wall", "kind": "wall", "x": 4.8, "y": 0, "width": 0.4, "depth": 6 }, { "name": "the long table", "kind": "table", "x": 7, "y": 6.2, "width": 1.6, "depth": 0.8 } ] }
        """;

    [Fact]
    public void By_number_they_are_clear_of_everything_and_as_many_as_were_asked_for()
    {
        var chosen = 0;
        for (var seed = 1; seed <= 50; seed++)
        {
            var (text, count) = (RandomFloor.Brief(seed), 2 + (seed % 5));
            text["marks"] = count;
            if (Read(text.ToString(), seed) is not { IsGood: true, Value: var brief } read)
            {
                continue;
            }

            chosen++;
            Assert.Equal(count, brief.Marks.Count);
            Assert.Equal([], RandomFloor.Faults(brief, BundledLibrary.Book).Select(f => $"{seed}: {f}"));
            Assert.Equal(brief.Marks, Read(text.ToString(), seed).Value!.Marks);
            var remark = Assert.Single(read.Remarks);
            Assert.All(brief.Marks, m => Assert.Contains(m.Name, remark.Message, StringComparison.Ordinal));

            // Written, they are marks like others: nothing is chosen, nothing is wrong with them.
            var again = Read(BriefWriter.Text(brief), seed + 1);
            Assert.Empty(again.Remarks);
            Assert.Equal(brief.Marks, again.Value!.Marks);
        }

        Assert.InRange(chosen, 42, 50);
    }

    [Fact]
    public void On_a_way_every_next_one_is_reached_clear_and_both_ends_are_where_they_were_asked_for()
    {
        var chosen = 0;
        for (var seed = 1; seed <= 24; seed++)
        {
            var text = RandomFloor.Brief(seed);
            text["marks"] = new JObject { ["from"] = "door", ["to"] = "Crate" };
            if (Read(text.ToString(), seed) is not { IsGood: true, Value: var brief })
            {
                continue;
            }

            chosen++;
            Assert.Equal([], RandomFloor.Faults(brief, BundledLibrary.Book).Select(f => $"{seed}: {f}"));
            Assert.Equal(brief.Marks, Read(text.ToString(), seed).Value!.Marks);
            Assert.InRange(RandomFloor.Far(brief.Marks[0], new HeroMark("door", brief.Floor.WaysIn[0].X, brief.Floor.WaysIn[0].Y)), 30, 200);
            Assert.InRange(brief.Floor.Obstacles[^1].To(brief.Marks[^1].X.Value, brief.Marks[^1].Y.Value), 30, 200);
        }

        Assert.InRange(chosen, 18, 24);
    }

    [Fact]
    public void Another_seed_may_choose_others()
    {
        Assert.InRange(Enumerable.Range(1, 6).Select(s => Marks($$"""{ {{Least}}, "marks": 3 }""", s)).Distinct().Count(), 4, 6);
        Assert.InRange(Enumerable.Range(1, 6).Select(s => Marks($$"""{ {{Least}}, {{Rooms}}, "marks": { "from": "door", "to": "window" } }""", s)).Distinct().Count(), 2, 6);
    }

    [Theory]
    [InlineData(""" "floor": { "mark": [2, 6] } """, 200, 600)]
    [InlineData(""" "cameras": [ { "bearing": "6", "distance": 5 } ] """, 400, 400)]
    [InlineData(""" "props": [ { "kind": "stick", "bearing": "3", "distance": 1.5 } ] """, 400, 400)]
    public void The_fight_begins_where_the_brief_says_or_whence_it_places_something(string more, int x, int y) =>
        Assert.All(Enumerable.Range(1, 4), s => Assert.Equal((x, y), Read($$"""{ {{Least}}, {{more}}, "marks": 3 }""", s).Value!.Marks[0] is var m ? (m.X.Value, m.Y.Value) : default));

    [Fact]
    public void A_thing_in_the_middle_is_in_the_way_only_where_the_fight_must_begin_there()
    {
        const string Floor = """ "floor": { "obstacles": [ { "name": "well", "x": 3.5, "y": 3.5, "width": 1, "depth": 1 } ] """;
        Assert.True(Read($$"""{ {{Least}}, {{Floor}} }, "marks": 3 }""").IsGood);
        Assert.Contains("stands on the mark", Read($$"""{ {{Least}}, {{Floor}}, "mark": [4, 4] }, "marks": 3 }""").ToText(), StringComparison.Ordinal);
        Assert.Contains("lies in the obstacle \"well\"", Read($$"""{ {{Least}}, {{Floor}} }, "cameras": [ { "bearing": "6", "distance": 5 } ], "marks": 3 }""").ToText(), StringComparison.Ordinal);
    }

    [Fact]
    public void Things_of_use_lie_within_reach_of_some_mark()
    {
        const string Floor = """ "floor": { "width": 10, "depth": 10, "obstacles": [ { "name": "table", "kind": "table", "x": 1, "y": 8.5, "width": 1.6, "depth": 0.8 }, { "name": "rail", "kind": "rail", "x": 7, "y": 1, "width": 2, "depth": 0.1 } ] } """;
        Assert.All(Enumerable.Range(1, 10), s =>
        {
            var brief = Read($$"""{ {{Least}}, {{Floor}}, "marks": 4 }""", s).Value!;
            Assert.All(brief.Floor.Obstacles, o => Assert.Contains(brief.Marks, m => o.To(m.X.Value, m.Y.Value) <= 180));
        });
    }

    [Fact]
    public void A_way_leads_round_what_stands_there_and_its_ends_have_names_of_the_floor()
    {
        Assert.All(Enumerable.Range(1, 5), s =>
        {
            var marks = Read($$"""{ {{Least}}, {{Rooms}}, "marks": { "from": "the door", "to": "window" } }""", s).Value!.Marks;
            Assert.Equal(("door side", "window side"), (marks[0].Name, marks[^1].Name));
            Assert.Contains(marks, m => m.Y.Value > 600);
            Assert.InRange(marks.Count, 4, 6);
        });
        Assert.Equal(6, Read($$"""{ {{Least}}, {{Rooms}}, "marks": { "from": "long table", "to": { "x": 1, "y": 1 }, "count": 6 } }""").Value!.Marks.Count);
        Assert.Equal((100, 100), Read($$"""{ {{Least}}, {{Rooms}}, "marks": { "from": "long table", "to": { "x": 1, "y": 1 } } }""").Value!.Marks[^1] is var m ? (m.X.Value, m.Y.Value) : default);
    }

    /// <summary>Down is where the audience sits; without any, and without a camera, at 6.</summary>
    [Theory]
    [InlineData("", 100, 100, "down right")]
    [InlineData("", 700, 400, "stage left")]
    [InlineData("""  "audience": ["12"], """, 100, 100, "up left")]
    [InlineData("""  "audience": ["3"], """, 400, 700, "stage left")]
    [InlineData("""  "audience": ["9"], """, 100, 700, "down right")]
    [InlineData("""  "audience": ["9"], """, 400, 400, "centre")]
    public void Else_they_are_called_after_the_part_of_the_stage(string audience, int x, int y, string name)
    {
        var other = x == 400 && y == 400 ? """{ "x": 7, "y": 7 }""" : """{ "x": 4, "y": 4 }""";
        var from = $$"""{ "x": {{x / 100}}, "y": {{y / 100}} }""";
        Assert.Equal(name, Read($$"""{ {{Least}}, {{audience}} "marks": { "from": {{from}}, "to": {{other}} } }""").Value!.Marks[0].Name);
    }

    [Fact]
    public void Marks_of_the_routine_are_kept_where_they_are_what_is_asked_for()
    {
        IReadOnlyList<HeroMark> kept = [new("stove", new(150), new(200)), new("sink", new(450), new(200)), new("hatch", new(450), new(500))];
        Assert.Equal(kept, Kept("3"));
        Assert.NotEqual(kept, Kept("2"));
        Assert.NotEqual(kept, Kept("""3, "floor": { "mark": [1, 1] }"""));
        Assert.NotEqual(kept, Kept("""3, "floor": { "obstacles": [ { "name": "crate", "x": 4, "y": 4.6, "width": 1, "depth": 1 } ] }"""));
        Assert.Equal(kept, Kept("""{ "from": { "x": 1.5, "y": 2 }, "to": { "x": 4.5, "y": 5 } }"""));
        Assert.NotEqual(kept, Kept("""{ "from": { "x": 1.5, "y": 2 }, "to": { "x": 4.5, "y": 5.5 } }"""));

        IReadOnlyList<HeroMark> Kept(string marks) =>
            BriefReader.Parse(new SourceFile("x.brief.json", $$"""{ {{Least}}, "marks": {{marks}} }"""), BundledLibrary.Book, choice: MarkChoice.Usual with { Kept = kept }).Value!.Marks;
    }

    [Theory]
    [InlineData("0", "0 is not a number of marks between 2 and 8.")]
    [InlineData("1", "Maybe leave \"marks\" out for a fight on one mark")]
    [InlineData("-1", "-1 is not a number of marks between 2 and 8.")]
    [InlineData("9", "9 is not a number of marks between 2 and 8.")]
    [InlineData("2.5", "2.5 is not a whole number")]
    [InlineData("\"three\"", "\"three\" is neither a list of places, nor a number of marks, nor a way.")]
    [InlineData("true", "true is neither a list of places, nor a number of marks, nor a way.")]
    [InlineData("""{ "to": "window" }""", "marks.from: \"from\" is missing.")]
    [InlineData("""{ "from": "dor", "to": "window" }""", "marks.from: Nothing on the floor is called \"dor\", and no way in.\n  Maybe door ")]
    [InlineData("""{ "from": 3, "to": "window" }""", "marks.from: 3 is not text.")]
    [InlineData("""{ "from": "door", "to": "the door" }""", "marks.to: The way begins and ends at the door.")]
    [InlineData("""{ "from": "door", "to": "window", "count": 1 }""", "marks.count: 1 is not a number of marks between 2 and 8.")]
    [InlineData("""{ "from": "door", "to": "window", "count": 2 }""", "marks.count: No row of 2 marks was found from the door to the window")]
    [InlineData("""{ "from": "door", "to": { "x": 5, "y": 3 } }""", "marks.to: A mark at 5.00 m, 3.00 m lies in the obstacle \"wall\"")]
    [InlineData("""{ "from": "door", "to": { "x": 5 } }""", "\"y\" is missing.")]
    [InlineData("""{ "from": { "x": 1, "y": 1 }, "to": { "x": 1.5, "y": 1 } }""", "It is too near from 1.00 m, 1.00 m to 1.50 m, 1.00 m for two marks")]
    [InlineData("""{ "from": "door", "to": "window", "by": 2 }""", "There is no field \"by\" here.")]
    public void What_cannot_be_is_refused_in_words_of_the_floor(string marks, string says)
    {
        var told = Read($$"""{ {{Least}}, {{Rooms}}, "marks": {{marks}} }""").ToText();
        Assert.Contains(says, told, StringComparison.Ordinal);
        Assert.Contains("\n  Maybe ", told, StringComparison.Ordinal);
    }

    [Fact]
    public void Where_there_is_no_room_and_no_way_it_is_said()
    {
        const string Small = """ "floor": { "width": 2, "depth": 2 } """;
        Assert.Contains("No room was found for 6 marks on this floor: at least 1.00 m from one another", Read($$"""{ {{Least}}, {{Small}}, "marks": 6 }""").ToText(), StringComparison.Ordinal);
        Assert.True(Read($$"""{ {{Least}}, {{Small}}, "marks": 2 }""").IsGood);
        const string Cut = """ "floor": { "waysIn": [ { "name": "door", "x": 0, "y": 2 }, { "name": "window", "x": 8, "y": 2 } ], "obstacles": [ { "name": "bar", "x": 3.5, "y": 0, "width": 0.4, "depth": 8 } ] } """;
        Assert.Contains("No clear way was found from the door to the window.", Read($$"""{ {{Least}}, {{Cut}}, "marks": { "from": "door", "to": "window" } }""").ToText(), StringComparison.Ordinal);
        Assert.Contains("the floor names a mark as well", Read($$"""{ {{Least}}, "floor": { "mark": [4, 4] }, "marks": { "from": { "x": 1, "y": 1 }, "to": { "x": 6, "y": 1 } } }""").ToText(), StringComparison.Ordinal);
    }

    [Fact]
    public void In_a_table_of_moves_they_are_asked_for_as_well()
    {
        var read = RoutineReader.Parse(new SourceFile("x.csv", "count,attacker,attack,technique,reaction,brief,value\r\n1,Bruno,swing-right,parry-down-left,head-drops,,\r\n,,,,,marks,3\r\n"), BundledLibrary.Book);
        Assert.Equal(3, read.Value!.Brief.Marks.Count);
        Assert.StartsWith("x.csv, line 3, marks: 3 marks were chosen", Assert.Single(read.Remarks).ToText(), StringComparison.Ordinal);
    }

    private static string Marks(string text, int seed) => string.Join(';', Read(text, seed).Value!.Marks);

    private static Read<Brief> Read(string text, int seed = 1) => BriefReader.Parse(new SourceFile("x.brief.json", text), BundledLibrary.Book, choice: MarkChoice.Usual with { Seed = seed });
}
