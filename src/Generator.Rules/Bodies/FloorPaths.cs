namespace Generator.Rules.Bodies;

/// <summary>The shortest ways on foot over a floor, round what stands on it and past the hero's mark.</summary>
/// <param name="floor">The floor.</param>
/// <param name="beside">Room kept from the mark, in centimetres.</param>
internal sealed class FloorPaths(FloorReach floor, int beside)
{
    private readonly Place[] corners = [.. floor.Corners().Concat(FloorReach.Round(default, beside)).Where(floor.Holds)];

    /// <summary>Nothing stands on the straight way.</summary>
    public bool IsClear(Place from, Place to) => !FloorReach.IsNear(default, beside, from, to) && floor.Between(from, to) is null;

    /// <summary>The shortest way to a place from any of some others; null where there is none.</summary>
    public IReadOnlyList<Place>? Shortest(IReadOnlyList<Place> starts, Place goal)
    {
        // Dijkstra's search from the goal outwards; nobody goes on from a start.
        Place[] places = [goal, .. corners, .. starts];
        var far = places.Select((_, i) => i == 0 ? 0 : double.PositiveInfinity).ToArray();
        var next = new int[places.Length];
        var done = new bool[places.Length];
        while (true)
        {
            var here = -1;
            for (var i = 0; i < places.Length; i++)
            {
                if (!done[i] && far[i] < double.PositiveInfinity && (here < 0 || far[i] < far[here] - 1e-6))
                {
                    here = i;
                }
            }

            if (here < 0)
            {
                return null;
            }

            if (here > corners.Length)
            {
                return [.. Back(here)];
            }

            done[here] = true;
            for (var i = 0; i < places.Length; i++)
            {
                var length = far[here] + places[here].To(places[i]);
                if (!done[i] && length < far[i] - 1e-6 && IsClear(places[i], places[here]))
                {
                    (far[i], next[i]) = (length, here);
                }
            }
        }

        IEnumerable<Place> Back(int from)
        {
            for (var i = from; i != 0; i = next[i])
            {
                yield return places[i];
            }

            yield return goal;
        }
    }

    /// <summary>The same from the nearest edge of the floor, where nothing stands.</summary>
    public IReadOnlyList<Place>? FromTheEdge(Place goal) => Shortest([.. corners.Prepend(goal).SelectMany(floor.EdgesFrom).Where(p => floor.On(p) is null)], goal);
}
