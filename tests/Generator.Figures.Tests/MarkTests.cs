using Generator.Domain;
using Generator.Figures.Bodies;
using Generator.Figures.Painting;
using Generator.Figures.Posing;

namespace Generator.Figures.Tests;

/// <summary>What the eye is led to is there: a ring is round something that somebody holds, and rays stand where two bodies meet.</summary>
public class MarkTests
{
    /// <summary>From a mark to the skin of either body; metres: a hand's breadth (common practice, no source).</summary>
    private const double At = 0.11;

    private static readonly Lazy<List<Card>> Drawn = new(() => [.. All()]);

    [Fact]
    public void A_ring_is_round_something_that_is_held() => None(MarkKind.Grip);

    [Fact]
    public void Rays_stand_where_two_bodies_meet() => None(MarkKind.Touch);

    /// <summary>Nobody can tell two records apart by one picture.</summary>
    [Fact]
    public void No_two_records_have_the_same_picture()
    {
        var cards = new Cards(Library.Poses, Library.Book);
        var drawn = Library.Book.Techniques.OrderBy(t => t.Side == Side.Left).DistinctBy(t => t.BaseId, StringComparer.Ordinal).Select(cards.Pictured)
            .Concat(Library.Book.Attacks.OrderBy(a => a.Side == Side.Left).DistinctBy(a => a.BaseId, StringComparer.Ordinal).Select(cards.Pictured))
            .Concat(Library.Book.Reactions.Select(cards.Pictured)).OfType<Card>().ToList();
        var same = drawn.GroupBy(c => CardPicture.Svg(c with { Name = string.Empty }, titled: false), c => c.Id, StringComparer.Ordinal).Where(g => g.Count() > 1).Select(g => string.Join(' ', g)).ToList();
        Assert.True(drawn.Count > 400, $"only {drawn.Count} of them");
        Assert.True(same.Count == 0, string.Join('\n', same));
    }

    /// <summary>A fist that closes on cloth is drawn as a hold, and stays on the skin.</summary>
    [Fact]
    public void A_hand_on_cloth_is_a_grip()
    {
        var grab = Library.Book.Attacks.First(a => a.BaseId == "lapel-grab");
        Assert.Contains(Library.Poses.Of(grab)!.Contact.Aims, a => a is { Gap: 0, Grips: true });
        Assert.All(Drawn.Value.Single(c => c.Id == grab.Id).Contact.Marks, m => Assert.Equal(MarkKind.Grip, m.Kind));
    }

    /// <summary>What is hidden from the usual side is looked at from where its shape says, and its mirror image from the other side.</summary>
    [Fact]
    public void A_shape_says_from_where_it_is_looked_at()
    {
        var cards = new Cards(Library.Poses, Library.Book);
        var (right, left) = (Reap(Side.Right), Reap(Side.Left));
        Assert.NotEqual(0, Library.Poses.Of(right)!.View);
        Assert.Equal(Library.Poses.Of(right)!.View, cards.Of(right)!.Round);
        Assert.NotEqual(CardPicture.Svg(cards.Of(right)!), CardPicture.Svg(cards.Of(right)! with { Round = 0 }));
        Assert.Equal((cards.Of(right)!.Round, Side.Left), (cards.Of(left)!.Round, cards.Of(left)!.Side));

        static Technique Reap(Side side) => Library.Book.Techniques.First(t => t.BaseId == "outside-reap" && t.Side == side);
    }

    private static void None(MarkKind kind)
    {
        var wrong = (from card in Drawn.Value
                     from frame in card.Shown
                     from mark in frame.Marks
                     where mark.Kind == kind
                     let off = Off(frame, mark.At)
                     where off > At
                     select $"{card.Id} {frame.When} {off:0.00}").Distinct().ToList();
        Assert.True(Drawn.Value.SelectMany(c => c.Shown).SelectMany(f => f.Marks).Count(m => m.Kind == kind) > 100);
        Assert.True(wrong.Count == 0, string.Join('\n', wrong));
    }

    /// <summary>How far the second nearest of all bodies in the picture is, and of what they have in their hands.</summary>
    private static double Off(Frame frame, Vec at)
    {
        var bodies = new[] { frame.Hero, frame.Attacker, frame.Second }.OfType<Figure>()
            .Select(f => Mannequin.Of(f).Select(c => Apart(c, at)).Append(at.To(f.HeadCentre) - (0.06 * f.Stature)).Min());
        var props = frame.Props.Select(p => Apart(new Capsule(p.Hand, p.Far, 0.03, 0.03, false, default), at));
        return bodies.Concat(props).Order().Skip(1).FirstOrDefault(double.MaxValue);
    }

    private static double Apart(Capsule part, Vec at)
    {
        var way = part.To - part.From;
        var share = way.Dot(way) < 1e-12 ? 0 : Math.Clamp((at - part.From).Dot(way) / way.Dot(way), 0, 1);
        return at.To(part.From + (way * share)) - part.FromRadius - ((part.ToRadius - part.FromRadius) * share);
    }

    private static IEnumerable<Card> All()
    {
        var cards = new Cards(Library.Poses, Library.Book);
        return Library.Book.Techniques.DistinctBy(t => t.BaseId, StringComparer.Ordinal).Select(cards.Pictured)
            .Concat(Library.Book.Attacks.DistinctBy(a => a.BaseId, StringComparer.Ordinal).Select(cards.Pictured))
            .Concat(Library.Book.Reactions.Select(cards.Pictured)).OfType<Card>();
    }
}
