using Generator.Domain;
using Generator.Rules.Bodies;
using Generator.Rules.Replaying;

namespace Generator.Rules.Rules;

/// <summary>
/// What a record is done with is in the hand that the record says, a hand that holds something does nothing else, and nobody comes to stand or lie on what lies on the floor. Where the brief has no prop that
/// would serve at all, that is for <see cref="Able"/> to say.
/// </summary>
public sealed class Prop : Rule
{
    /// <summary>Half of the room that a prop on the floor takes up beside the middle of somebody's feet, in centimetres. Common practice, no source.</summary>
    public const int Underfoot = 35;

    /// <summary>How far from where a break-away broke nobody goes down until the floor is swept, in centimetres. Common practice, no source.</summary>
    public const int Shards = 100;

    public override string Id => "prop";

    public override string Title => "What a move is done with is in the right hand, a hand that holds something does nothing else, and nobody treads on what lies about.";

    public override Severity Worst => Severity.Unsafe;

    public override object? Begin(Scene scene, FightState open, Tally tally)
    {
        for (var p = 0; p < open.Props.Count; p++)
        {
            for (var a = 0; a < scene.Cast && open.Props[p].Lies; a++)
            {
                if (open.Attackers[a].Place.To(open.Props[p].Place) < Underfoot && tally.Count(Severity.Unsafe))
                {
                    tally.Tell(AtEnd(open, Severity.Unsafe, Words.Name(scene, a), $"{Words.Name(scene, a)} opens on {scene.Props.Parts[p].InWords}, which lies on the floor.") with
                    {
                        Advice = "Lay it half a metre aside, or open elsewhere.",
                    });
                }
            }
        }

        return null;
    }

    public override object? Observe(Scene scene, object? memory, Step step, Tally tally)
    {
        if (!scene.Props.Any)
        {
            return null;
        }

        foreach (var (need, name, who, prop) in Of(scene, step))
        {
            if (prop < 0 && scene.Props.Serving(need).Any())
            {
                if (tally.Count(Severity.Broken))
                {
                    tally.Tell(NotThere(scene, step, need, name, who));
                }
            }
            else if (prop >= 0 && Full(step, need, who, prop) is { } other && tally.Count(Severity.Broken))
            {
                tally.Tell(At(scene, step, Severity.Broken, $"{Words.Cap(name)} puts {scene.Props.Parts[prop].InWords} into a hand that holds {scene.Props.Parts[other].InWords}.") with
                {
                    Advice = "Let that one fall first, or take the other hand.",
                });
            }
        }

        if (step.Technique is { } technique)
        {
            Busy(scene, step, tally, -1, technique.Demands, technique.Name, technique.Prop);
        }

        if (step.HasTarget && step.Attack is { } attack)
        {
            Busy(scene, step, tally, step.Row.Attacker, attack.Demands, attack.Name, attack.Prop);
        }

        Treads(scene, step, tally);
        Kneels(scene, step, tally);
        return null;
    }

    /// <summary>The prop with which each record of a move is done, by number, and who does it (−1: the hero); −1 where none is there.</summary>
    public static IEnumerable<(PropNeed Need, string Name, int Who, int Prop)> Of(Scene scene, Step step)
    {
        if (step.HasTarget && step.Attack is { Prop: { } thrown } attack)
        {
            yield return (thrown, attack.Name, step.Row.Attacker, Handling.Find(scene, step, thrown, byAttacker: true));
        }

        if (step.Technique is { Prop: { } done } technique)
        {
            yield return (done, technique.Name, -1, Handling.Find(scene, step, done, byAttacker: false));
        }

        if (step.HasTarget && step.Technique is not null && step.Reaction is { Prop: { } sold } reaction)
        {
            yield return (sold, reaction.Name, step.Row.Attacker, Handling.Find(scene, step, sold, byAttacker: true));
        }
    }

    /// <summary>The same where it is there, each prop once.</summary>
    public static IEnumerable<(PropNeed Need, int Prop)> Used(Scene scene, Step step) =>
        scene.Props.Any ? Of(scene, step).Where(u => u.Prop >= 0).Select(u => (u.Need, u.Prop)).DistinctBy(u => u.Prop) : [];

    /// <summary>Another prop that is in the hand into which one comes; null for none.</summary>
    private static int? Full(Step step, PropNeed need, int who, int prop)
    {
        if (need.Into is not { } into)
        {
            return null;
        }

        var holder = need.Then == PropFate.Passes ? step.Before.Props[prop].Holder : who;
        for (var p = 0; p < step.Before.Props.Count; p++)
        {
            if (p != prop && step.Before.Props[p].Holder == holder && step.Before.Props[p].Hand.Meets(into))
            {
                return p;
            }
        }

        return null;
    }

    /// <summary>A hand that works while it holds something, unless it works with that.</summary>
    private void Busy(Scene scene, Step step, Tally tally, int who, IReadOnlyList<string> demands, string name, PropNeed? need)
    {
        var used = need is null ? -1 : Handling.Find(scene, step, need, byAttacker: who >= 0);
        foreach (var (demand, side) in (ReadOnlySpan<(string, Side)>)[(Demand.LeftHand, Side.Left), (Demand.RightHand, Side.Right)])
        {
            if (step.Before.PropIn(who, side) is >= 0 and var held && held != used && demands.Contains(demand, StringComparer.Ordinal) && tally.Count(Severity.Broken))
            {
                var hand = side == Side.Left ? "left" : "right";
                tally.Tell(At(scene, step, Severity.Broken, $"{Words.Name(scene, who)} holds {scene.Props.Parts[held].InWords} in the {hand} hand; {Words.Low(name)} works with that hand.") with
                {
                    Who = Words.Name(scene, who),
                    Advice = "Let it fall or take it over first, work with the other hand, or choose something that is done with it.",
                });
            }
        }
    }

    private void Treads(Scene scene, Step step, Tally tally)
    {
        for (var p = 0; p < step.Before.Props.Count; p++)
        {
            if (!step.Before.Props[p].Lies || !step.After.Props[p].Lies)
            {
                continue;
            }

            var place = step.Before.Props[p].Place;
            for (var a = 0; a < scene.Cast; a++)
            {
                if (step.After.Attackers[a] is { Gone: false } who && who.Leg is { } leg && leg.Move == step.Index && Handling.LiesOn(who, place, Underfoot))
                {
                    Told(scene, step, tally, a, p, Words.Name(scene, a));
                }
            }

            var hero = scene.Marks[step.Before.Mark] + step.StepsTo;
            if (hero.To(place) < Underfoot || (step.Travels >= 0 && scene.Marks[step.Travels].To(place) < Underfoot))
            {
                Told(scene, step, tally, -1, p, scene.Brief.Hero.Name);
            }
        }
    }

    /// <summary>Whoever goes down in the move, to a knee or farther, where something broke in it or before.</summary>
    private void Kneels(Scene scene, Step step, Tally tally)
    {
        for (var p = 0; p < step.After.Props.Count; p++)
        {
            if (!step.After.Props[p].Broken)
            {
                continue;
            }

            var place = step.After.Props[p].Place;
            for (var a = -1; a < scene.Cast; a++)
            {
                if (IsDown(scene, step, a, place) && tally.Count(Severity.Unsafe))
                {
                    tally.Tell(At(scene, step, Severity.Unsafe, $"{Words.Name(scene, a)} goes down within {Words.Metres(Shards)} of where {scene.Props.Parts[p].InWords} broke, and nobody has swept there.") with
                    {
                        Who = Words.Name(scene, a),
                        Advice = $"Let it break later or elsewhere, or let {Words.Name(scene, a)} stay up until they are away from there.",
                    });
                }
            }
        }
    }

    private static bool IsDown(Scene scene, Step step, int who, Place place)
    {
        if (who >= 0)
        {
            return step.Falls.Any(f => f.Who == who) && step.After.Attackers[who] is { Gone: false } down && Handling.LiesOn(down, place, Shards);
        }

        var (from, to) = (scene.Marks[step.Before.Mark] + step.StepsTo, scene.Marks[step.Travels < 0 ? step.Before.Mark : step.Travels]);
        return (step.StanceStart.IsDown() && from.To(place) < Shards) || ((step.After.Stance.IsDown() || step.Falls.Any(f => f.Who < 0)) && (to.To(place) < Shards || (step.Travels < 0 && from.To(place) < Shards)));
    }

    private void Told(Scene scene, Step step, Tally tally, int who, int prop, string name)
    {
        if (tally.Count(Severity.Unsafe))
        {
            tally.Tell(At(scene, step, Severity.Unsafe, $"{name} comes down on {scene.Props.Parts[prop].InWords}, which lies on the floor.") with
            {
                Who = name,
                Advice = who < 0 ? "Let it lie elsewhere, or take it up first." : $"Let {name} go down elsewhere, or have it taken up first.",
            });
        }
    }

    private Finding NotThere(Scene scene, Step step, PropNeed need, string name, int who)
    {
        var holder = need.Holder switch { PropHolder.Hero => scene.Brief.Hero.Name, PropHolder.Attacker when step.HasTarget => Words.Name(scene, step.Row.Attacker), _ => string.Empty };
        var message = need.Holder == PropHolder.Floor
            ? $"{Words.Cap(name)} takes up {PropWords.Of(need.Use)}, and nothing of the kind lies within {Words.Metres(HandProps.TakesUpWithin)} of {Words.Name(scene, who)}."
            : $"{Words.Cap(name)} needs {PropWords.Of(need.Use)}{PropWords.HeldIn(need.Hand)} of {holder}, and it is not there.";
        return At(scene, step, Severity.Broken, message) with
        {
            Who = Words.Name(scene, who),
            Advice = $"{Where(scene, step, need)} Choose something that is done without, or bring it into the hand in a move before.",
        };
    }

    /// <summary>Where what would serve is at that moment.</summary>
    private static string Where(Scene scene, Step step, PropNeed need) => string.Join(" ", scene.Props.Serving(need).Select(p => step.Before.Props[p] switch
    {
        { Broken: true } => $"{Words.Cap(scene.Props.Parts[p].InWords)} is broken.",
        { Holder: PropState.NoOne } => $"{Words.Cap(scene.Props.Parts[p].InWords)} lies on the floor.",
        var held => $"{Words.Name(scene, held.Holder)} has {scene.Props.Parts[p].InWords}{PropWords.HeldIn(held.Hand)}.",
    }));
}
