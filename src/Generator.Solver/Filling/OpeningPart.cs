using Generator.Domain;
using Generator.Rules.Replaying;
using Google.OrTools.Sat;

namespace Generator.Solver.Filling;

/// <summary>The state before the first row: fixed, or the opening placements and entrances as choices.</summary>
internal static class OpeningPart
{
    /// <summary>Opening distances to choose from where the brief leaves them open, in centimetres.</summary>
    public static readonly IReadOnlyList<int> Distances = [150, 200, 250, 300, 350, 400, 450];

    public static BoundaryVars Build(MoveModel model)
    {
        var cp = model.Cp;
        if (model.Options.From is { } state)
        {
            var delays = model.Options.Delays ?? new int[model.Cast];
            model.Delays = [.. delays.Select((d, a) => cp.Int(0, d, $"delay[{a}]"))];
            model.Entrances = [.. state.Attackers.Select((s, a) => EntranceOf(model, s, a))];
            return new BoundaryVars
            {
                Time = cp.Const(state.Time),
                Stance = cp.Const((int)state.Stance),
                Facing = cp.Const(state.Facing),
                Left = cp.Const(HandPart.Code(state.Left, model.Cast)),
                Right = cp.Const(HandPart.Code(state.Right, model.Cast)),
                Bound = cp.Const(HandPart.Code(state.Bound, state.BoundBy, model.Cast)),
                LastTarget = cp.Const(state.LastTarget < 0 ? model.Cast : state.LastTarget),
                Followed = cp.Const(state.Followed),
                Attackers = [.. state.Attackers.Select((s, a) => Fixed(model, s, a))],
            };
        }

        model.Delays = [.. Enumerable.Range(0, model.Cast).Select(_ => cp.Const(0))];
        model.Entrances = [.. model.Scene.Brief.Attackers.Select((p, a) => p.Entrance is { } e ? cp.Const(e.Value) : cp.Int(0, model.Options.Horizon, $"entrance[{a}]"))];
        return new BoundaryVars
        {
            Time = cp.Const(0),
            Stance = cp.Const((int)model.Scene.Brief.Hero.OpeningStance),
            Facing = cp.Const(0),
            Left = cp.Const(0),
            Right = cp.Const(0),
            Bound = cp.Const(0),
            LastTarget = cp.Const(model.Cast),
            Followed = cp.Const(0),
            Attackers = [.. model.Scene.Brief.Attackers.Select((p, a) => Open(model, p, a))],
        };
    }

    /// <summary>An attacker who has not acted yet and whose entrance is free comes in later by the delay; that may be after a window's horizon.</summary>
    private static IntVar EntranceOf(MoveModel model, AttackerState state, int attacker)
    {
        if (!Delayed.IsEntrance(state))
        {
            return model.Cp.Const(state.Entrance);
        }

        var entrance = model.Cp.Int(state.Entrance, state.Entrance + (model.Options.Delays?[attacker] ?? 0), $"entrance[{attacker}]");
        model.Cp.Model.Add(entrance == model.Delays[attacker] + state.Entrance);
        return entrance;
    }

    private static AttackerVars Fixed(MoveModel model, AttackerState state, int attacker)
    {
        var cp = model.Cp;
        var ready = Delayed.IsEntrance(state) ? state.SetsOffAt : state.ReadyAt;
        var comes = state.SetsOffAt + model.Scene.WalkTime(attacker, state.Distance);
        var readyAt = cp.Int(ready, model.LatestReady, $"ready0[{attacker}]");
        cp.Model.Add(readyAt == model.Delays[attacker] + ready);
        var threat = cp.Int(comes, model.LatestThreat, $"threat0[{attacker}]");
        cp.Model.Add(threat == model.Delays[attacker] + comes);
        return new AttackerVars
        {
            Bearing = cp.Const(state.Bearing),
            Distance = cp.Const(state.Distance),
            Posture = cp.Const((int)state.Posture),
            OpenUntil = cp.Const(Math.Max(-1, state.OpenUntil)),
            ReadyAt = readyAt,
            Threat = threat,
            Grip = cp.Const(state.Grip?.Index ?? 0),
            Active = state.IsActive ? cp.True : cp.False,
            Out = state.Posture == Posture.Out ? cp.True : cp.False,
            Controlled = state.Posture.IsControlled() ? cp.True : cp.False,
            Gripping = state.Posture == Posture.Gripping ? cp.True : cp.False,
            Gone = state.Gone ? cp.True : cp.False,
        };
    }

    private static AttackerVars Open(MoveModel model, AttackerPart person, int attacker)
    {
        var cp = model.Cp;
        var bearing = person.Bearing is { } b ? cp.Const(b.HalfHours) : cp.Int(0, 23, $"bearing[{attacker}]");
        IntVar distance;
        if (person.Distance is { } fixedDistance)
        {
            distance = cp.Const(fixedDistance.Value);
        }
        else
        {
            distance = cp.Model.NewIntVarFromDomain(Google.OrTools.Util.Domain.FromValues([.. Distances.Select(d => (long)d)]), $"distance[{attacker}]");
        }

        var threat = cp.Int(0, model.LatestThreat, $"threat0[{attacker}]");
        cp.Model.Add(threat == model.Entrances[attacker] + DistancePart.WalkTime(model, attacker, distance, $"walk0[{attacker}]"));
        return new AttackerVars
        {
            Bearing = bearing,
            Distance = distance,
            Posture = cp.Const((int)(person.Kneels is null ? Posture.Ready : Posture.Knelt)),
            OpenUntil = cp.Const(-1),
            ReadyAt = model.Entrances[attacker],
            Threat = threat,
            Grip = cp.Const(0),
            Active = cp.True,
            Out = cp.False,
            Controlled = cp.False,
            Gripping = cp.False,
            Gone = cp.False,
        };
    }
}
