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

    /// <summary>Where it stands in the picture; null where the move uses none, none has a height, or the move goes over it or round it, which its pose does not show.</summary>
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

        var deep = Math.Min(Deepest, (double)Math.Min(thing.Width.Value, thing.Depth.Value) / 100);
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
