using Generator.Domain;
using Generator.Figures.Bodies;
using Generator.Figures.Poses;
using Generator.Library;

namespace Generator.Figures.Posing;

/// <summary>Makes the cards of records for two statures. Whoever does it stands at the origin and looks along the line to the other.</summary>
public sealed class Cards
{
    /// <summary>Mean stature of men (ANSUR II 2012), metres.</summary>
    public const double UsualStature = 1.756;

    /// <summary>Nobody is drawn farther off than this; share of stature.</summary>
    private const double Farthest = 1.0;

    private const double ArmShare = 0.39;

    private const double LegShare = 0.49;

    private readonly PoseBook poses;
    private readonly Book book;
    private readonly (double Doer, double Other) statures;

    /// <param name="poses">Poses and shapes.</param>
    /// <param name="book">The library.</param>
    /// <param name="hero">Stature of the hero; metres.</param>
    /// <param name="attacker">Stature of the attacker; metres.</param>
    public Cards(PoseBook poses, Book book, double hero = UsualStature, double attacker = UsualStature)
    {
        (this.poses, this.book, statures) = (poses, book, (hero, attacker));
    }

    /// <summary>Metres: hero and attacker.</summary>
    public (double Hero, double Attacker) Statures => statures;

    /// <summary>The same records for two others.</summary>
    /// <param name="hero">Stature of the hero; metres.</param>
    /// <param name="attacker">Stature of the attacker; metres.</param>
    public Cards Of(double hero, double attacker) => new(poses, book, hero, attacker);

    /// <summary>The hero in a stance, over the mark.</summary>
    public Figure Of(Stance stance) => Kinematics.Of(poses.Poses[poses.Stances[stance]], statures.Doer);

    /// <summary>An attacker in a posture, over the mark.</summary>
    public Figure Of(Posture posture) => Kinematics.Of(poses.Poses[poses.Postures[posture]], statures.Other);

    /// <summary>An attacker on the way, over the mark.</summary>
    /// <param name="foot">The foot in front.</param>
    public Figure Walking(Side foot) => Kinematics.Of(foot == Side.Right ? poses.Walking : poses.Walking.Mirrored, statures.Other);

    /// <summary>The card of a technique at a place in its band; null when no shape fits it.</summary>
    /// <param name="technique">The record.</param>
    /// <param name="at">0 at the near end of the band, 1 at the far end.</param>
    /// <param name="met">What it meets in a fight.</param>
    public Card? Of(Technique technique, double at = 0.5, Met met = default)
    {
        if (poses.Of(technique) is not { } shape)
        {
            return null;
        }

        var flips = technique.Side is { } side ? side != shape.Side : technique.TakesTwo && met.SecondAt < 0;
        var seen = flips ? met with { SecondAt = -met.SecondAt, Attack = met.Attack is { Side: not null } attack ? Mirror.Of(attack) : met.Attack, Held = Mirrored(met.Held), Left = Mirrored(met.Left) } : met;
        var told = new TechniqueCard(poses, book, statures, flips ? Mirror.Of(technique) : technique, shape, at, seen);
        var from = told.Second is { } apart ? apart < 0 ? Side.Left : Side.Right : shape.Side;
        var round = told.Second is { } both ? 90 - (Math.Abs(both) / 2.0) : shape.View;
        return Turned(new Card(technique.Id, technique.Name, from, told.Start, told.Contact, told.End, shape.ShowsStart) { ByAttacker = technique.Family == Family.Setback, Round = round }, flips);
    }

    /// <summary>The card of an attack at a place in its band; null when no shape fits it.</summary>
    /// <param name="attack">The record.</param>
    /// <param name="at">0 at the near end of the band, 1 at the far end.</param>
    /// <param name="held">Who holds what; null for what the attack is done with.</param>
    public Card? Of(Attack attack, double at = 0.5, IReadOnlyList<Holding>? held = null)
    {
        if (poses.Of(attack) is not { } shape)
        {
            return null;
        }

        var flips = attack.Side is { } side && side != shape.Side;
        var record = flips ? Mirror.Of(attack) : attack;
        var hero = poses.Poses[poses.Stances[record.HeroStances.Members.First()]];
        var guard = poses.Poses[poses.Postures[Posture.Ready]];
        var holds = held ?? Grasp.Of(book.Props, attack.Prop);
        holds = flips ? Mirrored(holds)! : holds;
        var with = Arming.Of(record.Prop, byHero: false, holds);
        var contact = Instant(shape.Contact) with { Distance = shape.Contact.Distance ?? (DistanceOf(record.Contact, at, record.NonContact, (statures.Other, statures.Doer)) + Longer(with, statures)) };
        contact = contact with { Aims = Arming.Aims(contact.Aims, with) };
        var first = Staging.Of(PoseOf(contact.Pose, guard), PoseOf(contact.Other, hero), contact, (statures.Other, statures.Doer));
        var start = Instant(shape.Start ?? new Instant { Distance = contact.Distance + 0.2 }) with { Aims = [], OtherAims = [] };
        var before = Staging.Of(PoseOf(start.Pose, guard), PoseOf(start.Other, hero), start with { Distance = start.Distance ?? contact.Distance }, (statures.Other, statures.Doer));
        var missed = Staging.Of(poses.Poses[poses.Postures[record.MissPosture]], hero, contact with { Aims = [], OtherAims = [] }, (statures.Other, statures.Doer));
        var after = record.IsGrab ? first : missed;
        return Turned(
            new Card(attack.Id, attack.Name, shape.Side, Frame("start", before), Frame("contact", first, contact.Aims, record.Prop), Frame(record.IsGrab ? "held" : "after a miss", after), shape.ShowsStart) { Attacks = true, ByAttacker = true, Round = shape.View }, flips);

        Instant Instant(Instant instant) => instant with { Turn = instant.Turn ?? 0, OtherTurn = instant.OtherTurn ?? Bearing(record.From) };
        Frame Frame(string when, Pair pair, IReadOnlyList<Aim>? aims = null, PropNeed? thrown = null) =>
            Arming.Of(new Frame(when, pair.Other, pair.Doer, pair.Missing) { Marks = pair.Marks, Gap = Aiming.Gap(pair.Doer, pair.Other, aims) }, holds, [], aims ?? [], thrown is { Then: PropFate.Throws } ? thrown : null);
    }

    /// <summary>What a prop adds to a distance, as a share of the mean stature.</summary>
    internal static double Longer(Holding? with, (double Doer, double Other) statures) => with is null ? 0 : with.Length * 2 / (statures.Doer + statures.Other);

    /// <summary>The card of a reaction, with the hero where its shape says what the hero does; null when no shape fits it.</summary>
    public Card? Of(Reaction reaction)
    {
        if (poses.Of(reaction) is not { } shape)
        {
            return null;
        }

        return new ReactionCard(poses, statures, reaction, shape, book.Props).Card;
    }

    /// <summary>The card of a technique by itself, with the thing of the room that it is done with and whoever the hero holds meanwhile.</summary>
    public Card? Pictured(Technique technique) => Of(technique) is { } card
        ? Surroundings.Usual(book.Things, technique.Uses, OneInHand.Into(card, technique, poses, statures.Other), heroLeads: true, technique.Travel is { } travel && IsBackwards(travel))
        : null;

    /// <inheritdoc cref="Pictured(Technique)"/>
    public Card? Pictured(Attack attack) => Of(attack) is { } card ? Surroundings.Usual(book.Things, attack.Uses, card, heroLeads: false) : null;

    /// <inheritdoc cref="Pictured(Technique)"/>
    public Card? Pictured(Reaction reaction) => Of(reaction) is { } card ? Surroundings.Usual(book.Things, reaction.Uses, card, heroLeads: false) : null;

    /// <summary>The hero goes there with the back first.</summary>
    public static bool IsBackwards(Travel travel) => Math.Abs(travel.Heads.From + travel.Heads.To) > Domain.Bearing.Circle / 2;

    internal Pose PoseOf(string? name, Pose otherwise) => name is null ? otherwise : poses.Poses[name];

    /// <summary>Degrees by which a body is turned to its left so that what lies in the middle of its window is ahead.</summary>
    internal static double Bearing(Window window) => window.IsAnywhere ? 0 : (window.From + window.To) / 2.0 * Domain.Bearing.DegreesPerHalfHour;

    /// <summary>A distance in a band as a share of the mean stature. It goes by the limb of whoever does it, as the rules have it; where nobody may be touched, by the longer of both.</summary>
    internal static double DistanceOf(Band band, double at, bool misses, (double Doer, double Other) statures)
    {
        var own = misses ? Math.Max(statures.Doer, statures.Other) : statures.Doer;
        var share = Math.Min(Farthest, (double)(band.From + ((band.To - band.From) * (decimal)at)) * (band.Limb == Limb.Arm ? ArmShare : LegShare));
        return share * own * 2 / (statures.Doer + statures.Other);
    }

    private static IReadOnlyList<Holding>? Mirrored(IReadOnlyList<Holding>? held) => held is null ? null : [.. held.Select(h => h.Mirrored)];

    private static Card Turned(Card card, bool flips) => flips
        ? card with { Side = card.Side.Other(), Start = card.Start.Mirrored, Contact = card.Contact.Mirrored, End = card.End.Mirrored }
        : card;
}
