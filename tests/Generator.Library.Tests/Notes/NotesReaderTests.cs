using Generator.Domain;
using Generator.Domain.Sketches;
using Generator.Library.Files.Notes;
using Generator.Library.Reading;
using Generator.Library.Tests.Bundled;

namespace Generator.Library.Tests.Notes;

public class NotesReaderTests
{
    private const string Cinema = """
        # Behind the cinema
        Zora: the hero, right lead, 1.70 m
        Bruno: 12, 2 m
        Wanda: 2:30, fast, late

        Bruno: wide swing > low parry, elbow to the face
        Wanda: comes in > push kick
        Bruno: > uppercut (head back)
        ... 4
        Bruno: takes her wrist
        Wanda from behind: rushes > a kick
        Bruno: > frees the wrist, two to the face, a throw !
        pause
        Wanda: flying punch > steps aside? @20-24
        """;

    [Fact]
    public void Notes_become_a_sketch()
    {
        var sketch = Read(Cinema).Sketch;
        Assert.Equal("Behind the cinema", sketch.Brief.Title);
        Assert.Equal(("Zora", Side.Right, 170), (sketch.Brief.Hero.Name, sketch.Brief.Hero.Lead, sketch.Brief.Hero.Height.Value));
        Assert.Equal(["Bruno", "Wanda"], sketch.Brief.Attackers.Select(a => a.Name));
        Assert.Equal(new Placement(default, new Centimetres(200), HalfCounts.Zero), sketch.Placements[0]);
        Assert.Equal((5, 300, true), (sketch.Placements[1]!.Bearing.HalfHours, sketch.Brief.Attackers[1].Speed, sketch.Placements[1]!.Entrance > HalfCounts.Zero));
        Assert.Equal([6, 6, 7, 8, 9, 10, 11, 12, 12, 12, 12, 13, 14], sketch.Moves.Select(m => m.Line));
    }

    [Fact]
    public void People_may_open_on_a_knee()
    {
        var read = Read("Zora: the hero, on the right knee\nBruno: 12, kneeling\n\nBruno: punch to the stomach from the knee > turns aside on the knees and holds the arm").Sketch;
        Assert.Equal((Side.Right, Side.Left), (read.Brief.Hero.Kneels!.Value, read.Brief.Attackers[0].Kneels!.Value));
        Assert.Equal(new Placement(default, AttackerPart.NearestOpening, HalfCounts.Zero), read.Placements[0]);
        Assert.Equal(HalfCounts.Zero, read.Brief.Attackers[0].Entrance);
        Assert.Contains("knee-punch-right", read.Moves[0].Attack!.Ids);
    }

    [Fact]
    public void What_is_not_said_is_open()
    {
        var moves = Read(Cinema).Sketch.Moves;
        Assert.Equal(["swing-right", "swing-left"], moves[0].Attack!.Ids);
        Assert.Null(moves[0].Reaction);
        Assert.Null(moves[0].Count);
        Assert.False(moves[0].FollowsUp);
        Assert.True(moves[1].FollowsUp);
        Assert.Contains("elbow-across-right", moves[1].Technique!.Ids);
        Assert.Equal(["head-back"], moves[3].Reaction!.Ids);
        Assert.Equal(4, moves[4].Open);
        Assert.Null(moves[5].Technique);
        Assert.False(moves[5].FollowsUp);
        Assert.Contains(moves[5].Attack!.Ids, id => id.StartsWith("wrist-grab-same", StringComparison.Ordinal));
        Assert.Equal(new Bearing(12), moves[6].From);
        Assert.All(moves[6].Technique!.Ids, id => Assert.Equal(Family.Kick, BundledLibrary.Book.Technique(id).Family));
    }

    [Fact]
    public void Marks_counts_and_numbers_are_read()
    {
        var moves = Read(Cinema).Sketch.Moves;
        Assert.Equal(moves[8].Technique!.Ids, moves[9].Technique!.Ids);
        Assert.Equal((Firmness.Fixed, Family.Throw), (moves[10].Technique!.Firmness, BundledLibrary.Book.Technique(moves[10].Technique!.Ids[0]).Family));
        Assert.All(moves[11].Technique!.Ids, id => Assert.True(BundledLibrary.Book.Technique(id).IsStoryPause));
        Assert.Null(moves[11].Attacker);
        Assert.Equal(Firmness.Wish, moves[12].Technique!.Firmness);
        Assert.Equal((new HalfCounts(38), new HalfCounts(46)), moves[12].Count);
    }

    [Fact]
    public void Every_word_is_told_as_it_was_taken()
    {
        var understood = Read(Cinema).Understood;
        Assert.Contains(understood, u => u is { Line: 6, Move: 1, Text: "wide swing" } && u.As.Contains("swing-left"));
        Assert.Contains(understood, u => u is { Line: 7, Text: "push kick", IsGuess: false });
        Assert.Contains(understood, u => u is { Line: 12, Text: "frees the wrist", IsGuess: true });
        Assert.Equal(understood.OrderBy(u => u.Line).Select(u => u.Line), understood.Select(u => u.Line));
    }

    [Fact]
    public void All_that_is_wrong_is_told_at_once_with_line_and_column()
    {
        var read = NotesReader.Parse(new SourceFile("a.notes.txt", "Bruno: swing > xqzzy, duck @zwei\nWanda from nowhere: > jab (zzzq)\n... many\n"), BundledLibrary.Book);
        Assert.Null(read.Value);
        Assert.Equal(
            [(1, "column 16"), (1, "column 29"), (2, "column 12"), (2, "column 28"), (3, "column 5")],
            read.Problems.Select(p => (p.Line, p.Field)));
        Assert.All(read.Problems, p => Assert.StartsWith("Maybe ", p.Maybe, StringComparison.Ordinal));
    }

    [Theory]
    [InlineData("", "The notes name no attacker.")]
    [InlineData("# only a title\n", "The notes name no attacker.")]
    [InlineData("Bruno: 12, 2 m\n", "The notes hold no move.")]
    [InlineData("A: > jab\nB: > jab\nC: > jab\nD: > jab\nE: > jab\nF: > jab\nG: > jab\nH: > jab\nI: > jab\n", "The notes name 9 attackers; there must be 1 to 8.")]
    public void Notes_without_a_fight_are_refused(string text, string message)
    {
        var read = NotesReader.Parse(new SourceFile("a.notes.txt", text), BundledLibrary.Book);
        Assert.Contains(message, read.ToText(), StringComparison.Ordinal);
    }

    [Fact]
    public void A_brief_beside_names_the_cast()
    {
        var brief = new Brief { Attackers = [new AttackerPart { Name = "Bruno", Distance = new Centimetres(250), Bearing = new Bearing(3) }] };
        var good = NotesReader.Parse(new SourceFile("a.notes.txt", "bruno: swing > duck"), BundledLibrary.Book, brief);
        Assert.Equal(new Placement(new Bearing(3), new Centimetres(250), HalfCounts.Zero), good.Value!.Sketch.Placements[0]);
        Assert.Same(brief, good.Value.Sketch.Brief);
        var bad = NotesReader.Parse(new SourceFile("a.notes.txt", "Brunno: swing > duck"), BundledLibrary.Book, brief);
        Assert.Contains("Maybe Bruno is meant.", bad.ToText(), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("a.txt", "Bruno: swing > duck", true)]
    [InlineData("-", "# title\n\nBruno from 2:30: swing > duck", true)]
    [InlineData("-", "count,attacker,technique\n1,A,duck", false)]
    [InlineData("-", "{ \"moves\": [] }", false)]
    [InlineData("a.csv", "a: b", false)]
    public void Notes_are_known_by_their_form(string name, string text, bool notes) => Assert.Equal(notes, NotesReader.IsNotes(new SourceFile(name, text)));

    private static ReadSketch Read(string text)
    {
        var read = NotesReader.Parse(new SourceFile("a.notes.txt", text), BundledLibrary.Book);
        Assert.True(read.IsGood, read.ToText());
        return read.Value;
    }
}
