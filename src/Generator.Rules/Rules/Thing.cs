using Generator.Domain;
using Generator.Rules.Replaying;

namespace Generator.Rules.Rules;

/// <summary>
/// What a technique, an attack or a reaction uses stands where it must: behind the attacker who is sent against it, behind or beside the hero, on the way. Where the whole floor has nothing of the kind,
/// that is for <see cref="Able"/> to say.
/// </summary>
public sealed class Thing : Rule
{
    public override string Id => "thing";

    public override string Title => "The wall, table or rail that a move uses stands where the move needs it.";

    public override Severity Worst => Severity.Broken;

    public override object? Observe(Scene scene, object? memory, Step step, Tally tally)
    {
        if (step.Technique?.Uses is null && step.Attack?.Uses is null && step.Reaction?.Uses is null)
        {
            return null;
        }

        foreach (var (need, name, thing) in Of(scene, step))
        {
            if (thing is null && scene.Things.Serves(need) && tally.Count(Severity.Broken))
            {
                tally.Tell(Told(scene, step, need, name));
            }
        }

        return null;
    }

    /// <summary>The thing that each record of a move is done with; null where it stands at none that serves. What a technique and its reaction share is told once.</summary>
    public static IEnumerable<(ThingNeed Need, string Name, Obstacle? Thing)> Of(Scene scene, Step step)
    {
        if (step.Technique is { Uses: { } own } technique)
        {
            yield return (own, technique.Name, ThingOf(scene, step, own));
        }

        if (step.Technique is not null && step.HasTarget && step.Reaction is { Uses: { } taken } reaction && taken != step.Technique.Uses)
        {
            yield return (taken, reaction.Name, ThingOf(scene, step, taken));
        }

        if (step.HasTarget && step.Attack is { Uses: { } thrown } attack)
        {
            var stands = step.Before.Attackers[step.Row.Attacker];
            yield return (thrown, attack.Name, thrown.Where == ThingPlace.BehindAttacker ? Behind(scene, thrown, step.Before.Mark, stands).Thing : Near(scene, step, thrown));
        }
    }

    /// <summary>The things that a move is done with, where they stand as they must.</summary>
    public static IEnumerable<(ThingNeed Need, Obstacle Thing)> Used(Scene scene, Step step) =>
        from used in Of(scene, step) where used.Thing is not null select (used.Need, used.Thing);

    private static Obstacle? ThingOf(Scene scene, Step step, ThingNeed need) => need.Where switch
    {
        ThingPlace.OnTheWay => step.Travels < 0 ? null : scene.Things.On(need, step.Before.Mark, step.Travels),
        ThingPlace.BehindAttacker => step.HasTarget ? Behind(scene, need, step.After.Mark, step.After.Attackers[step.Row.Attacker]).Thing : null,
        _ => Near(scene, step, need),
    };

    private static Obstacle? Near(Scene scene, Step step, ThingNeed need) => scene.Things.At(need, step.Before.Mark, step.TargetBearing).Thing;

    /// <summary>The thing behind an attacker who stands at it, and from how far from the mark it can be used; none where nobody could use it from there.</summary>
    public static FloorThings.Fit Behind(Scene scene, ThingNeed need, int mark, AttackerState who)
    {
        var fit = who.Stays is { } stays ? scene.Things.At(need, mark, stays - scene.Marks[mark]) : scene.Things.At(need, mark, who.Bearing);
        return fit.Holds(who.Distance) ? fit : FloorThings.Fit.None;
    }

    private Finding Told(Scene scene, Step step, ThingNeed need, string name)
    {
        var where = need.Where == ThingPlace.BehindAttacker && step.HasTarget ? "behind " + Words.Name(scene, step.Row.Attacker) : ThingWords.Of(need.Where);
        var bearings = need.Where == ThingPlace.OnTheWay ? [] : scene.Things.BearingsOf(need, step.Before.Mark).Select(b => new Bearing(b).InWords).ToList();
        return At(scene, step, Severity.Broken, $"{Words.Cap(name)} needs {ThingWords.Of(need.Use)} {where}{(need.Where == ThingPlace.OnTheWay ? string.Empty : $", within {need.Within}")}, and there is none.") with
        {
            Advice = bearings.Count == 0
                ? "Choose something that needs nothing of the room, or put the thing there."
                : $"From this mark it is there with the attacker at {string.Join(", ", bearings)}; turn the exchange that way, or carry the attacker as far as the thing.",
        };
    }
}
