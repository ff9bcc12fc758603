using Generator.Domain;
using Generator.Figures.Bodies;
using Generator.Figures.Painting;
using Generator.Figures.Posing;

namespace Generator.Figures.Tests;

/// <summary>What is in a hand is in the picture: in the right hand, as long as it is, and meeting what it is aimed at.</summary>
public sealed class HandPropTests
{
    private static readonly Cards Cards = new(Library.Poses, Library.Book);

    [Fact]
    public void What_a_record_is_done_with_is_in_its_hand_and_as_long_as_its_kind()
    {
        var seen = 0;
        foreach (var (id, need, byHero, card) in Armed().Where(a => a.Need is { Holder: not PropHolder.Floor, Then: not PropFate.Throws } && (a.ByHero || a.Need.Use is not (PropUse.Throw or PropUse.Wrap))))
        {
            var holder = byHero ? card.Contact.Hero : card.Contact.Attacker;
            var prop = card.Contact.Props.FirstOrDefault(p => holder is not null && (need.Hand is not { } hand || hand == PropHand.Both ? Hands(holder) : [holder[Skeleton.Arm(hand == PropHand.Left ? Side.Left : Side.Right).Tip]]).Any(h => h.To(p.Hand) < 1e-6));
            Assert.True(prop is not null, $"{id}: nothing in the hand");
            Assert.True(prop!.Kind.Uses.Contains(need.Use), $"{id}: {prop.Kind.Id}");
            Assert.Equal(prop.Kind.Length.Value / 100.0, prop.Hand.To(prop.Far), 6);
            seen++;
        }

        Assert.True(seen > 50, $"{seen} records with a prop");

        static IEnumerable<Vec> Hands(Figure body) => [body[Joint.LeftHand], body[Joint.RightHand]];
    }

    /// <summary>The far end, and not the fist, is where rays are drawn: at a touch on the body, at a planned miss so far before it.</summary>
    [Theory]
    [InlineData("prop-hit-flank", MarkKind.Touch)]
    [InlineData("prop-sweep-legs", MarkKind.Touch)]
    [InlineData("prop-swing-over", MarkKind.Miss)]
    public void The_far_end_meets(string id, MarkKind kind)
    {
        foreach (var technique in Library.Book.Techniques.Where(t => t.BaseId == id))
        {
            var contact = Cards.Of(technique)!.Contact;
            var mark = Assert.Single(contact.Marks);
            Assert.Equal(kind, mark.Kind);
            Assert.Equal(0, mark.At.To(Assert.Single(contact.Props).Far), 6);
            Assert.InRange(contact.Missing, 0, 0.05);
        }
    }

    /// <summary>With a longer thing they stand farther apart by as much.</summary>
    [Fact]
    public void Whoever_reaches_with_it_stands_farther_off_by_its_length()
    {
        var technique = Library.Book.Techniques.First(t => t.BaseId == "prop-hit-flank" && t.Side == Side.Right);
        var (stick, umbrella) = (Apart("stick"), Apart("umbrella"));
        Assert.Equal(0.05, umbrella - stick, 2);

        double Apart(string kind)
        {
            IReadOnlyList<Holding> held = [new Holding(Library.Book.Props.Find(kind)!, PropHand.Right, ByHero: true)];
            return Cards.Of(technique, met: new Met(null, null, null) { Held = held, Left = held })!.Contact.Attacker![Joint.Hips].Z;
        }
    }

    /// <summary>What somebody only carries is in the picture of any other move, until it is gone.</summary>
    [Fact]
    public void Whatever_is_carried_is_drawn_as_long_as_it_is_held()
    {
        var technique = Library.Book.Techniques.First(t => t.BaseId == "push-kick");
        var club = new Holding(Library.Book.Props.Find("stick")!, PropHand.Left, ByHero: false);
        var card = Cards.Of(technique, met: new Met(null, null, null) { Held = [club], Left = [] })!;
        Assert.Equal(0, Assert.Single(card.Contact.Props).Hand.To(card.Contact.Attacker![Joint.LeftHand]), 6);
        Assert.Empty(card.End.Props);
        Assert.Contains(PropPicture.Lines, Drawing.Of(card, end: false).Body, StringComparison.Ordinal);
        Assert.DoesNotContain(PropPicture.Lines, Drawing.Of(card, end: true).Body, StringComparison.Ordinal);
    }

    /// <summary>Nothing that is carried goes through the floor.</summary>
    [Fact]
    public void No_far_end_is_under_the_floor() =>
        Assert.DoesNotContain(Armed().SelectMany(a => new[] { a.Card.Start, a.Card.Contact, a.Card.End }).SelectMany(f => f.Props), p => p.Far.Y < 0);

    /// <summary>Every kind has a drawing of its own, which goes from the hand to its far end.</summary>
    [Fact]
    public void Every_kind_looks_like_no_other()
    {
        var kinds = Library.Book.Props.Kinds;
        Assert.Equal(kinds.Count, kinds.Select(k => PropPicture.Lying(k, 0, 100)).Distinct(StringComparer.Ordinal).Count());
        Assert.All(kinds, k => Assert.True(k.Drawn.Count > 0 && k.Drawn.SelectMany(o => o).Max(p => p.Along) == 1, k.Id));
    }

    private static IEnumerable<(string Id, PropNeed Need, bool ByHero, Card Card)> Armed() =>
        Library.Book.Techniques.Where(t => t.Prop is not null).Select(t => (t.Id, t.Prop!, t.Prop!.Holder == PropHolder.Hero, Cards.Of(t)!))
            .Concat(Library.Book.Attacks.Where(a => a.Prop is not null).Select(a => (a.Id, a.Prop!, false, Cards.Of(a)!)));

    /// <summary>Who reacts with something in the hand has it in the picture; who lets go of it has it only before.</summary>
    [Fact]
    public void What_a_reaction_needs_in_the_hand_is_drawn()
    {
        var some = Library.Book.Reactions.Where(r => r.Prop is not null).ToList();
        Assert.Contains(some, r => r.Prop!.Then == PropFate.Drops);
        Assert.Contains(some, r => r.Prop!.Then == PropFate.Keeps);
        Assert.All(some, r =>
        {
            var card = Cards.Of(r)!;
            Assert.Equal(0, Assert.Single(card.Start.Props).Hand.To(card.Start.Attacker![Joint.RightHand]), 6);
            Assert.Equal(r.Prop!.Then == PropFate.Keeps ? 1 : 0, card.Contact.Props.Count);
            Assert.Equal(r.Prop!.Then == PropFate.Keeps ? 1 : 0, card.End.Props.Count);
        });
    }
}
