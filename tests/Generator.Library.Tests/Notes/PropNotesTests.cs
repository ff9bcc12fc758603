using Generator.Domain;
using Generator.Library.Files.Notes;
using Generator.Library.Reading;
using Generator.Library.Tests.Bundled;

namespace Generator.Library.Tests.Notes;

/// <summary>What notes say of who carries what in, and of what lies on the floor.</summary>
public class PropNotesTests
{
    private const string Move = "\n\nBruno: wide swing > duck";

    [Theory]
    [InlineData("Bruno: 12, 2 m, with a stick", "stick", "stick", PropHand.Right)]
    [InlineData("Bruno: 12, 2 m, carries a rolling pin in the left hand", "rolling pin", "short-stick", PropHand.Left)]
    [InlineData("Bruno: armed with an umbrella called the old brolly", "old brolly", "umbrella", PropHand.Right)]
    [InlineData("Bruno: with a broom in both hands, fast", "broom", "broom", PropHand.Both)]
    [InlineData("Bruno: with a broom", "broom", "broom", PropHand.Both)]
    public void Somebody_carries_it_in(string line, string name, string kind, PropHand hand)
    {
        var prop = Assert.Single(Read(line + Move).Sketch.Brief.Props);
        Assert.Equal(new PropPart(name, kind) { With = 0, Hand = hand }, prop);
    }

    [Fact]
    public void The_hero_may_hold_one_in_each_hand()
    {
        var brief = Read("Zora: the hero, with a tray in the left hand, with a stick" + Move).Sketch.Brief;
        Assert.Equal([("tray", -1, PropHand.Left), ("stick", -1, PropHand.Right)], brief.Props.Select(p => (p.Name, p.With!.Value, p.Hand)));
    }

    /// <summary>The mark is in the middle of a floor of 8 by 8 m; what lies farther off makes it larger, as somebody who opens there would.</summary>
    [Theory]
    [InlineData("Floor: a stick at 3, 1.5 m", 550, 400)]
    [InlineData("On the floor: the stick lies at 6 o'clock, 200 cm away", 400, 200)]
    [InlineData("the ground: a stick, 12, 1 m", 400, 500)]
    [InlineData("Floor: a stick at 12, 5 m", 600, 1100)]
    public void Something_lies_ready(string line, int x, int y)
    {
        var prop = Assert.Single(Read(line + Move).Sketch.Brief.Props);
        Assert.Equal((null, x, y), (prop.With, prop.X.Value, prop.Y.Value));
    }

    [Fact]
    public void Two_of_a_kind_are_told_apart()
    {
        var brief = Read("Bruno: with a stick\nFloor: a stick at 3, 1.5 m; a stick at 9, 1 m" + Move).Sketch.Brief;
        Assert.Equal(["stick", "second stick", "third stick"], brief.Props.Select(p => p.Name));
    }

    [Fact]
    public void What_was_understood_is_told()
    {
        var told = Read("Bruno: 12, 2 m, with a stick called cudgel\nFloor: a bucket at 3, 1.5 m" + Move).Understood;
        Assert.Contains(told, u => u.Line == 1 && u.As.Contains("carries cudgel (a stick) in the right hand"));
        Assert.Contains(told, u => u.Line == 2 && u.As.SequenceEqual(["a bucket on the floor at 3, 1.50 m from the mark"]));
    }

    /// <summary>A brief beside the notes may say it as well, which makes no second one.</summary>
    [Fact]
    public void A_brief_beside_them_may_say_it_too()
    {
        var brief = new Brief { Attackers = [new AttackerPart { Name = "Bruno" }], Props = [new PropPart("cudgel", "stick") { With = 0 }] };
        Assert.Equal(brief.Props, Read("Bruno: with a stick" + Move, brief).Sketch.Brief.Props);
        Assert.Equal(2, Read("Floor: a stick at 3, 2 m" + Move, brief).Sketch.Brief.Props.Count);
    }

    /// <summary>What somebody carries whom the brief does not know is nobody's, least of all the hero's.</summary>
    [Fact]
    public void Nobody_else_is_given_what_a_stranger_carries()
    {
        var brief = new Brief { Attackers = [new AttackerPart { Name = "Bruno" }] };
        var read = NotesReader.Parse(new SourceFile("x.notes.txt", "Zed: 4, 2 m, with a stick" + Move), BundledLibrary.Book, brief);
        Assert.False(read.IsGood);
        Assert.Contains("line 1, column 1: No attacker is called \"Zed\".", read.ToText(), StringComparison.Ordinal);
    }

    /// <summary>What is done with a thing is no word about who carries it.</summary>
    [Fact]
    public void A_move_with_a_prop_stays_a_move() =>
        Assert.Equal(2, Read("Bruno: with a stick\n\nBruno: downward blow > backs out of it\nBruno: holds the wrist").Sketch.Moves.Count(m => !m.IsGap));

    [Theory]
    [InlineData("Bruno: 12, with a stik", "line 1, column 12: The library knows no kind of prop called \"stik\".", "stick")]
    [InlineData("Bruno: carries a ladle", "line 1, column 8: The library knows no kind of prop called \"ladle\".", "a stick called ladle")]
    [InlineData("Bruno: with a broom in the left hand", "line 1, column 8: A broom is held in both hands.", "leave the hand out")]
    [InlineData("Bruno: with a stick in both hands", "A stick is held in one hand.", "left hand")]
    [InlineData("Bruno: with a stick, with a tray", "line 1, column 22: Bruno has \"stick\" in that hand.", "left hand")]
    [InlineData("Floor: a ladle at 3, 1.5 m", "The library knows no kind of prop called \"ladle\".", "Maybe")]
    [InlineData("Floor: a stick at 3", "line 1, column 8: Where \"stick\" lies is not said whole: the distance is missing.", "Floor: a stick at 3, 1.5 m")]
    [InlineData("Floor: a stick, 2 m", "the clock position is missing", "Floor: a stick at 3, 1.5 m")]
    [InlineData("Floor: a stick at the door, 2 m", "\"the door\" is no place on the floor.", "Maybe")]
    [InlineData("Floor: a stick at 3, 0.2 m", "\"0.2 m\" is not", "metres")]
    [InlineData("Floor: a stick at 3, 2 m, 3 m", "\"3 m\" says a second time", "Maybe")]
    public void What_is_wrong_is_told_where_it_stands(string line, string message, string maybe)
    {
        var read = NotesReader.Parse(new SourceFile("x.notes.txt", line + Move), BundledLibrary.Book);
        Assert.False(read.IsGood);
        Assert.Contains(message, read.ToText(), StringComparison.Ordinal);
        Assert.Contains(maybe, read.ToText(), StringComparison.Ordinal);
    }

    [Fact]
    public void What_lies_inside_a_thing_of_the_brief_is_told()
    {
        var brief = new Brief { Attackers = [new AttackerPart { Name = "Bruno" }], Floor = new FloorPlan { Obstacles = [new Obstacle("chest", new(500), new(350), new(100), new(100))] } };
        var read = NotesReader.Parse(new SourceFile("x.notes.txt", "Floor: a stick at 3, 1.5 m" + Move), BundledLibrary.Book, brief);
        Assert.Contains("line 1, column 8: \"stick\" lies inside \"chest\".", read.ToText(), StringComparison.Ordinal);
    }

    private static ReadSketch Read(string text, Brief? brief = null)
    {
        var read = NotesReader.Parse(new SourceFile("x.notes.txt", text), BundledLibrary.Book, brief);
        Assert.Equal(string.Empty, read.ToText());
        return read.Value!;
    }
}
