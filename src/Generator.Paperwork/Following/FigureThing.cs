using Generator.Domain;
using Generator.Figures.Bodies;
using Generator.Figures.Posing;
using Generator.Rules;
using Generator.Rules.Replaying;
using Generator.Rules.Rules;

namespace Generator.Paperwork.Following;

/// <summary>The thing of the room that a move is done with, as its picture shows it: at its height, and as far from whoever uses it as it is on the floor.</summary>
internal static class FigureThing
{
    /// <summary>The card with it; as it is where the move uses none, none has a height, or the move goes round it.</summary>
    public static Card In(Scene scene, Step step, Card card)
    {
        if (step.Technique is not { } technique)
        {
            return card;
        }

        if (technique.Uses is { Use: ThingUse.Vault, Where: ThingPlace.OnTheWay } need
            && Thing.Used(scene, step).Where(u => u.Need == need).Select(u => u.Thing).FirstOrDefault() is { } under && scene.Book.Things.HeightOf(under) is { } height)
        {
            return Surroundings.Over(card, (double)height.Metres, DeepOf(under), technique.Travel is { } travel && Cards.IsBackwards(travel));
        }

        return Needs(step).Select(n => (n.Use, Where: Found(scene, step, n, card))).FirstOrDefault(f => f.Where is not null) is (var use, (var thing, var edge)) && scene.Book.Things.HeightOf(thing) is { } high
            ? Surroundings.Beside(card, use, edge, use == ThingUse.ThrownOnto ? LongOf(thing) : DeepOf(thing), (double)high.Metres)
            : card;
    }

    /// <summary>Whoever lies on it lies along it.</summary>
    private static double LongOf(Obstacle thing) => (double)Math.Max(thing.Width.Value, thing.Depth.Value) / 100;

    private static double DeepOf(Obstacle thing) => Math.Min(Surroundings.Deepest, (double)Math.Min(thing.Width.Value, thing.Depth.Value) / 100);

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
