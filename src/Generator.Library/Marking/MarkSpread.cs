using Generator.Domain;

namespace Generator.Library.Marking;

/// <summary>
/// Marks spread over a floor, in the order in which they are visited: a walk from spot to spot that travel moves can make, with room to fight at each, no two near one another, and things
/// that may be used within reach. Where the floor has no room for that, they come nearer together.
/// </summary>
internal sealed class MarkSpread
{
    /// <summary>How far apart any two are, in centimetres, if there is room. Common practice, no source.</summary>
    private static readonly int[] Wide = [250, 200, 150];

    /// <summary>How many spots are tried for the first, and how often a walk goes on from a spot before it is given up.</summary>
    private const int Firsts = 8, Steps = 120;

    /// <summary>So far from a mark whoever is thrown, driven or held against a thing still meets it, in centimetres. Common practice, no source.</summary>
    private const int Reach = 180;

    private readonly OpenFloor floor;
    private readonly Legs legs;
    private readonly IReadOnlyList<Obstacle> things;
    private readonly IReadOnlyList<Spot> spots;
    private readonly double[] liked;
    private int left;

    /// <param name="floor">The floor.</param>
    /// <param name="legs">Ways from mark to mark.</param>
    /// <param name="things">Things of it that may be used.</param>
    /// <param name="seed">Which of the many.</param>
    public MarkSpread(OpenFloor floor, Legs legs, IReadOnlyList<Obstacle> things, int seed)
    {
        (this.floor, this.legs, this.things, spots) = (floor, legs, things, floor.Spots());
        var dice = new Random(seed);
        liked = [.. spots.Select(s => (2 * floor.Around(s)) + dice.NextDouble())];
    }

    /// <summary>So many spots; null where no room for them was found.</summary>
    /// <param name="count">2 or more.</param>
    /// <param name="first">The first where it is given; a mark may be there.</param>
    public IReadOnlyList<Spot>? Choose(int count, Spot? first)
    {
        IReadOnlyList<Spot> firsts = first is { } given ? [given] : [.. Enumerable.Range(0, spots.Count).OrderByDescending(i => liked[i]).Take(Firsts).Select(i => spots[i])];
        foreach (var apart in Wide.Append(legs.Least))
        {
            var walks = new List<List<Spot>>();
            foreach (var start in firsts)
            {
                left = Steps;
                var walk = new List<Spot>(count) { start };
                if (GoesOn(walk, count, apart))
                {
                    walks.Add(walk);
                }
            }

            if (walks.Count > 0)
            {
                return walks.MaxBy(w => things.Count(t => w.Exists(s => IsInReach(s, t))));
            }
        }

        return null;
    }

    private bool GoesOn(List<Spot> walk, int count, int apart)
    {
        if (walk.Count == count)
        {
            return true;
        }

        if (left-- <= 0)
        {
            return false;
        }

        foreach (var next in Next(walk, apart))
        {
            walk.Add(next);
            if (GoesOn(walk, count, apart))
            {
                return true;
            }

            walk.RemoveAt(walk.Count - 1);
        }

        return false;
    }

    /// <summary>Where it may go on, the best first.</summary>
    private List<Spot> Next(List<Spot> walk, int apart)
    {
        var here = walk[^1];
        var unserved = things.Where(t => !walk.Exists(s => IsInReach(s, t))).ToList();
        return [.. Enumerable.Range(0, spots.Count)
            .Where(i => legs.IsGood(here.To(spots[i])) && walk.TrueForAll(s => s.To(spots[i]) >= apart) && floor.CanGo(here, spots[i]))
            .OrderByDescending(i => liked[i] + (2 * legs.Share(here.To(spots[i]))) + Math.Min(2, unserved.Count(t => IsInReach(spots[i], t))) + Draws(unserved, spots[i]))
            .Select(i => spots[i])];
    }

    /// <summary>Nearer to the nearest thing that no mark is near yet is better, so that the walk comes there in the end.</summary>
    private static double Draws(List<Obstacle> unserved, Spot spot) => unserved.Count == 0 ? 0 : Math.Max(-3, -unserved.Min(t => t.To(spot.X, spot.Y)) / 150);

    private bool IsInReach(Spot spot, Obstacle thing) =>
        thing.To(spot.X, spot.Y) <= Reach && things.All(o => o == thing || !o.IsCrossed(0, spot.X, spot.Y, thing.NearestX(spot.X), thing.NearestY(spot.Y)));
}
