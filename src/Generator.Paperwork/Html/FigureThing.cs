using Generator.Domain;
using Generator.Figures.Bodies;
using Generator.Figures.Painting;
using Generator.Figures.Posing;
using Generator.Rules;
using Generator.Rules.Replaying;
using Generator.Rules.Rules;

namespace Generator.Paperwork.Html;

/// <summary>The thing of the room that a move is done with, as its picture shows it: at its height, and as far from whoever uses it as it is on the floor.</summary>
internal static class FigureThing
{
    /// <summary>No more of a thing is drawn than this, in metres.</summary>
    private const double Deepest = 0.6;

    /// <summary>From whoever has gone over a thing to the thing, in metres (common practice, no source).</summary>
    private const double Cleared = 0.5;

    /// <summary>Where the thing stands over which the move goes, with the hero on it at the contact and past it at the end; null where the move goes over none, or none has a height.</summary>
    public static (Card Card, DrawnThing Under, DrawnThing Past)? Over(Scene scene, Step step, Card card)
    {
        if (card.Contact.Hero is not { } hero || step.Technique is not { Uses: { Use: ThingUse.Vault, Where: ThingPlace.OnTheWay } need } technique
            || Thing.Used(scene, step).Where(u => u.Need == need).Select(u => u.Thing).FirstOrDefault() is not { } thing || scene.Book.Things.HeightOf(thing) is not { } height)
        {
            return null;
        }

        // What is lowest of the hero rests on it: a hand, the hips or the back.
        var (high, deep) = ((double)height.Metres, DeepOf(thing));
        var rests = Enum.GetValues<Joint>().MinBy(j => hero[j].Y - (Skeleton.Thickness(j) * hero.Stature));
        var middle = hero[rests].Z;
        var up = Vec.Up * (high - hero.Lowest);
        var over = card.Contact with { Hero = hero.Moved(up), Props = [.. card.Contact.Props.Select(p => p with { Hand = p.Hand + up, Far = p.Far + up })] };
        var goesBack = technique.Travel is { } travel && Math.Abs(travel.Heads.From + travel.Heads.To) > Bearing.Circle / 2;
        var past = goesBack ? new DrawnThing(Cleared, Cleared + deep, high) : new DrawnThing(-Cleared - deep, -Cleared, high);
        return (card with { Contact = over }, new DrawnThing(middle - (deep / 2), middle + (deep / 2), high), past);
    }

    /// <summary>Where it stands in the picture; null where the move uses none, none has a height, or the move goes over it (<see cref="Over"/>) or round it.</summary>
    public static DrawnThing? Of(Scene scene, Step step, Card card)
    {
        if (step.Technique is null || Needs(step).Select(n => (Need: n, Found: Found(scene, step, n, card))).FirstOrDefault(f => f.Found is not null) is not { Found: var (thing, edge) })
        {
            return null;
        }

        if (scene.Book.Things.HeightOf(thing) is not { } high)
        {
            return null;
        }

        var deep = DeepOf(thing);
        return edge < 0 ? new DrawnThing(edge - deep, edge, (double)high.Metres) : new DrawnThing(edge, edge + deep, (double)high.Metres);
    }

    /// <summary>The card with whoever is thrown onto a thing lying on it.</summary>
    public static Card Landed(Card card, DrawnThing? drawn, Step step)
    {
        if (drawn is not { } thing || step.Reaction?.Uses is not { Use: ThingUse.ThrownOnto } || card.End.Attacker is not { } attacker || step.After.Attackers[step.Row.Attacker].Posture is not (Posture.OnBack or Posture.FaceDown or Posture.Out))
        {
            return card;
        }

        var lies = attacker.Moved(new Vec(0, thing.High, ((thing.From + thing.To) / 2) - attacker[Joint.Hips].Z));
        return card with { End = card.End with { Attacker = lies, Marks = [] } };
    }

    private static double DeepOf(Obstacle thing) => Math.Min(Deepest, (double)Math.Min(thing.Width.Value, thing.Depth.Value) / 100);

    private static IEnumerable<ThingNeed> Needs(Step step) => new[] { step.Technique?.Uses, step.HasTarget ? step.Reaction?.Uses : null }.OfType<ThingNeed>();

    /// <summary>The thing and where its near edge stands, in metres ahead of the hero.</summary>
    private static (Obstacle Thing, double Edge)? Found(Scene scene, Step step, ThingNeed need, Card card)
    {
        if (need.Where == ThingPlace.BehindAttacker)
        {
            var fit = step.HasTarget ? Thing.Behind(scene, need, step.After.Mark, step.After.Attackers[step.Row.Attacker]) : FloorThings.Fit.None;
            return fit.Thing is { } behind && card.End.Attacker is { } attacker
                ? (behind, attacker[Joint.Hips].Z + (Math.Max(0, fit.Most - step.After.Attackers[step.Row.Attacker].Distance) / 100.0))
                : null;
        }

        var near = need.Where is ThingPlace.BehindHero or ThingPlace.BesideHero ? Thing.Used(scene, step).Where(u => u.Need == need).Select(u => u.Thing).FirstOrDefault() : null;
        return near is null ? null : (near, (need.Where == ThingPlace.BehindHero ? -1 : 1) * scene.Things.Away(near, step.Before.Mark) / 100.0);
    }
}
