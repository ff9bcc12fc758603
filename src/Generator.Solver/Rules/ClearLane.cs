using Generator.Domain;
using Generator.Solver.Filling;
using Google.OrTools.Sat;

namespace Generator.Solver.Rules;

/// <summary>Nobody is sent or falls through another performer, an obstacle or the floor's edge: the edge beforehand, people in answers.</summary>
public sealed class ClearLane : RuleModule
{
    public override string Id => "clear-lane";

    public override void Post(MoveModel model)
    {
        foreach (var slot in model.Slots)
        {
            var stays = model.ReactionIs(slot, r => !r.RunsOff, $"stays[{slot.Index}]");
            var runsOff = model.ReactionIs(slot, r => r.RunsOff, $"runsoff[{slot.Index}]");
            var falls = model.ReactionIs(slot, FallsOutwards, $"fallsout[{slot.Index}]");
            for (var a = 0; a < model.Cast; a++)
            {
                OnTheFloor(model, slot.TargetAfter, a, slot.Targets[a], stays, falls, $"edge[{slot.Index},{a}]");
                RunsOff(model, slot.TargetAfter, slot.Targets[a], runsOff, $"exit[{slot.Index},{a}]");
                if (!ReferenceEquals(slot.Seconds[a], model.Cp.False))
                {
                    OnTheFloor(model, slot.After.Attackers[a], a, slot.Seconds[a], stays, model.Cp.And($"bothfall[{slot.Index},{a}]", falls, slot.TakesTwo), $"secondedge[{slot.Index},{a}]");
                }
            }
        }
    }

    public override IEnumerable<IReadOnlyList<ILiteral>> Refute(ModelAnswer answer)
    {
        var clashes = new FloorClashes(answer);
        return [.. clashes.Of(FloorConcern.Lane), .. new FloorEntrances(answer).Of(FloorConcern.Lane), .. clashes.OffTheFloor(), .. clashes.LedOffTheFloor()];
    }

    private static void OnTheFloor(MoveModel model, AttackerVars after, int a, BoolVar hits, BoolVar stays, BoolVar falls, string name)
    {
        if (ReferenceEquals(hits, model.Cp.False))
        {
            return;
        }

        var edge = FloorParts.Edge(model, after.Bearing, name);
        model.Cp.Model.Add(after.Distance <= edge).OnlyEnforceIf([hits, stays]);
        if (!ReferenceEquals(falls, model.Cp.False))
        {
            model.Cp.Model.Add(after.Distance + model.Scene.AxisOf(a) <= edge).OnlyEnforceIf([hits, falls]);
        }
    }

    /// <summary>Whoever runs off finds nothing in the way to the floor's edge.</summary>
    private static void RunsOff(MoveModel model, AttackerVars after, BoolVar hits, BoolVar runsOff, string name)
    {
        var closed = Enumerable.Range(0, Bearing.Circle).Select(b => model.Scene.Floor.InTheWay(b) is null ? 0L : 1L).ToArray();
        if (ReferenceEquals(hits, model.Cp.False) || closed.All(c => c == 0))
        {
            return;
        }

        var stands = model.Cp.Int(0, 1, name);
        model.Cp.Model.AddElement(after.Bearing, closed, stands);
        model.Cp.Model.Add(stands == 0).OnlyEnforceIf([hits, runsOff]);
    }

    /// <summary>Ends lying with the head outwards after a fall.</summary>
    private static bool FallsOutwards(Reaction reaction) => reaction is { EndsLying: true, RunsOff: false } && reaction.Lies != Lying.Across;
}
