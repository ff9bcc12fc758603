using Generator.Domain;
using Generator.Rules;

namespace Generator.Solver;

/// <summary>
/// How many attackers can open on a floor at most, each at least the spacing from all others. Neighbouring bearings between any two places of which
/// there is less than the spacing hold one person together; what is left holds one for every spacing of its length. So it is never too few.
/// </summary>
internal static class FloorRoom
{
    /// <summary>Nobody opens nearer to the mark than a metre.</summary>
    public const int Nearest = 100;

    public static int For(Scene scene)
    {
        var spacing = scene.Settle.Spacing.Value;
        var farthest = Enumerable.Range(0, Bearing.Circle).Select(b => scene.Floor[b]).ToArray();
        var most = int.MaxValue;
        for (var first = 0; first < Bearing.Circle; first++)
        {
            most = Math.Min(most, From(first, farthest, spacing));
        }

        return most;
    }

    /// <summary>Covers the bearings from one on with as few groups as can be.</summary>
    private static int From(int first, int[] farthest, int spacing)
    {
        var room = 0;
        for (var i = 0; i < Bearing.Circle;)
        {
            var bearing = (first + i) % Bearing.Circle;
            if (farthest[bearing] < Nearest)
            {
                i++;
                continue;
            }

            var together = 1;
            while (i + together < Bearing.Circle && IsOnePlace(farthest, bearing, together + 1, spacing))
            {
                together++;
            }

            room += together > 1 ? 1 : ((farthest[bearing] - Nearest) / spacing) + 1;
            i += together;
        }

        return room;
    }

    /// <summary>No two places on so many bearings lie the spacing apart: between the ends of their stretches, which lie farthest apart, there is less.</summary>
    private static bool IsOnePlace(int[] farthest, int bearing, int number, int spacing)
    {
        for (var i = 0; i < number; i++)
        {
            for (var j = i; j < number; j++)
            {
                var (one, other) = (farthest[(bearing + i) % Bearing.Circle], farthest[(bearing + j) % Bearing.Circle]);
                if (one >= Nearest && other >= Nearest && new[] { FloorGeometry.Apart(j - i, Nearest, other), FloorGeometry.Apart(j - i, one, Nearest), FloorGeometry.Apart(j - i, one, other) }.Max() >= spacing)
                {
                    return false;
                }
            }
        }

        return true;
    }
}
