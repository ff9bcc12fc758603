using Generator.Domain;
using Generator.Figures.Bodies;

namespace Generator.Figures.Posing;

/// <summary>Puts the thing of the room with which a record is done into its card.</summary>
public static class Surroundings
{
    /// <summary>No more of a thing is drawn than this, in metres.</summary>
    public const double Deepest = 0.6;

    /// <summary>From whoever has gone over a thing to the thing, in metres (common practice, no source).</summary>
    private const double Cleared = 0.5;

    /// <summary>From the middle of somebody to a thing close behind them, in metres (common practice, no source).</summary>
    private const double Close = 0.25;

    /// <summary>How much is drawn of a thing between the two; metres.</summary>
    private const double Narrow = 0.3;

    /// <summary>From the edge of what is sat on to the middle of the hips, in metres (no source).</summary>
    private const double Seated = 0.18;

    /// <summary>Whoever has their hips lower than this is down; share of stature.</summary>
    private const double Down = 0.35;

    /// <summary>With the hero on the thing at the contact and past it at the end.</summary>
    /// <param name="card">The card.</param>
    /// <param name="high">Height of the thing; metres.</param>
    /// <param name="deep">How much of it is drawn; metres.</param>
    /// <param name="backwards">The hero goes over it with the back first.</param>
    public static Card Over(Card card, double high, double deep, bool backwards)
    {
        if (card.Contact.Hero is not { } hero)
        {
            return card;
        }

        // What is lowest of the hero rests on it: a hand, the hips or the back.
        var rests = Enum.GetValues<Joint>().MinBy(j => hero[j].Y - (Skeleton.Thickness(j) * hero.Stature));
        var middle = hero[rests].Z;
        var up = Vec.Up * (high - hero.Lowest);
        var over = card.Contact with
        {
            Hero = hero.Moved(up),
            Props = [.. card.Contact.Props.Select(p => p with { Hand = p.Hand + up, Far = p.Far + up })],
            Thing = new DrawnThing(middle - (deep / 2), middle + (deep / 2), high),
        };
        return card with { Contact = over, End = card.End with { Thing = backwards ? new DrawnThing(Cleared, Cleared + deep, high) : new DrawnThing(-Cleared - deep, -Cleared, high) } };
    }

    /// <summary>With the thing where it stands, and whoever is thrown onto it or sits down on it upon it at the end.</summary>
    /// <param name="card">The card.</param>
    /// <param name="use">What is done with it.</param>
    /// <param name="edge">Metres ahead of the hero at which its near edge is, below 0 behind the hero.</param>
    /// <param name="deep">How much of it is drawn; metres.</param>
    /// <param name="high">Metres.</param>
    public static Card Beside(Card card, ThingUse use, double edge, double deep, double high)
    {
        var thing = edge < 0 ? new DrawnThing(edge - deep, edge, high) : new DrawnThing(edge, edge + deep, high);
        var end = card.End with { Thing = thing };
        if (end.Attacker is { } attacker)
        {
            end = Lies(use, attacker) ? end with { Attacker = attacker.Moved(new Vec(0, high, ((thing.From + thing.To) / 2) - Middle(attacker))), Marks = [] }
                : use == ThingUse.Sit ? end with { Attacker = attacker.Moved(new Vec(0, Math.Max(0, high - Seat(attacker)), edge + (Math.Sign(edge) * Seated) - attacker[Joint.Hips].Z)), Marks = [] }
                : end;
        }

        // Whoever is shown in no other way at the end than when it meets is upon it in both.
        var contact = card.Contact with { Thing = thing };
        return card with { Start = card.Start with { Thing = thing }, Contact = card.EndsAsItMet ? contact with { Attacker = end.Attacker, Marks = end.Marks } : contact, End = end };
    }

    /// <summary>Whoever is thrown onto it lies on it, also where they come off it onto their knees afterwards.</summary>
    private static bool Lies(ThingUse use, Figure body) => use == ThingUse.ThrownOnto && body[Joint.Hips].Y < Down * body.Stature;

    /// <summary>Half way from head to hips along the line, in metres: what lies there must lie soft.</summary>
    private static double Middle(Figure body) => (body[Joint.Hips].Z + body[Joint.Head].Z) / 2;

    /// <summary>Height of what is sat on, in metres.</summary>
    private static double Seat(Figure body) => body[Joint.Hips].Y - (Skeleton.Thickness(Joint.Hips) * body.Stature);

    /// <summary>With a thing that serves, close to whoever uses it, where no fight says which one and where.</summary>
    internal static Card Usual(ThingTable things, ThingNeed? need, Card card, bool heroLeads, bool backwards = false)
    {
        if (need is null || KindOf(things, need.Use, card.Name) is not { } kind)
        {
            return card;
        }

        // The hero of a technique looks ahead at an attacker who looks back; of attacks and reactions the attacker is the one who looks ahead.
        var (high, back) = ((double)kind.Height.Metres, heroLeads ? 1 : -1);
        return need.Where switch
        {
            ThingPlace.OnTheWay when need.Use == ThingUse.Vault => Over(card, high, Deepest, backwards),
            ThingPlace.BehindAttacker when (card.Attacks || need.Use is ThingUse.Sit or ThingUse.ThrownOnto ? card.Start : card.End).Attacker is { } other => At(other, back),
            ThingPlace.BehindHero or ThingPlace.BesideHero when card.Contact.Hero is { } hero => At(hero, -back),
            ThingPlace.Between when card.End is { Hero: { } one, Attacker: { } two } => Between(one[Joint.Hips].Z, two[Joint.Hips].Z),
            _ => card,
        };

        Card Between(double one, double two) => Beside(card, need.Use, Math.Max(0.01, ((one + two) / 2) - (Narrow / 2)), Narrow, high);

        Card At(Figure body, int way)
        {
            var (rear, deep) = need.Use switch
            {
                ThingUse.ThrownOnto => (Rearmost(body, way), (double)kind.Long.Metres),
                ThingUse.Sit => (Rearmost(body, way), Deepest),
                _ => ((way * body[Joint.Hips].Z) + Close, Deepest),
            };
            return Beside(card, need.Use, way * Math.Max(0.01, rear), deep, high);
        }
    }

    /// <summary>How far somebody reaches backwards, in metres: they stand in front of what they come to lie or sit on.</summary>
    private static double Rearmost(Figure body, int way) => Enum.GetValues<Joint>().Max(j => (way * body[j].Z) + (Skeleton.Thickness(j) * body.Stature));

    /// <summary>The kind that the name of the record speaks of, else the first that serves.</summary>
    private static ThingKind? KindOf(ThingTable things, ThingUse use, string name)
    {
        var serve = things.Kinds.Where(k => k.Uses.Contains(use)).ToList();
        return serve.Find(k => name.Split(' ').Any(k.GoesBy)) ?? serve.FirstOrDefault();
    }
}
