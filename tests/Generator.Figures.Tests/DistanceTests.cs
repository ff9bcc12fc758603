using Generator.Domain;
using Generator.Figures.Bodies;
using Generator.Figures.Posing;

namespace Generator.Figures.Tests;

/// <summary>How far apart two of unlike stature stand in a picture: as the rules have it.</summary>
public class DistanceTests
{
    /// <summary>A band is in shares of the limb of whoever does it; where nobody may be touched, of the longer of both.</summary>
    [Theory]
    [InlineData("push-kick", 1.50, 2.00, 1.2 * 0.49 * 1.50)]
    [InlineData("push-kick", 2.00, 1.50, 1.2 * 0.49 * 2.00)]
    [InlineData("cross", 1.50, 2.00, 1.75 * 0.39 * 2.00)]
    [InlineData("cross", 2.00, 1.50, 1.75 * 0.39 * 2.00)]
    public void A_band_goes_by_the_limb_of_whoever_does_it(string id, double hero, double attacker, double far) =>
        Assert.Equal(far, Contact(id, hero, attacker, 1).Attacker![Joint.Hips].Level.Length, 6);

    private static Frame Contact(string id, double hero, double attacker, double at)
    {
        var technique = Library.Book.Techniques.First(t => t.BaseId == id && t.Side == Library.Poses.Of(t)!.Side);
        return new Cards(Library.Poses, Library.Book, hero, attacker).Of(technique, at)!.Contact;
    }
}
