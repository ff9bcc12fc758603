using Generator.Domain;
using Generator.Figures.Bodies;
using Generator.Figures.Painting;
using Generator.Figures.Posing;

namespace Generator.Figures.Tests;

/// <summary>A record that is done with a thing of the room shows one in its own picture.</summary>
public sealed class SurroundingsTests
{
    private static readonly Cards Own = new(Library.Poses, Library.Book);

    [Fact]
    public void Whatever_is_done_with_a_thing_at_somebodys_back_shows_it()
    {
        List<(ThingNeed? Need, Card? Card)> all =
        [
            .. Library.Book.Techniques.Select(t => (t.Uses, Own.Pictured(t))),
            .. Library.Book.Attacks.Select(a => (a.Uses, Own.Pictured(a))),
            .. Library.Book.Reactions.Select(r => (r.Uses, Own.Pictured(r))),
        ];
        var shown = all.Where(a => a.Need is { Where: ThingPlace.BehindAttacker or ThingPlace.BehindHero or ThingPlace.BesideHero }).ToList();
        Assert.True(shown.Count > 30, $"{shown.Count}");
        Assert.All(shown, s => Assert.Contains("#e4e4e4", CardPicture.Svg(s.Card!), StringComparison.Ordinal));
        Assert.All(shown.Where(s => s.Need!.Where == ThingPlace.BehindAttacker), s =>
        {
            var frame = s.Card!.Attacks ? s.Card.Start : s.Card.End;
            var ahead = s.Card.Contact.Hero is null || s.Card.Attacks;
            Assert.True(s.Need!.Use is ThingUse.ThrownOnto or ThingUse.Sit || (ahead ? frame.Thing!.Value.To < frame.Attacker![Joint.Hips].Z : frame.Thing!.Value.From > frame.Attacker![Joint.Hips].Z), s.Card.Id);
        });
        Assert.All(all.Where(a => a.Need is null), a => Assert.DoesNotContain("#e4e4e4", CardPicture.Svg(a.Card!), StringComparison.Ordinal));
    }

    /// <summary>Whoever sits down on something is over it, with the seat at its height or next to it, and has stood in front of it.</summary>
    [Fact]
    public void Nobody_sits_down_beside_it()
    {
        List<(ThingNeed? Need, Card? Card)> all = [.. Library.Book.Techniques.Select(t => (t.Uses, Own.Pictured(t))), .. Library.Book.Reactions.Select(r => (r.Uses, Own.Pictured(r)))];
        var sits = all.Where(a => a.Need?.Use == ThingUse.Sit).Select(a => a.Card!).ToList();
        Assert.NotEmpty(sits);
        Assert.All(sits, card =>
        {
            var (thing, sitting, standing) = (card.End.Thing!.Value, card.End.Attacker!, card.Start.Attacker!);
            Assert.InRange(sitting[Joint.Hips].Z, thing.From, thing.To);
            Assert.InRange(sitting[Joint.Hips].Y - (Skeleton.Thickness(Joint.Hips) * sitting.Stature) - thing.High, -0.001, 0.08);
            Assert.DoesNotContain(Enum.GetValues<Joint>(), j => standing[j].Z > thing.From && standing[j].Z < thing.To);
        });
    }

    /// <summary>Whoever is sent into somebody touches them and goes not through them.</summary>
    [Fact]
    public void Two_crash()
    {
        var crash = Library.Book.Reactions.Where(r => r.HitsSecond).Select(r => Own.Pictured(r)!).ToList();
        Assert.NotEmpty(crash);
        Assert.All(crash, card =>
        {
            var (one, other) = (card.Contact.Attacker!, card.Contact.Second!);
            Assert.InRange(Clearing.Depth(one, other), -0.02, 0);
        });
    }

    /// <summary>Whoever vaults has a part of them on the thing, and whoever is thrown onto one lies on it.</summary>
    [Fact]
    public void Nobody_hangs_in_the_air_over_one()
    {
        var (over, onto) = (0, 0);
        foreach (var technique in Library.Book.Techniques.Where(t => t.Uses is not null))
        {
            var (card, uses) = (Own.Pictured(technique)!, technique.Uses!);
            if (uses is { Use: ThingUse.Vault, Where: ThingPlace.OnTheWay })
            {
                var (thing, hero) = (card.Contact.Thing!.Value, card.Contact.Hero!);
                Assert.Equal(thing.High, hero.Lowest, 6);
                Assert.Contains(Enum.GetValues<Joint>(), j => hero[j].Z > thing.From && hero[j].Z < thing.To && hero[j].Y < thing.High + 0.15);
                over++;
            }

            if (uses.Use == ThingUse.ThrownOnto && card.End.Attacker is { } attacker && attacker.Lowest > 0.1)
            {
                Assert.Equal(card.End.Thing!.Value.High, attacker.Lowest, 1);
                onto++;
            }
        }

        Assert.True(over > 3 && onto > 0, $"{over} {onto}");
    }
}
