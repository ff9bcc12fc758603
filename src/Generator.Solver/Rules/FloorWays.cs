using Generator.Domain;
using Generator.Rules;
using Generator.Rules.Bodies;
using Generator.Solver.Filling;
using Google.OrTools.Sat;

namespace Generator.Solver.Rules;

/// <summary>The ways of everybody in an answer of a move model, read off the values of its variables.</summary>
internal sealed class FloorWays
{
    private readonly MoveModel model;
    private readonly Func<IntVar, long> value;

    public FloorWays(MoveModel model, Func<IntVar, long> value)
    {
        (this.model, this.value) = (model, value);
        Openings = [.. Enumerable.Range(0, model.Cast).Select(Opening)];
        var ways = Openings.ToArray();
        var deeds = new List<FloorDeed>();
        foreach (var slot in model.Slots.Where(s => value(s.Used) == 1 && value(s.NoTarget) == 0))
        {
            for (var a = 0; a < model.Cast; a++)
            {
                if (Of(slot, a, ways[a]) is { } deed)
                {
                    deeds.Add(deed);
                    ways[a] = deed.After;
                }
            }
        }

        Deeds = deeds;
    }

    /// <summary>Those of an answer, the same for every rule that looks at it.</summary>
    public static FloorWays Of(ModelAnswer answer) => answer.Shared(static a => new FloorWays(a.Model, a.Value));

    /// <summary>The last legs of everybody before the first row.</summary>
    public IReadOnlyList<Leg> Openings { get; }

    /// <summary>What the rows do with everybody's places, in their order.</summary>
    public IReadOnlyList<FloorDeed> Deeds { get; }

    /// <summary>Number of a row's move, from 0.</summary>
    private int MoveOf(SlotVars slot) => (model.Options.From?.Moves ?? 0) + slot.Index;

    /// <summary>The last leg of somebody after the row before a slot.</summary>
    public Leg Before(int attacker, int slot) => Last(attacker, slot)?.After ?? Openings[attacker];

    /// <summary>What was done with somebody last before a slot; null for nothing.</summary>
    public FloorDeed? Last(int attacker, int slot) => Deeds.LastOrDefault(d => d.Attacker == attacker && d.Slot.Index < slot);

    private Leg Opening(int a)
    {
        if (model.Options.From is { } state && !Delayed.IsEntrance(state.Attackers[a]))
        {
            return state.Attackers[a].Way;
        }

        var (bearing, distance) = Stands(model.Start.Attackers[a]);
        var place = Place.At(bearing, distance);
        return Entries.Legs(model.Scene, a, bearing, distance, Value(model.Entrances[a]))
            ?? Leg.Always(place);
    }

    private FloorDeed? Of(SlotVars slot, int a, Leg way)
    {
        var isTarget = Value(slot.Target) == a;
        var isSecond = Value(slot.Seconds[a]) == 1;
        var (before, after) = (slot.Before.Attackers[a], slot.After.Attackers[a]);
        if (!isTarget && !isSecond)
        {
            if (Stands(before) == Stands(after))
            {
                return null;
            }

            var led = Motion.Led(model.Scene, MoveOf(slot), Value(slot.Start), Value(slot.End), Stands(before), Stands(after), way.LiesAt(Value(slot.Start)));
            return new FloorDeed(slot, a, led, null, way, led.Laid(way));
        }

        var use = model.Vocabulary.Uses[Chosen(slot.Uses)];
        var attack = Chosen(slot.Attacks) is >= 0 and var k ? model.Scene.Book.Attacks[model.Vocabulary.Attacks[k]] : null;
        var treatment = new Treatment
        {
            Move = MoveOf(slot),
            Attacker = a,
            IsTarget = isTarget,
            Technique = use.Technique,
            Attack = attack,
            Reaction = Chosen(slot.Reactions) is >= 0 and var r ? model.Vocabulary.Reactions[r] : -1,
            Start = Value(slot.Start),
            End = Value(slot.End),
            Stands = Stands(before),
            Meets = (Value(slot.TargetBearing), Value(slot.Distance)),
            Ends = Stands(after),
            Soonest = Value(before.ReadyAt),
            Posture = (Posture)Value(after.Posture),
            Gone = Value(after.Gone) == 1,
            Lay = false,
        };
        treatment = treatment with { Lay = way.LiesAt(treatment.Taken(model.Scene)) };
        var motion = treatment.Motion(model.Scene);
        return new FloorDeed(slot, a, motion, treatment, way, motion.Laid(way));
    }

    private (int Bearing, int Distance) Stands(AttackerVars state) => (Value(state.Bearing), Value(state.Distance));

    private int Chosen(BoolVar[] literals) => Array.FindIndex(literals, l => value(l) == 1);

    private int Value(IntVar variable) => (int)value(variable);
}
