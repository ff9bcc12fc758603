using System.Collections.Concurrent;
using Generator.Domain;
using Generator.Rules;
using Generator.Solver.Filling;
using Google.OrTools.Sat;

namespace Generator.Solver.Rules;

/// <summary>Places on the floor as the rules of space need them: distances in tens of centimetres, angles in half hours, looked up in tables.</summary>
internal static class FloorParts
{
    /// <summary>Tens of centimetres from the mark that tables reach; whoever is farther counts as this far.</summary>
    public const int Tens10 = 80;

    /// <summary>A landing limit that binds nobody.</summary>
    public const int NoLimit = 10_000;

    private const int Angles = (Bearing.Circle / 2) + 1;

    // The tables depend on nothing but a clearance, and every row of every window asks for them.
    private static readonly ConcurrentDictionary<int, long[]> Limits = new();
    private static readonly ConcurrentDictionary<(int Spacing, bool Nearest), long[]> Ends = new();

    /// <summary>For each place of another (angle, tens), the fewest tens of a landing that would pass them closer than the clearance.</summary>
    public static long[] LandingLimits(int clearance) => Limits.GetOrAdd(clearance, BuildLimits);

    private static long[] BuildLimits(int clearance)
    {
        var limits = new long[Angles * (Tens10 + 1)];
        for (var delta = 0; delta < Angles; delta++)
        {
            for (var tens = 0; tens <= Tens10; tens++)
            {
                limits[(delta * (Tens10 + 1)) + tens] = FirstLanding(delta, tens * 10, clearance);
            }
        }

        return limits;
    }

    /// <summary>
    /// For each place of another (angle, tens), one end of the stretch of a ray, in tens, on which somebody would stand too close to them.
    /// An empty stretch runs from 1000 to −1 and binds nobody.
    /// </summary>
    public static long[] Stretches(int spacing, bool nearest) => Ends.GetOrAdd((spacing, nearest), static key => BuildStretches(key.Spacing, key.Nearest));

    private static long[] BuildStretches(int spacing, bool nearest)
    {
        var ends = new long[Angles * (Tens10 + 1)];
        for (var delta = 0; delta < Angles; delta++)
        {
            for (var tens = 0; tens <= Tens10; tens++)
            {
                var close = Enumerable.Range(0, Tens10 + (spacing / 10) + 1).Where(t => FloorGeometry.Apart(delta, t * 10, tens * 10) < spacing).ToList();
                ends[(delta * (Tens10 + 1)) + tens] = close.Count == 0 ? (nearest ? 1000 : -1) : nearest ? close[0] : close[^1];
            }
        }

        return ends;
    }

    /// <summary>Nearest multiple of ten centimetres, in tens.</summary>
    public static IntVar Tens(MoveModel model, IntVar distance, string name)
    {
        var (low, high) = Engine.Cp.Range(distance);
        var tens = model.Cp.Int((low + 5) / 10, (high + 5) / 10, name);
        model.Cp.Model.Add(LinearExpr.Affine(tens, 10, 0) <= distance + 5);
        model.Cp.Model.Add(LinearExpr.Affine(tens, 10, 9) >= distance + 5);
        return tens;
    }

    /// <summary>Farthest place on the floor on a bearing.</summary>
    public static IntVar Edge(MoveModel model, IntVar bearing, string name)
    {
        var edges = Enumerable.Range(0, Bearing.Circle).Select(b => (long)model.Scene.Floor[b]).ToArray();
        var edge = model.Cp.Int(edges.Min(), edges.Max(), name);
        model.Cp.Model.AddElement(bearing, edges, edge);
        return edge;
    }

    /// <summary>Half hours between two bearings, 0 to 12.</summary>
    public static IntVar Apart(MoveModel model, IntVar one, IntVar other, string name)
    {
        var way = model.Cp.Round(one - other, name + ".way");
        var apart = model.Cp.Int(0, Bearing.Circle / 2, name);
        model.Cp.Model.AddMinEquality(apart, [way, LinearExpr.Affine(way, -1, Bearing.Circle)]);
        return apart;
    }

    /// <summary>The entry of a table over angle and place (<see cref="LandingLimits"/>) for another attacker.</summary>
    public static IntVar LookUp(MoveModel model, long[] table, IntVar apart, IntVar tens, string name)
    {
        var cp = model.Cp;
        var (low, high) = Engine.Cp.Range(tens);
        (low, high) = (Math.Min(low, Tens10), Math.Min(high, Tens10));
        var count = high - low + 1;
        var part = new long[Angles * count];
        for (var delta = 0; delta < Angles; delta++)
        {
            Array.Copy(table, (delta * (Tens10 + 1)) + low, part, delta * count, count);
        }

        var found = cp.Int(part.Min(), part.Max(), name);
        if (Engine.Cp.IsConst(found))
        {
            return found;
        }

        var index = apart;
        if (count > 1)
        {
            var near = cp.Int(low, high, name + ".near");
            cp.Model.AddMinEquality(near, [tens, LinearExpr.Constant(Tens10)]);
            index = cp.Int(0, part.Length - 1, name + ".place");
            cp.Model.Add(index == (apart * count) + near - low);
        }

        cp.Model.AddElement(index, part, found);
        return found;
    }

    /// <summary>Literals that say that the attacker has run off in an earlier row.</summary>
    public static IReadOnlyList<BoolVar> Gone(MoveModel model, int beforeRow, int attacker)
    {
        var flees = new List<BoolVar>();
        foreach (var slot in model.Slots.Take(beforeRow))
        {
            var off = model.ReactionIs(slot, r => r.Posture == Posture.Out && r.Back.Value >= 200, $"off[{slot.Index}]");
            if (!ReferenceEquals(off, model.Cp.False))
            {
                flees.Add(model.Cp.And($"gone[{slot.Index},{attacker}]", off, slot.Targets[attacker]));
            }
        }

        return flees;
    }

    private static long FirstLanding(int delta, int other, int clearance)
    {
        for (var landing = 0; landing <= 10 * Tens10 * 2; landing += 10)
        {
            if (FloorGeometry.LaneDistance(delta, other, landing) < clearance)
            {
                return landing / 10;
            }
        }

        return NoLimit;
    }
}
