using Generator.Domain;
using Generator.Rules.Bodies;
using Generator.Rules.Replaying;

namespace Generator.Rules.Rules;

/// <summary>Nobody is sent, turned or falls through another performer, an obstacle or the floor's edge, on the way that they really go.</summary>
public sealed class ClearLane : Rule
{
    public override string Id => "clear-lane";

    public override string Title => "Nobody is sent or falls through another performer, an obstacle or the floor's edge.";

    public override Severity Worst => Severity.Unsafe;

    public override Whose Looks => Whose.Both;

    public override object? Observe(Scene scene, object? memory, Step step, Tally tally)
    {
        if (step.HasTarget && step.Technique is not null && step.Reaction is not null)
        {
            OnTheFloor(scene, step, step.Row.Attacker, tally);
            if (step.Second >= 0)
            {
                OnTheFloor(scene, step, step.Second, tally);
            }
        }

        for (var a = 0; a < scene.Cast; a++)
        {
            if (!step.Concerns(a) && step.After.Attackers[a].Leg?.Move == step.Index && LedOff(scene, step, a) is { } bearing && tally.Count(Severity.Unsafe))
            {
                tally.Tell(LedOffTheFloor(scene, step, a, bearing));
            }
        }

        OnTheWay(scene, step, tally);
        foreach (var meeting in step.Meetings(scene))
        {
            if (meeting.IsInALane && tally.Count(Severity.Unsafe))
            {
                tally.Tell(InTheWay(scene, step, meeting));
            }
        }

        return null;
    }

    /// <summary>Where the hero travels, nothing stands on the straight way; and nobody is sent or led through anything from where they stay off the bearings of the mark.</summary>
    private void OnTheWay(Scene scene, Step step, Tally tally)
    {
        if (step.After.HeroWay is null)
        {
            return;
        }

        if (step.Travels >= 0 && scene.Floor.Between(step.Mark, scene.Marks[step.Travels], Over(scene, step)) is { } closed && tally.Count(Severity.Unsafe))
        {
            var (from, to) = (scene.Brief.Marks[step.Before.Mark].Name, scene.Brief.Marks[step.Travels].Name);
            tally.Tell(At(scene, step, Severity.Unsafe, $"{Words.Cap(closed)} stands on {scene.Brief.Hero.Name}'s way from {from} to {to}.") with
            {
                Who = scene.Brief.Hero.Name,
                Advice = "Go by way of another mark beside it, or move one of the marks.",
            });
        }

        for (var a = 0; a < scene.Cast; a++)
        {
            foreach (var leg in step.LegsOf(a))
            {
                if ((leg.Kind.IsSent() || leg.Kind == LegKind.Led) && scene.Floor.Between(leg.Start, leg.End) is { } thing && tally.Count(Severity.Unsafe))
                {
                    tally.Tell(At(scene, step, Severity.Unsafe, $"{Words.Name(scene, a)} is {(leg.Kind == LegKind.Led ? "led" : "sent")} through {thing}.") with
                    {
                        Who = Words.Name(scene, a),
                        Advice = "Turn the exchange to a side on which the floor is free.",
                    });
                }
            }
        }
    }

    /// <summary>The thing that the hero goes over, as the technique says.</summary>
    private static Obstacle? Over(Scene scene, Step step) =>
        step.Technique is { Uses: { Where: ThingPlace.OnTheWay } need } ? scene.Things.On(need, step.Before.Mark, step.Travels) : null;

    /// <summary>Whoever is moved ends on the floor, and whoever lies lies on it from the feet to the head.</summary>
    private void OnTheFloor(Scene scene, Step step, int attacker, Tally tally)
    {
        var lands = step.After.Attackers[attacker];
        if (lands.Leg?.Move != step.Index)
        {
            return;
        }

        if (lands.Gone)
        {
            if (step.FloorAfter.InTheWay(lands.Bearing) is { } thing && tally.Count(Severity.Unsafe))
            {
                tally.Tell(RunsInto(scene, step, attacker, lands, thing));
            }

            return;
        }

        // Whoever is off the bearings of the mark is judged by the place itself.
        var (edge, reaches) = (lands.Stays is null ? step.FloorAfter[lands.Bearing] : int.MaxValue, lands.Distance);
        var body = lands.Leg.LastingBody(step.Index);
        if (body is not null && step.Reaction is { EndsLying: true, Lies: not Lying.Across })
        {
            reaches += scene.AxisOf(attacker);
        }

        var room = body is not null ? Math.Min(scene.Floor.Room(body.Start), scene.Floor.Room(body.End)) : lands.Stays is { } stays ? scene.Floor.Room(stays) : int.MaxValue;
        if ((reaches > edge || room < scene.Settle.EdgeClearance.Value) && tally.Count(Severity.Unsafe))
        {
            tally.Tell(reaches > edge ? OffTheFloor(scene, step, attacker, lands, reaches, edge) : NearTheEdge(scene, step, attacker, lands, room));
        }
    }

    /// <summary>The first bearing on which somebody who is led or turned with meanwhile is off the floor, or at which they lie off it; null for none.</summary>
    private static int? LedOff(Scene scene, Step step, int attacker)
    {
        var (from, to) = (step.Before.Attackers[attacker].Bearing, step.After.Attackers[attacker]);
        var round = new Bearing(from).To(new Bearing(to.Bearing)).HalfHours;
        for (var i = 1; i <= Math.Abs(round); i++)
        {
            var bearing = new Bearing(from + (Math.Sign(round) * i)).HalfHours;
            if (to.Distance > step.FloorAfter[bearing])
            {
                return bearing;
            }
        }

        return to.Leg!.LastingBody(step.Index) is { } body && !(scene.Floor.Holds(body.Start) && scene.Floor.Holds(body.End)) ? to.Bearing : null;
    }

    private Finding LedOffTheFloor(Scene scene, Step step, int attacker, int bearing)
    {
        var distance = step.After.Attackers[attacker].Distance;
        var message = $"{Words.Cap(step.Technique!.Name)} leads {Words.Name(scene, attacker)} {Words.Metres(distance)} out at {new Bearing(bearing).InWords}; {Words.FloorEnds(step.FloorAfter, bearing)}.";
        return OnTheFloor(scene, step, attacker, message, distance, step.FloorAfter[bearing]) with { Advice = "Turn the exchange to a deeper side of the floor, or let go first." };
    }

    private Finding OffTheFloor(Scene scene, Step step, int attacker, AttackerState lands, int reaches, int edge)
    {
        var whole = reaches > lands.Distance ? ", the head included" : string.Empty;
        var message = $"{Words.Cap(step.Reaction!.Name)} carries {Words.Name(scene, attacker)} {Words.Metres(reaches)} out at {new Bearing(lands.Bearing).InWords}{whole}; {Words.FloorEnds(step.FloorAfter, lands.Bearing)}.";
        return OnTheFloor(scene, step, attacker, message, reaches, edge);
    }

    // The room is that of the head or the feet, whichever is nearer to something.
    private Finding NearTheEdge(Scene scene, Step step, int attacker, AttackerState lands, int room)
    {
        var beyond = room < 0 ? $"{Words.Metres(-room)} beyond the floor's edge" : $"{Words.Metres(room)} from the floor's edge or what stands on it";
        var message = $"{Words.Cap(step.Reaction!.Name)} leaves {Words.Name(scene, attacker)} lying at {new Bearing(lands.Bearing).InWords} with the head or the feet {beyond}.";
        return OnTheFloor(scene, step, attacker, message, room, scene.Settle.EdgeClearance.Value);
    }

    private Finding OnTheFloor(Scene scene, Step step, int attacker, string message, int measured, int allowed) => At(scene, step, Severity.Unsafe, message) with
    {
        Who = Words.Name(scene, attacker),
        Measured = measured / 100m,
        Allowed = allowed / 100m,
        Unit = "m",
        Advice = "Choose a reaction that carries less far, or turn the exchange to a deeper side of the floor.",
    };

    private Finding RunsInto(Scene scene, Step step, int attacker, AttackerState lands, string thing) =>
        At(scene, step, Severity.Unsafe, $"{Words.Name(scene, attacker)} runs off at {new Bearing(lands.Bearing).InWords}, where {thing} stands.") with
        {
            Who = Words.Name(scene, attacker),
            Advice = "Turn the exchange to a side on which the floor is free to its edge, or finish it otherwise.",
        };

    private Finding InTheWay(Scene scene, Step step, Meeting meeting)
    {
        var (who, stands) = (Words.Name(scene, meeting.First), Words.Name(scene, meeting.Second));
        var isSent = meeting.Mine.Kind.IsSent() && step.Reaction is not null;
        var message = isSent
            ? $"{Words.Cap(step.Reaction!.Name)} sends {who} past {stands} at {Words.Metres(meeting.Apart)}; the way wants {Words.Metres(meeting.Room)} clear."
            : $"{who} comes past {stands}, who is still being sent, at {Words.Metres(meeting.Apart)}; the way wants {Words.Metres(meeting.Room)} clear.";
        return At(scene, step, Severity.Unsafe, message) with
        {
            Who = $"{who}, {stands}",
            Measured = meeting.Apart / 100m,
            Allowed = meeting.Room / 100m,
            Unit = "m",
            Advice = isSent ? $"Send {who} another way, choose a reaction that stays nearer, or move {stands}." : $"Let {who} come later, or from another bearing.",
        };
    }
}
