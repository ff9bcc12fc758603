using Generator.Domain;

namespace Generator.Library.Marking;

/// <summary>Where on a floor the hero can stand and go straight: clear of its edge, of what stands and lies there, and of cameras.</summary>
internal sealed class OpenFloor
{
    /// <summary>The finest step from spot to spot, in centimetres: less than the shortest step of a technique.</summary>
    private const int Finest = 25;

    /// <summary>Places are whole multiples of this, in centimetres.</summary>
    private const int Tape = 5;

    /// <summary>Most steps along a side, so that a large floor has no more spots than a small one.</summary>
    private const int MostSteps = 24;

    /// <summary>How far round a spot is looked for room to fight, in centimetres. Common practice, no source.</summary>
    private static readonly int[] Rings = [120, 220];

    private readonly FloorPlan floor;
    private readonly int clearance;
    private readonly IReadOnlyList<KeptOff> off;

    /// <param name="floor">The floor.</param>
    /// <param name="clearance">What is kept free of its edge and of obstacles, in centimetres.</param>
    /// <param name="off">Cameras and props on it.</param>
    public OpenFloor(FloorPlan floor, int clearance, IReadOnlyList<KeptOff> off) => (this.floor, this.clearance, this.off) = (floor, Math.Max(clearance, MarkRule.Room), off);

    /// <summary>The spots of a net over the floor at which a mark may be.</summary>
    public IReadOnlyList<Spot> Spots() => [.. Steps(floor.Width.Value).SelectMany(x => Steps(floor.Depth.Value).Select(y => new Spot(x, y))).Where(CanStand)];

    /// <summary>A mark may be there.</summary>
    public bool CanStand(Spot spot) => IsClear(spot.X, spot.Y) && off.All(o => spot.To(o.X, o.Y) >= o.Stand);

    /// <summary>The straight way from one to the other is clear.</summary>
    public bool CanGo(Spot from, Spot to)
    {
        for (var i = 0; i < floor.Obstacles.Count; i++)
        {
            if (floor.Obstacles[i].IsCrossed(clearance - 1e-6, from.X, from.Y, to.X, to.Y))
            {
                return false;
            }
        }

        return off.All(o => Passes(o, from, to));
    }

    /// <summary>How much room to fight there is round a spot, 0 to 1: the share of places on two rings to which nothing closes the way.</summary>
    public double Around(Spot spot)
    {
        var open = 0;
        for (var b = 0; b < Bearing.Circle; b += 2)
        {
            var (dx, dy) = new Bearing(b).Direction;
            foreach (var ring in Rings)
            {
                var there = new Spot((int)(spot.X + (ring * dx)), (int)(spot.Y + (ring * dy)));
                open += IsClear(there.X, there.Y) && CanGo(spot, there) ? 1 : 0;
            }
        }

        return open / (double)(Rings.Length * Bearing.Circle / 2);
    }

    private bool IsClear(int x, int y)
    {
        if (MarkRule.ToEdge(x, y, floor) < clearance)
        {
            return false;
        }

        for (var i = 0; i < floor.Obstacles.Count; i++)
        {
            if (floor.Obstacles[i].Away(x, y) < clearance)
            {
                return false;
            }
        }

        return true;
    }

    private static bool Passes(KeptOff thing, Spot from, Spot to)
    {
        var (dx, dy) = ((double)to.X - from.X, (double)to.Y - from.Y);
        var square = (dx * dx) + (dy * dy);
        var share = square == 0 ? 0 : Math.Clamp((((thing.X - from.X) * dx) + ((thing.Y - from.Y) * dy)) / square, 0, 1);
        return Math.Sqrt(Math.Pow(from.X + (share * dx) - thing.X, 2) + Math.Pow(from.Y + (share * dy) - thing.Y, 2)) >= thing.Pass;
    }

    /// <summary>Even steps from one edge to the other, each a place that a tape measure shows; the first is as near to it as a mark may be, the last about so.</summary>
    private IEnumerable<int> Steps(int side)
    {
        var room = side - (2 * clearance);
        if (room < 0)
        {
            return [];
        }

        var steps = Math.Clamp(room / Finest, 1, MostSteps);
        return Enumerable.Range(0, steps + 1).Select(i => Math.Max(clearance, (clearance + (room * i / steps)) / Tape * Tape)).Distinct();
    }
}
