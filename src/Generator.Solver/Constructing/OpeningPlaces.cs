using Generator.Domain;
using Generator.Rules;

namespace Generator.Solver.Constructing;

/// <summary>Chooses where the attackers open, as far as the brief leaves it open: round the clock, and where cameras see their hero moments, for a fight changes bearings little.</summary>
internal static class OpeningPlaces
{
    private const int Tries = 200;

    /// <summary>Of those whose hero moments cameras see from some bearings only, in percent, how many open there: one less for every try that failed.</summary>
    private const int InSightPercent = 80;

    private const int Nearest = 150;

    private const int Farthest = 450;

    /// <summary>Placements that keep to the floor and to the spacing; null when none were found.</summary>
    public static IReadOnlyList<Placement>? Choose(Ground ground, Dice dice)
    {
        for (var i = 0; i < Tries; i++)
        {
            if (Once(ground.Scene, ground.Aims, dice, i) is { } placements)
            {
                return placements;
            }
        }

        return null;
    }

    private static Placement[]? Once(Scene scene, Aims aims, Dice dice, int attempt)
    {
        var order = Enumerable.Range(0, scene.Cast).ToArray();
        dice.Shuffle(order);
        var placements = new Placement[scene.Cast];
        var turn = dice.Next(5) - 2;
        for (var i = 0; i < scene.Cast; i++)
        {
            var a = order[i];
            var part = scene.Brief.Attackers[a];

            // Spread evenly round the clock at first; the longer nothing fits, the more freely.
            var loose = 2 + (attempt / 8);
            var spread = turn + (i * Bearing.Circle / scene.Cast) + dice.Next((2 * loose) + 1) - loose;
            var bearing = part.Bearing ?? (aims.FromSight[a] is { } away && dice.Percent(InSightPercent - attempt) ? InSight(away, spread) : new Bearing(spread));
            if ((part.Distance?.Value ?? Distance(scene.Floor[bearing.HalfHours], dice)) is not (> 0 and var distance) || distance > scene.Floor[bearing.HalfHours])
            {
                return null;
            }

            placements[a] = new Placement(bearing, new Centimetres(distance), part.Entrance ?? HalfCounts.Zero);
            for (var j = 0; j < i; j++)
            {
                var other = placements[order[j]];
                if (FloorGeometry.Apart(bearing.Apart(other.Bearing), distance, other.Distance.Value) < scene.Settle.Spacing.Value)
                {
                    return null;
                }
            }
        }

        return placements;
    }

    /// <summary>The bearing nearest to another of those that are nearest to being in sight.</summary>
    private static Bearing InSight(int[] away, int spread) =>
        new(Enumerable.Range(0, Bearing.Circle).MinBy(b => (Bearing.Circle * away[b]) + new Bearing(b).Apart(new Bearing(spread))));

    /// <summary>A whole number of 10 cm within the floor; 0 when there is no room.</summary>
    private static int Distance(int floor, Dice dice)
    {
        var farthest = Math.Min(Farthest, floor / 10 * 10);
        return farthest < Nearest ? 0 : Nearest + (10 * dice.Next(((farthest - Nearest) / 10) + 1));
    }
}
