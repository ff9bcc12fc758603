namespace Generator.Library.Marking;

/// <summary>
/// Marks along a way round what stands on the floor: each next one lies nearer to the end, as one walks, and the way from one to the next is straight and clear. The best of all such rows of spots
/// is found layer by layer, for every number of marks.
/// </summary>
internal sealed class MarkWay
{
    /// <summary>From one mark to the next on a way, in centimetres. Common practice, no source.</summary>
    private const double Pace = 250;

    /// <summary>Of every leg so much must bring the hero nearer to the end.</summary>
    private const double Nearer = 0.75;

    /// <summary>How many spots are tried for the first mark.</summary>
    private const int Firsts = 6;

    private readonly OpenFloor floor;
    private readonly Legs legs;
    private readonly WayEnd to;
    private readonly Spot[] spots;
    private readonly double[] cost;
    private readonly List<(int Spot, double Way)>[] next;
    private readonly double[] away;

    private MarkWay(OpenFloor floor, Legs legs, Spot first, WayEnd to, int seed)
    {
        (this.floor, this.legs, this.to) = (floor, legs, to);
        spots = [first, .. floor.Spots().Where(s => s != first), .. to.IsExact ? (Spot[])[new Spot(to.X, to.Y)] : []];
        var dice = new Random(seed);
        cost = [.. spots.Select(s => dice.NextDouble() / 2 + 1 - floor.Around(s))];
        next = Neighbours();
        away = Distances();
    }

    /// <summary>The marks of a way; null with what stands against it.</summary>
    /// <param name="floorFrom">The floor with its cameras, which are seen from the first mark.</param>
    /// <param name="legs">Ways from mark to mark.</param>
    /// <param name="from">Where it begins.</param>
    /// <param name="to">Where it ends.</param>
    /// <param name="count">How many marks, both ends among them; null: as the length wants.</param>
    /// <param name="most">The most that a fight has.</param>
    /// <param name="seed">Which of many ways that are about as good.</param>
    public static (IReadOnlyList<Spot>? Marks, WayFault? Fault) Choose(Func<Spot, OpenFloor> floorFrom, Legs legs, WayEnd from, WayEnd to, int? count, int most, int seed)
    {
        WayFault? fault = null;
        foreach (var first in FirstsOf(floorFrom, from, seed))
        {
            var way = new MarkWay(floorFrom(first), legs, first, to, seed);
            var rows = way.Rows(most);
            if (rows.Where(r => count is null || r.Marks.Count == count).OrderBy(r => r.Cost).FirstOrDefault() is { Marks: { } marks })
            {
                return (marks, null);
            }

            fault ??= new WayFault(way.away[0] < double.MaxValue, [.. rows.Select(r => r.Marks.Count)], way.away[0]);
        }

        return (null, fault ?? new WayFault(false, [], 0) { NoFirst = true });
    }

    private static IEnumerable<Spot> FirstsOf(Func<Spot, OpenFloor> floorFrom, WayEnd from, int seed)
    {
        if (from.IsExact)
        {
            return [new Spot(from.X, from.Y)];
        }

        var open = floorFrom(new Spot(from.X, from.Y));
        var dice = new Random(seed);
        return [.. open.Spots().Where(from.IsAt).Select(s => (Spot: s, Cost: from.Cost(s) - (2 * open.Around(s)) + (dice.NextDouble() / 4))).OrderBy(s => s.Cost).Take(Firsts).Select(s => s.Spot).Where(s => floorFrom(s).CanStand(s))];
    }

    /// <summary>For every number of marks, from two on, the best row that comes to the end.</summary>
    private List<(IReadOnlyList<Spot> Marks, double Cost)> Rows(int most)
    {
        var rows = new List<(IReadOnlyList<Spot>, double)>();
        var best = new double[spots.Length];
        Array.Fill(best, double.MaxValue);
        best[0] = 0;
        var before = new List<int[]>();
        for (var marks = 2; marks <= most; marks++)
        {
            (best, var came) = Layer(best);
            before.Add(came);
            var last = Enumerable.Range(0, spots.Length).Where(i => best[i] < double.MaxValue && to.IsAt(spots[i])).Select(i => (Spot: i, Cost: best[i] + (2 * to.Cost(spots[i])))).OrderBy(e => e.Cost).FirstOrDefault((Spot: -1, Cost: 0));
            if (last.Spot >= 0)
            {
                rows.Add((Back(before, last.Spot), last.Cost));
            }
        }

        return rows;
    }

    private (double[] Best, int[] Came) Layer(double[] best)
    {
        var (layer, came) = (new double[spots.Length], new int[spots.Length]);
        Array.Fill(layer, double.MaxValue);
        for (var i = 0; i < spots.Length; i++)
        {
            if (best[i] == double.MaxValue)
            {
                continue;
            }

            foreach (var (j, way) in next[i])
            {
                var all = best[i] + cost[j] + Math.Pow((way - Pace) / 100, 2) + 1 - legs.Share(way);
                if (all < layer[j] && legs.IsGood(way) && away[j] < double.MaxValue && away[i] - away[j] >= Nearer * way)
                {
                    (layer[j], came[j]) = (all, i);
                }
            }
        }

        return (layer, came);
    }

    private List<Spot> Back(List<int[]> before, int last)
    {
        var row = new List<Spot> { spots[last] };
        for (var layer = before.Count - 1; layer >= 0; layer--)
        {
            last = before[layer][last];
            row.Add(spots[last]);
        }

        row.Reverse();
        return row;
    }

    private List<(int, double)>[] Neighbours()
    {
        List<(int, double)>[] all = [.. spots.Select(_ => new List<(int, double)>())];
        for (var i = 0; i < spots.Length; i++)
        {
            for (var j = i + 1; j < spots.Length; j++)
            {
                if (spots[i].To(spots[j]) is var way && way <= legs.Most && floor.CanGo(spots[i], spots[j]))
                {
                    all[i].Add((j, way));
                    all[j].Add((i, way));
                }
            }
        }

        return all;
    }

    /// <summary>How far it is from every spot to the end, as one walks (Dijkstra); unlimited where no way leads there.</summary>
    private double[] Distances()
    {
        var all = new double[spots.Length];
        var queue = new PriorityQueue<int, double>();
        for (var i = 0; i < spots.Length; i++)
        {
            all[i] = to.IsAt(spots[i]) ? to.IsExact ? 0 : to.Away(spots[i]) : double.MaxValue;
            if (all[i] < double.MaxValue)
            {
                queue.Enqueue(i, all[i]);
            }
        }

        while (queue.TryDequeue(out var i, out var far))
        {
            if (far > all[i])
            {
                continue;
            }

            foreach (var (j, way) in next[i])
            {
                if (far + way < all[j])
                {
                    all[j] = far + way;
                    queue.Enqueue(j, all[j]);
                }
            }
        }

        return all;
    }
}
