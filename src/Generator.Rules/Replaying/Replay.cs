using Generator.Domain;
using Generator.Library;

namespace Generator.Rules.Replaying;

/// <summary>
/// Walks a routine, right or wrong, move by move and says what is true at every one. Pure: the same scene, state and row give the same step.
/// It never throws on a bad routine; the rules speak about what it saw.
/// </summary>
public static class Replay
{
    /// <summary>Every step of a routine, in the order of its rows.</summary>
    /// <param name="scene">Brief and library.</param>
    /// <param name="routine">The rows and the opening placements.</param>
    /// <param name="facing">Where the hero faces at the start; 12 o'clock unless somebody turns the whole floor.</param>
    public static IReadOnlyList<Step> Of(Scene scene, Routine routine, Bearing facing = default) => [.. From(scene, Open(scene, routine, facing), routine)];

    /// <summary>Every step from a state on, one after another: whoever needs each once only keeps none of them.</summary>
    public static IEnumerable<Step> From(Scene scene, FightState open, Routine routine)
    {
        var state = open;
        foreach (var move in routine.Moves)
        {
            if (move.ByAlly != state.IsAllys && state.Other is not null)
            {
                (scene, state) = (scene.Other!, state.ForOther(scene.Marks));
            }

            var step = Step(scene, state, Row.Of(move, scene));
            yield return step;
            state = step.After;
        }
    }

    /// <summary>The state before the first move of a routine.</summary>
    public static FightState Open(Scene scene, Routine routine, Bearing facing = default) =>
        Open(scene, routine.Placements, routine.Moves.Count > 0 ? LeadIn(scene, routine.Placements, Row.Of(routine.Moves[0], scene)) : 0, facing);

    /// <summary>The state before the first move; the attackers set off <paramref name="leadIn"/> half counts before count 1.</summary>
    public static FightState Open(Scene scene, IReadOnlyList<Placement> placements, int leadIn = 0, Bearing facing = default) => new()
    {
        Facing = facing.HalfHours,
        Stance = scene.Brief.Hero.OpeningStance,
        Props = Handling.Open(scene),
        Attackers = [.. Enumerable.Range(0, scene.Cast).Select(a => Place(scene, a, a < placements.Count ? placements[a] : new Placement(default, new Centimetres(300), HalfCounts.Zero), leadIn))],
        Other = scene.Brief.Ally is { } ally ? Open(ally, facing) : null,
    };

    private static FightState Open(Ally ally, Bearing facing) => new()
    {
        Facing = new Bearing(ally.Faces.HalfHours + facing.HalfHours).HalfHours,
        Stance = ally.Part.OpeningStance,
        Mark = 1,
        IsAllys = true,
        Attackers = [],
    };

    /// <summary>
    /// A routine starts with its first move; where that lands sooner than its attacker can walk in from the opening mark,
    /// everybody sets off that much before count 1, but not before the count-in (<see cref="Settle.LeadInMost"/>): a first blow that would need
    /// more lands before its attacker's threat time.
    /// </summary>
    public static int LeadIn(Scene scene, IReadOnlyList<Placement> placements, Row first)
    {
        if (first.Attacker < 0 || first.Attacker >= placements.Count || placements[first.Attacker].Entrance > HalfCounts.Zero)
        {
            return 0;
        }

        var (place, mark) = (placements[first.Attacker], scene.Marks[first.ByAlly && scene.Other is not null ? 1 : 0]);
        var walk = scene.WalkTime(first.Attacker, mark == default ? place.Distance.Value : FloorGeometry.Whole(Bodies.Place.At(place.Bearing.HalfHours, place.Distance.Value).To(mark)));
        return Math.Clamp(walk - (first.Start + scene.Settle.ContactAfter.Value), 0, scene.Settle.LeadInMost.Value);
    }

    /// <summary>Threat time of an attacker: when they could land an attack; <see cref="int.MaxValue"/> for one who is out, held or gripping.</summary>
    public static int ThreatTime(Scene scene, FightState state, int attacker)
    {
        var a = state.Attackers[attacker];
        return a.IsActive ? a.SetsOffAt + scene.WalkTime(attacker, a.Distance) : int.MaxValue;
    }

    /// <summary>The same of every attacker.</summary>
    public static int[] ThreatTimes(Scene scene, FightState state)
    {
        var threats = new int[scene.Cast];
        for (var a = 0; a < threats.Length; a++)
        {
            threats[a] = ThreatTime(scene, state, a);
        }

        return threats;
    }

    /// <summary>One move.</summary>
    public static Step Step(Scene scene, FightState state, Row row)
    {
        var step = Seeing.Look(scene, state, row);
        step.After = Effects.Of(scene, step);
        return step;
    }

    private static AttackerState Place(Scene scene, int attacker, Placement placement, int leadIn)
    {
        var open = new AttackerState
        {
            Bearing = placement.Bearing.HalfHours,
            Distance = placement.Distance.Value,
            Posture = scene.Brief.Attackers[attacker].Kneels is null ? Posture.Ready : Posture.Knelt,
            OpenUntil = int.MinValue,
            ReadyAt = -leadIn,
            OutAt = -1,
        };
        return placement.Entrance > HalfCounts.Zero ? open.Entering(scene, attacker, placement.Entrance.Value) : open;
    }
}
