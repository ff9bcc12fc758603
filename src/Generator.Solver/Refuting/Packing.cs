using Generator.Domain;
using Generator.Library;
using Generator.Rules;

namespace Generator.Solver.Refuting;

/// <summary>
/// Where attackers can open on a floor, each at least the spacing from all others. Proves that a place is closed, that two places are too near to one another, and that
/// so many people do not find room.
/// <para>Sound because every bearing is covered by stretches, from the nearest at which anybody opens to the farthest that the floor has, and two stretches have room
/// beside one another where any two places of them do. A search that grows too long proves nothing.</para>
/// </summary>
internal static class Packing
{
    /// <summary>Nobody opens nearer to the mark than a metre.</summary>
    public const int Nearest = 100;

    /// <summary>A floor of no more places than this is looked at centimetre by centimetre, a larger one in stretches of <see cref="Coarse"/>.</summary>
    private const int Fine = 800;

    /// <summary>Centimetres.</summary>
    private const int Coarse = 5;

    /// <summary>Stretches tried before nothing is proven.</summary>
    private const int MostTried = 20_000;

    /// <summary>Stretches tried before it is looked whether there can be room at all: nearly every floor has it, and shows it at once.</summary>
    private const int Hopeful = 40;

    public static IEnumerable<string> Against(Workings workings)
    {
        var (scene, cast) = (workings.Scene, workings.Brief.Attackers);
        var fixedPlaces = false;
        for (var a = 0; a < scene.Cast; a++)
        {
            if (cast[a] is not { Bearing: { } bearing, Distance: { } distance })
            {
                continue;
            }

            if (distance.Value > scene.Floor[bearing.HalfHours])
            {
                fixedPlaces = true;
                yield return $"{cast[a].Name} opens {distance} out at {bearing.ToClockText()} o'clock, where the floor is clear for {new Centimetres(scene.Floor[bearing.HalfHours])}{(scene.Floor.InTheWay(bearing.HalfHours) is { } thing ? $": {thing} is in the way" : "")}.";
            }

            for (var b = a + 1; b < scene.Cast; b++)
            {
                if (cast[b] is { Bearing: { } other, Distance: { } far } && FloorGeometry.Apart(bearing.Apart(other), distance.Value, far.Value) < scene.Settle.Spacing.Value)
                {
                    fixedPlaces = true;
                    yield return $"{cast[a].Name} and {cast[b].Name} open less than {scene.Settle.Spacing} apart.";
                }
            }
        }

        if (!fixedPlaces && !Fits(workings.Brief, scene.Settle))
        {
            yield return NoRoom(scene);
        }
    }

    /// <summary>All attackers find a place each. True where that was not found out.</summary>
    public static bool Fits(Brief brief, Settle settle)
    {
        var (tried, spacing) = (0, settle.Spacing.Value);
        var floor = new FloorReach(brief.Floor, settle, brief.Cameras);
        var fixedOnes = brief.Attackers.Where(a => a.Bearing is not null || a.Distance is not null).Select(a => Stretches(floor, a)).OrderBy(p => p.Count).ToList();
        return PlaceFixed(0, Stretches(floor, null)) != false;

        bool? PlaceFixed(int next, List<Stretch> free, params ReadOnlySpan<Stretch> taken)
        {
            if (next == fixedOnes.Count)
            {
                return PlaceFree(brief.Attackers.Count - next, free);
            }

            foreach (var place in fixedOnes[next])
            {
                var isClear = true;
                foreach (var other in taken)
                {
                    isClear &= place.Apart(other) >= spacing;
                }

                if (isClear && PlaceFixed(next + 1, [.. free.Where(p => p.Apart(place) >= spacing)], [.. taken, place]) is not false and var fits)
                {
                    return fits;
                }

                if (++tried > MostTried)
                {
                    return null;
                }
            }

            return false;
        }

        // Which of them stands where is all the same, so the next one takes a place farther down the list.
        bool? PlaceFree(int wanted, List<Stretch> free)
        {
            if (wanted == 0)
            {
                return true;
            }

            if (tried > Hopeful && Cover(free, spacing) < wanted)
            {
                return false;
            }

            for (var i = 0; i < free.Count; i++)
            {
                if (++tried > MostTried)
                {
                    return null;
                }

                var place = free[i];
                if (PlaceFree(wanted - 1, [.. free.Skip(i + 1).Where(p => p.Apart(place) >= spacing)]) is not false and var fits)
                {
                    return fits;
                }
            }

            return false;
        }
    }

    /// <summary>No more than so many find room on some places: these in groups of which no two are the spacing apart.</summary>
    private static int Cover(List<Stretch> places, int spacing)
    {
        var groups = new List<List<Stretch>>();
        foreach (var place in places)
        {
            if (groups.Find(g => g.TrueForAll(p => p.Apart(place) < spacing)) is { } group)
            {
                group.Add(place);
            }
            else
            {
                groups.Add([place]);
            }
        }

        return groups.Count;
    }

    /// <summary>Everywhere that an attacker may open; null for one of whom the brief says nothing.</summary>
    private static List<Stretch> Stretches(FloorReach floor, AttackerPart? part)
    {
        var step = Enumerable.Range(0, Bearing.Circle).Sum(b => Math.Max(0, floor[b] - Nearest)) > Fine ? Coarse : 1;
        var stretches = new List<Stretch>();
        for (var b = 0; b < Bearing.Circle; b++)
        {
            if (part?.Bearing is { } bearing && bearing.HalfHours != b)
            {
                continue;
            }

            if (part?.Distance is { } distance)
            {
                if (distance.Value <= floor[b])
                {
                    stretches.Add(new Stretch(b, distance.Value, distance.Value));
                }

                continue;
            }

            for (var at = Nearest; at <= floor[b]; at += step)
            {
                stretches.Add(new Stretch(b, at, Math.Min(floor[b], at + step - 1)));
            }
        }

        return stretches;
    }

    private static string NoRoom(Scene scene)
    {
        var floor = scene.Brief.Floor;
        var things = Enumerable.Range(0, Bearing.Circle).Select(scene.Floor.InTheWay).OfType<string>().Distinct().ToList();
        var room = Enumerable.Range(0, scene.Cast).Last(n => n == 0 || Fits(scene.Brief with { Attackers = [.. scene.Brief.Attackers.Take(n)] }, scene.Settle));
        var who = scene.Cast == 1 ? $"{scene.Brief.Attackers[0].Name} does not find a place to open" : $"{scene.Cast} attackers do not find a place each to open";
        var among = things.Count == 0 ? string.Empty : $" with {Workings.List(things)} on it";
        var most = room == 0 ? "for nobody" : $"for {room} at the most";
        return $"{who} on a floor of {floor.Width} by {floor.Depth}{among}: a metre or more from the mark, {scene.Settle.EdgeClearance} from edges and obstacles and {scene.Settle.Spacing} from one another, there is room {most}.";
    }

    /// <summary>Where somebody can open.</summary>
    /// <param name="Bearing">Half hours.</param>
    /// <param name="Near">Nearest, in centimetres from the mark.</param>
    /// <param name="Far">Farthest.</param>
    private sealed record Stretch(int Bearing, int Near, int Far)
    {
        /// <summary>The farthest that two in these stretches can be apart, which is between ends of them.</summary>
        public int Apart(Stretch other)
        {
            var round = new Bearing(Bearing).Apart(new Bearing(other.Bearing));
            var apart = Math.Max(FloorGeometry.Apart(round, Near, other.Far), FloorGeometry.Apart(round, Far, other.Near));
            return Math.Max(apart, Math.Max(FloorGeometry.Apart(round, Near, other.Near), FloorGeometry.Apart(round, Far, other.Far)));
        }
    }
}
