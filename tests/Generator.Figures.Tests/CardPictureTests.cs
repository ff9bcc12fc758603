using System.Globalization;
using System.Text.RegularExpressions;
using System.Xml.Linq;
using Generator.Domain;
using Generator.Figures.Painting;
using Generator.Figures.Posing;

namespace Generator.Figures.Tests;

/// <summary>What is drawn stays on its card, under the name.</summary>
public sealed partial class CardPictureTests
{
    /// <summary>Where the name of the record ends.</summary>
    private const double UnderTheName = 20;

    [Fact]
    public void Nobody_leaves_the_card_or_covers_its_name()
    {
        var drawn = Library.Cards(Cards.UsualStature, Cards.UsualStature, 0.5).ToList();
        Assert.True(drawn.Count > 400, $"{drawn.Count} cards");
        var high = 0;
        foreach (var card in drawn)
        {
            var svg = XElement.Parse(CardPicture.Svg(card));
            var height = double.Parse(svg.Attribute("height")!.Value, CultureInfo.InvariantCulture);
            foreach (var group in svg.Elements().Where(e => e.Name.LocalName == "g"))
            {
                var down = double.Parse(Moved().Match(group.Attribute("transform")!.Value).Groups[1].Value, CultureInfo.InvariantCulture);
                var places = group.Descendants().Attributes("d").SelectMany(d => Places().Matches(d.Value)).Select(m => down + double.Parse(m.Groups[1].Value, CultureInfo.InvariantCulture)).ToList();
                Assert.True(places.Count > 20, card.Id);
                Assert.True(places.Min() > UnderTheName && places.Max() < height, $"{card.Id}: from {places.Min()} to {places.Max()} on a card of {height}");
                high += places.Min() - down < -205 ? 1 : 0;
            }
        }

        Assert.True(high > 0, "nobody is thrown high");
    }

    /// <summary>A ring says that a hand closes: a block or a parry that lets nobody be held has none.</summary>
    [Fact]
    public void Only_a_defence_that_holds_shows_a_grip()
    {
        var cards = new Cards(Library.Poses, Library.Book);
        var defences = Library.Book.Techniques.Where(t => t.Family == Family.Defence).ToList();
        Assert.True(defences.Count > 100, $"{defences.Count} defences");
        Assert.Empty(defences.Where(t => !Holds(t) && cards.Of(t)!.Contact.Marks.Any(m => m.Kind == MarkKind.Grip)).Select(t => t.Id));
        Assert.Contains(defences, t => cards.Of(t)!.Contact.Marks.Any(m => m.Kind == MarkKind.Grip));

        static bool Holds(Technique t) => new[] { t.LeftEnd, t.RightEnd }.Contains(HandEnd.Holding) || new[] { t.LeftNeed, t.RightNeed }.Any(n => n is HandNeed.Holding or HandNeed.HoldingOther or HandNeed.TakeHold);
    }

    /// <summary>Throws that are taught apart are not drawn alike.</summary>
    [Theory]
    [InlineData("hip-throw", "shoulder-throw")]
    [InlineData("pull-past", "swing-through-pull")]
    [InlineData("swing-through-pull", "swing-through-spin")]
    [InlineData("swing-through-spin", "turn-away-throw")]
    [InlineData("pull-past", "swing-into")]
    public void Throws_that_differ_look_different(string one, string other)
    {
        var cards = new Cards(Library.Poses, Library.Book);
        Assert.NotEqual(Drawn(one), Drawn(other));

        string Drawn(string id) => CardPicture.Svg(cards.Of(Library.Book.Techniques.First(t => t.BaseId == id))! with { Name = "x" });
    }

    [GeneratedRegex(@"translate\([-.0-9]+ ([-.0-9]+)\)")]
    private static partial Regex Moved();

    /// <summary>The ends of straight lines and arcs, by their height.</summary>
    [GeneratedRegex(@"(?:[ML]|A[.0-9]+ [.0-9]+ [.0-9]+ [01] [01] )-?[.0-9]+ (-?[.0-9]+)")]
    private static partial Regex Places();
}
