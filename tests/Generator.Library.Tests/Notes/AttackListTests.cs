using Generator.Domain;
using Generator.Domain.Sketches;
using Generator.Library.Files.Notes;
using Generator.Library.Reading;
using Generator.Library.Tests.Bundled;

namespace Generator.Library.Tests.Notes;

/// <summary>Commas before the arrow part attacks, or say more of one; each is told.</summary>
public class AttackListTests
{
    [Fact]
    public void Attacks_one_behind_the_other_are_a_move_each_with_an_answer_each()
    {
        var read = Read("Bruno: jab, jab, low kick > parry, duck, shin check, uppercut");
        Assert.Equal(["jab", "jab", "low kick", null], read.Sketch.Moves.Select(m => m.Attack?.Text));
        Assert.Equal(["parry", "duck", "shin check", "uppercut"], read.Sketch.Moves.Select(m => m.Technique?.Text));
        Assert.Equal([false, false, false, true], read.Sketch.Moves.Select(m => m.FollowsUp));
        Assert.Contains(read.Understood, u => u.As.Any(m => m.StartsWith("3 attacks", StringComparison.Ordinal)));
    }

    [Fact]
    public void Where_less_is_answered_than_comes_the_first_are_open()
    {
        var moves = Read("Bruno: jab, cross, swing > parry, duck hurts his left knee until 40").Sketch.Moves;
        Assert.Equal(["jab", "cross", "swing"], moves.Select(m => m.Attack?.Text));
        Assert.Equal([null, "parry", "duck"], moves.Select(m => m.Technique?.Text));
        Assert.Equal([false, false, true], moves.Select(m => m.Hurts is not null));
    }

    [Theory]
    [InlineData("Bruno: shove, both hands > step back", "shove")]
    [InlineData("Bruno: gets up, wild swing > duck", "swing")]
    [InlineData("Bruno: bear hug, arms pinned > foot stomp", "bear-hug-front")]
    [InlineData("Bruno: overhand, big arc > duck", "overhand")]
    public void More_that_is_said_of_one_attack_makes_no_second(string line, string attack)
    {
        var move = Assert.Single(Read(line).Sketch.Moves);
        Assert.Contains(move.Attack!.Ids, id => id.StartsWith(attack, StringComparison.Ordinal));
    }

    [Theory]
    [InlineData("sells it")]
    [InlineData("sells it big")]
    [InlineData("big sell")]
    public void A_sell_of_any_kind_is_open_and_told(string sell)
    {
        var read = Read($"Bruno: swing > duck, cross ({sell})");
        Assert.Null(read.Sketch.Moves[1].Reaction);
        Assert.Contains(read.Understood, u => u.Text == sell && u.As.Contains("sold in any way"));
        Assert.Equal(Family.Setback, BundledLibrary.Book.Technique(Read("Bruno: swing > eats it").Sketch.Moves[0].Technique!.Ids[0]).Family);
    }

    [Theory]
    [InlineData("5'11", 180)]
    [InlineData("6'2\"", 188)]
    [InlineData("5 ft 4 in tall", 163)]
    public void A_height_may_be_in_feet_and_inches(string height, int centimetres) =>
        Assert.Equal(centimetres, Read($"Zora: the hero, {height}\nBruno: swing > duck").Sketch.Brief.Hero.Height.Value);

    [Fact]
    public void Furniture_stands_where_the_line_about_the_floor_says()
    {
        var read = Read("Floor: a padded and rated table at 6, 1.5 m; a stick at 3, 1 m; a table at 9, 2 m\nBruno: swing > duck");
        var (floor, things) = (read.Sketch.Brief.Floor, read.Sketch.Brief.Floor.Obstacles);
        Assert.Equal(["table", "other table"], things.Select(t => t.Name));
        Assert.All(things, t => Assert.Equal("table", t.Kind));
        Assert.Equal([true, false], things.Select(t => t.Padded && t.Rated));
        Assert.Equal((floor.MarkX.Value, floor.MarkY.Value - 150), Middle(things[0]));
        Assert.Equal((floor.MarkX.Value - 200, floor.MarkY.Value), Middle(things[1]));
        Assert.True(things[0].Width > things[0].Depth && things[1].Width < things[1].Depth);
        Assert.Equal("stick", Assert.Single(read.Sketch.Brief.Props).Name);
        Assert.Contains(read.Understood, u => u.As.Any(m => m.Contains("with its middle at 6", StringComparison.Ordinal)));
    }

    private static (int X, int Y) Middle(Obstacle thing) => (thing.X.Value + (thing.Width.Value / 2), thing.Y.Value + (thing.Depth.Value / 2));

    private static ReadSketch Read(string notes)
    {
        var read = NotesReader.Parse(new SourceFile("a.notes.txt", notes), BundledLibrary.Book);
        Assert.True(read.Value is not null, read.ToText());
        return read.Value!;
    }
}
