using Generator.Domain;
using Generator.Figures.Bodies;
using Generator.Figures.Painting;
using Generator.Figures.Posing;

namespace Generator.Figures.Tests;

/// <summary>A picture of a move that takes two shows both, the second as far round as in the fight.</summary>
public sealed class SecondPartnerTests
{
    private static readonly Cards Cards = new(Library.Poses, Library.Book);

    [Fact]
    public void Every_technique_for_two_shows_two()
    {
        var two = Library.Book.Techniques.Where(t => t.TakesTwo).ToList();
        Assert.True(two.Count > 12, $"{two.Count} techniques for two");
        foreach (var technique in two)
        {
            foreach (var frame in new[] { Cards.Of(technique)!.Contact, Cards.Of(technique)!.End })
            {
                var apart = Math.Abs(Round(frame));
                Assert.InRange(apart, (technique.Two!.FewestApart * 15) - 25, (technique.Two.MostApart * 15) + 25);
                Assert.InRange(frame.Second![Joint.Hips].Level.Length, 0.3, 3);
            }

            // An attacker wears a cap each.
            Assert.Equal(2, Drawing.Of(Cards.Of(technique)!, end: false).Body.Split("class=\"fc\"").Length - 1);
        }

        Assert.All(Library.Book.Techniques.Where(t => !t.TakesTwo), t => Assert.Null(Cards.Of(t)!.Contact.Second));
    }

    /// <summary>To the hero's left is to the left, to the right to the right, and the hand on that side goes to the second.</summary>
    [Theory]
    [InlineData(75)]
    [InlineData(120)]
    [InlineData(-75)]
    [InlineData(-120)]
    public void The_second_is_where_the_fight_has_them(int at)
    {
        var technique = Library.Book.Techniques.First(t => t.Id == "shove-both");
        var card = Cards.Of(technique, met: new Met(null, null, null) { SecondAt = at })!;
        Assert.InRange(Round(card.Contact), at - 15, at + 15);
        var (near, far) = at > 0 ? (Joint.LeftHand, Joint.RightHand) : (Joint.RightHand, Joint.LeftHand);
        Assert.True(card.Contact.Hero![near].To(card.Contact.Second![Joint.Chest]) < 0.45, $"{card.Contact.Hero[near].To(card.Contact.Second[Joint.Chest])} m from the second");
        Assert.True(card.Contact.Hero[far].To(card.Contact.Attacker![Joint.Chest]) < 0.45, $"{card.Contact.Hero[far].To(card.Contact.Attacker[Joint.Chest])} m from the first");
    }

    /// <summary>Degrees to the left of the first.</summary>
    private static double Round(Frame frame)
    {
        var (first, second) = (frame.Attacker![Joint.Hips], frame.Second![Joint.Hips]);
        var degrees = (Math.Atan2(second.X, second.Z) - Math.Atan2(first.X, first.Z)) * 180 / Math.PI;
        return degrees - (360 * Math.Round(degrees / 360));
    }
}
