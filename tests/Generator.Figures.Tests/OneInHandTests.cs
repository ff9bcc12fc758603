using Generator.Domain;
using Generator.Figures.Bodies;
using Generator.Figures.Posing;

namespace Generator.Figures.Tests;

/// <summary>Whoever the hero holds, or is held by, while acting on somebody else is in the picture of the record by itself.</summary>
public sealed class OneInHandTests
{
    private static readonly Cards Own = new(Library.Poses, Library.Book);

    [Fact]
    public void Whoever_else_is_held_or_holds_is_drawn_and_the_hand_is_at_them()
    {
        var (seen, borne) = (0, 0);
        foreach (var technique in Library.Book.Techniques.Where(t => !t.TakesTwo))
        {
            var (left, right) = (technique.LeftNeed, technique.RightNeed);
            var holds = left == HandNeed.HoldingOther || right == HandNeed.HoldingOther;
            var isHeld = left == HandNeed.HeldByOther || right == HandNeed.HeldByOther;
            var bound = technique.Supported && !technique.Bounds.HasFlag(BoundSet.Free) && technique.Bounds != BoundSet.None;
            var card = Own.Pictured(technique)!;
            Assert.All(new[] { card.Start, card.Contact, card.End }.Where(f => f.Hero is not null), f => Assert.Equal(holds || isHeld || bound, f.Second is not null));
            if (bound)
            {
                Assert.True(Gripped(card.Start) && Gripped(card.Contact) && Gripped(card.End), $"{technique.Id}: nobody's hands are at the hero's shoulders");
                borne++;
                continue;
            }

            if (card.Contact is not { Hero: { } hero, Second: { } other })
            {
                continue;
            }

            seen++;
            var side = left is HandNeed.HoldingOther or HandNeed.HeldByOther ? Side.Left : Side.Right;
            var hand = hero[side == Side.Left ? Joint.LeftHand : Joint.RightHand];
            var reached = holds ? hand.To(other[Joint.Neck]) : new[] { Joint.LeftHand, Joint.RightHand }.Min(j => hand.To(other[j]));
            Assert.True(reached < 0.3, $"{technique.Id}: {reached:0.00} m from the hand to the one in hand");
        }

        Assert.True(seen >= 20, $"only {seen} of them");
        Assert.True(borne >= 5, $"only {borne} of them bound");
    }

    /// <summary>Each hand of the second one is at a shoulder of the hero's.</summary>
    private static bool Gripped(Frame frame) => frame is { Hero: { } hero, Second: { } other }
        && new[] { Joint.LeftHand, Joint.RightHand }.All(h => new[] { Joint.LeftShoulder, Joint.RightShoulder }.Min(s => other[h].To(hero[s])) < 0.15);

    [Fact]
    public void A_blow_with_the_lead_fist_begins_in_the_stance_that_leads_with_it()
    {
        var jab = Library.Book.Attacks.First(a => a.BaseId == "jab" && a.Side == Side.Right);
        var (attacker, hero) = (Own.Pictured(jab)!.Start.Attacker!, Own.Pictured(jab)!.Start.Hero!);
        Assert.True(attacker[Joint.RightAnkle].To(hero[Joint.Hips]) < attacker[Joint.LeftAnkle].To(hero[Joint.Hips]));
    }
}
