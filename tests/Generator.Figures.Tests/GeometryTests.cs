using Generator.Domain;
using Generator.Figures.Bodies;
using Generator.Figures.Poses;
using Generator.Figures.Posing;

namespace Generator.Figures.Tests;

/// <summary>What pictures of all records must keep to, at both ends of every band and for small and tall people.</summary>
public class GeometryTests
{
    /// <summary>Hero and attacker; metres.</summary>
    private static readonly (double Hero, double Attacker)[] Statures = [(1.50, 1.50), (1.50, 2.00), (2.00, 1.50), (2.00, 2.00)];

    /// <summary>All cards at both ends of every band, worked out once.</summary>
    private static readonly Lazy<List<List<Card>>> All = new(() =>
        [.. from s in Statures from at in new[] { 0.0, 1.0 } select Library.Cards(s.Hero, s.Attacker, at).ToList()]);

    [Fact]
    public void Every_record_has_its_start_contact_and_end()
    {
        var cards = new Cards(Library.Poses, Library.Book);
        Assert.All(Library.Book.Techniques, t => Assert.True(cards.Of(t) is { Contact.Hero: not null, Start.Hero: not null, End.Hero: not null }, t.Id));
        Assert.All(Library.Book.Attacks, a => Assert.True(cards.Of(a) is { Contact.Attacker: not null, Start.Attacker: not null, End.Attacker: not null }, a.Id));
        Assert.All(Library.Book.Reactions, r => Assert.True(cards.Of(r) is { Contact.Attacker: not null, Start.Attacker: not null, End.Attacker: not null }, r.Id));
    }

    /// <summary>Where a picture leaves somebody lying, one of the reactions that suit the technique lays them down: not one that sits, kneels or stands.</summary>
    [Fact]
    public void Nobody_is_drawn_lying_after_what_nobody_lies_down_from()
    {
        var cards = new Cards(Library.Poses, Library.Book);
        var lying = Library.Book.Reactions.Where(r => r.Id != "sits-down" && (r.Posture?.IsLying() == true || r.Posture is Posture.Out)).Select(r => r.Id).ToHashSet(StringComparer.Ordinal);
        var drawn = Library.Book.Techniques.Where(t => t.Reactions.Count > 0 && !t.Needs.Contains(Posture.Pinned) && !Lies(cards.Of(t)?.Start) && Lies(cards.Of(t)?.End)).ToList();
        Assert.True(drawn.Count > 40 && lying.Count > 5);
        var wrong = drawn.Where(t => !t.Reactions.Any(lying.Contains)).Select(t => t.Id).ToList();
        Assert.True(wrong.Count == 0, string.Join(' ', wrong));
    }

    private static bool Lies(Frame? frame) => frame?.Attacker is { } body && body[Joint.Crown].Y < 0.5 && body[Joint.Hips].Y < 0.4 && body[Joint.Chest].Y < 0.4;

    [Fact]
    public void Nobody_is_below_the_floor()
    {
        var wrong = All.Value.SelectMany(Library.Figures)
            .Where(f => Enum.GetValues<Joint>().Min(j => f.Figure[j].Y) < -0.01)
            .Select(f => $"{f.Card.Id} {f.Frame.When} {Enum.GetValues<Joint>().MinBy(j => f.Figure[j].Y)} {Enum.GetValues<Joint>().Min(j => f.Figure[j].Y):0.00}").Distinct().ToList();
        Assert.True(wrong.Count == 0, string.Join('\n', wrong));
    }

    [Fact]
    public void Knees_bend_the_way_the_foot_points()
    {
        var wrong = All.Value.SelectMany(Library.Figures)
            .SelectMany(f => Enum.GetValues<Side>().Select(s => (f.Card.Id, f.Frame.When, Side: s, Bend: Bend(f.Figure, s))))
            .Where(b => b.Bend < -0.05).Select(b => $"{b.Id} {b.When} {b.Side} {b.Bend:0.00}").Distinct().ToList();
        Assert.True(wrong.Count == 0, string.Join('\n', wrong));
    }

    /// <summary>How far the knee lies before the line from hip to ankle, in the direction of the foot; share of the leg.</summary>
    private static double Bend(Figure figure, Side side)
    {
        var (hip, knee, ankle, ball) = Skeleton.Leg(side);
        var way = (figure[ankle] - figure[hip]).Unit;
        var foot = (figure[ball] - figure[ankle]).Unit.Beside((figure[ankle] - figure[knee]).Unit);
        if (foot.Length < 0.5)
        {
            // A pointed foot says little of where the knee faces.
            return 0;
        }

        foot = foot.Unit;
        return (figure[knee] - figure[hip]).Beside(way).Dot(foot) / figure.Stature;
    }
}
