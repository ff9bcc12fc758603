using System.Collections.Concurrent;
using Generator.Domain;

namespace Generator.Rules.Bodies;

/// <summary>
/// How those who are not in from the start come onto the floor: on foot from the nearest way in, or, where the floor has none, from its edge straight behind their place, round whatever stands
/// there, at their own speed, so that they stand at their place at their entrance. Whoever would have to set off before the count-in has done a part of the way when it begins.
/// </summary>
public sealed class Entries
{
    private readonly FloorReach floor;
    private readonly FloorPaths paths;
    private readonly IReadOnlyList<(string Name, Place Place)> doors;
    private readonly ConcurrentDictionary<(int Bearing, int Distance), WayOn> ways = new();

    public Entries(FloorPlan plan, FloorReach floor, Settle settle)
    {
        this.floor = floor;
        paths = new FloorPaths(floor, settle.LaneBeside.Value);
        doors = [.. plan.WaysIn.Select(w => (w.Name, new Place(w.X.Value - plan.MarkX.Value, w.Y.Value - plan.MarkY.Value)))];
    }

    /// <summary>The way to an opening place.</summary>
    public WayOn To(int bearing, int distance) => ways.GetOrAdd((bearing, distance), key => Worked(key.Bearing, key.Distance));

    /// <summary>The way of somebody until they stand at their place at their entrance, and there on.</summary>
    /// <param name="scene">Their speed and the count-in.</param>
    /// <param name="attacker">Who.</param>
    /// <param name="bearing">Of their place, in half hours.</param>
    /// <param name="distance">Of their place, in centimetres.</param>
    /// <param name="entrance">In half counts; 0 for who is in from the start and has no way to go.</param>
    public static Leg? Legs(Scene scene, int attacker, int bearing, int distance, int entrance)
    {
        if (entrance <= 0)
        {
            return null;
        }

        var places = scene.Entries.To(bearing, distance).Places;
        var ends = new double[places.Count];
        ends[^1] = entrance;
        for (var i = places.Count - 2; i >= 0; i--)
        {
            ends[i] = ends[i + 1] - scene.HalfCounts(attacker, places[i].To(places[i + 1]));
        }

        var opens = -scene.Settle.LeadInMost.Value;
        Leg? way = null;
        for (var i = 1; i < places.Count; i++)
        {
            if (ends[i] <= opens || ends[i] <= ends[i - 1])
            {
                continue;
            }

            var late = Math.Max(opens, ends[i - 1]);
            var start = places[i - 1].Towards(places[i], (late - ends[i - 1]) / (ends[i] - ends[i - 1]));
            way = new Leg(LegKind.Enters, -1, late, ends[i], start, places[i], way);
        }

        return new Leg(LegKind.Rests, -1, entrance, double.PositiveInfinity, places[^1], places[^1], way);
    }

    private WayOn Worked(int bearing, int distance)
    {
        var place = Place.At(bearing, distance);
        if (doors.Count == 0)
        {
            var edge = Place.At(bearing, Math.Max(distance, floor.Edge(bearing)));
            return floor.On(edge) is null && paths.IsClear(edge, place) ? new WayOn(null, [edge, place], null)
                : paths.FromTheEdge(place) is { } round ? new WayOn(null, round, null)
                : new WayOn(null, [edge, place], floor.Between(edge, place) ?? floor.On(edge));
        }

        if (paths.Shortest([.. doors.Select(d => d.Place)], place) is { } way)
        {
            return new WayOn(doors.First(d => d.Place == way[0]).Name, way, null);
        }

        var (name, nearest) = doors.MinBy(d => d.Place.To(place));
        return new WayOn(name, [nearest, place], floor.Between(nearest, place));
    }
}
