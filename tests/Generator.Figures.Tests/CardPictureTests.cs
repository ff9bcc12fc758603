using System.Globalization;
using System.Text.RegularExpressions;
using System.Xml.Linq;
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

    [GeneratedRegex(@"translate\([-.0-9]+ ([-.0-9]+)\)")]
    private static partial Regex Moved();

    /// <summary>The ends of straight lines and arcs, by their height.</summary>
    [GeneratedRegex(@"(?:[ML]|A[.0-9]+ [.0-9]+ [.0-9]+ [01] [01] )-?[.0-9]+ (-?[.0-9]+)")]
    private static partial Regex Places();
}
