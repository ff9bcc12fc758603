using Generator.Domain;
using Generator.Domain.Sketches;
using Generator.Library.Files.Notes;
using Generator.Library.Reading;
using Generator.Library.Tests.Bundled;
using Generator.Library.Words;

namespace Generator.Library.Tests.Notes;

/// <summary>"Same", "again", "other": what they point back to, and what they say of the side.</summary>
public class RepeatTests
{
    [Theory]
    [InlineData("same again", null, false)]
    [InlineData("the same with the other hand", null, true)]
    [InlineData("and again", null, false)]
    [InlineData("once more", null, false)]
    [InlineData("same defence", Family.Defence, false)]
    [InlineData("the same kick on the other side", Family.Kick, true)]
    public void Words_that_only_repeat_are_known(string text, Family? family, bool isOther) => Assert.Equal(new RepeatWords(family, isOther), RepeatWords.Of(text));

    [Theory]
    [InlineData("hip throw again")]
    [InlineData("the other hand")]
    [InlineData("same hook")]
    [InlineData("")]
    public void Words_that_say_more_are_not(string text) => Assert.Null(RepeatWords.Of(text));

    [Fact]
    public void An_answer_is_that_of_the_attack_before_and_a_follow_up_what_was_done_just_before()
    {
        var moves = Read("Bruno: wide swing > low parry, cross\nBruno: same attack > same again, uppercut, same again");
        Assert.Equal(moves[0].Attack!.Ids, moves[2].Attack!.Ids);
        Assert.Equal(moves[0].Technique!.Ids, moves[2].Technique!.Ids);
        Assert.Equal(moves[3].Technique!.Ids, moves[4].Technique!.Ids);
    }

    [Fact]
    public void The_other_side_of_one_side_is_the_other_and_of_both_hangs_on_what_was_done_before()
    {
        var moves = Read("Bruno: left hook > left low parry, the same with the other hand\nBruno: the same from the other side > low parry, the same with the other hand");
        Assert.All(moves[1].Technique!.Ids, id => Assert.EndsWith("-right", id, StringComparison.Ordinal));
        Assert.All(moves[2].Attack!.Ids, id => Assert.EndsWith("-right", id, StringComparison.Ordinal));
        Assert.Equal(SketchFoot.Other, moves[3].Technique!.Foot);
        Assert.Equal(moves[2].Technique!.Ids, moves[3].Technique!.Ids);
    }

    [Fact]
    public void A_kind_goes_back_to_the_last_of_that_kind() =>
        Assert.Equal(["shin-kick-right", "shin-kick-left"], Read("Bruno: > shin kick, cross, the same kick")[2].Technique!.Ids);

    [Fact]
    public void It_is_told_what_is_repeated_and_on_which_line()
    {
        var read = NotesReader.Parse(new SourceFile("a.notes.txt", "Bruno: > shin kick\n\nBruno: > same again !"), BundledLibrary.Book).Value!;
        Assert.Equal(["again what line 1 says: \"shin kick\"", "must stay"], read.Understood.Single(u => u.Line == 3).Also);
    }

    [Fact]
    public void There_must_be_something_to_repeat() =>
        Assert.Contains("\"same again\"", NotesReader.Parse(new SourceFile("a.notes.txt", "Bruno: > same again"), BundledLibrary.Book).ToText(), StringComparison.Ordinal);

    [Fact]
    public void Rows_repeat_too()
    {
        var read = SketchReader.Parse(new SourceFile("a.csv", "attacker,attack,technique\nBruno,wide swing,low parry\nBruno,same again,same again\n"), BundledLibrary.Book);
        Assert.Equal(read.Value!.Sketch.Moves[0].Attack!.Ids, read.Value.Sketch.Moves[1].Attack!.Ids);
        Assert.Equal(read.Value.Sketch.Moves[0].Technique!.Ids, read.Value.Sketch.Moves[1].Technique!.Ids);
    }

    [Theory]
    [InlineData("runs away", "run-off")]
    [InlineData("gives up", "submit")]
    public void Who_only_ends_the_fight_attacks_nobody(string text, string technique)
    {
        var move = Assert.Single(Read("Bruno: " + text));
        Assert.True(move is { FollowsUp: true, Attack: null, IsSuffered: false });
        Assert.All(move.Technique!.Ids, id => Assert.StartsWith(technique, id, StringComparison.Ordinal));
    }

    [Fact]
    public void Two_names_before_one_colon_are_refused()
    {
        var read = NotesReader.Parse(new SourceFile("a.notes.txt", "Rab: swing > duck\nFin: jab > slip\nRab and Fin: both rush > steps aside"), BundledLibrary.Book);
        Assert.Contains("names 2 people", read.ToText(), StringComparison.Ordinal);
    }

    private static IReadOnlyList<SketchMove> Read(string text)
    {
        var read = NotesReader.Parse(new SourceFile("a.notes.txt", text), BundledLibrary.Book);
        Assert.True(read.IsGood, read.ToText());
        return read.Value.Sketch.Moves;
    }
}
