using System.Globalization;
using Generator.Domain;

namespace Generator.Library.Marking;

/// <summary>
/// What chosen marks are called: after the door or the thing beside which they lie, else after the part of the stage. Down is towards the audience, or towards the first camera, left and right are those of
/// somebody who looks there (terms of the trade).
/// </summary>
internal static class MarkNames
{
    /// <summary>Beside a thing means no farther from it than this, in centimetres; beside a way in as far again as a mark keeps away. Common practice, no source.</summary>
    private const int Beside = 150, BesideWayIn = 200;

    /// <summary>The marks with their names, no two alike.</summary>
    /// <param name="spots">Where they lie.</param>
    /// <param name="floor">The floor.</param>
    /// <param name="cameras">Cameras and sides of the audience.</param>
    public static IReadOnlyList<HeroMark> Of(IReadOnlyList<Spot> spots, FloorPlan floor, IReadOnlyList<Camera> cameras)
    {
        var names = new string?[spots.Count];
        foreach (var (at, name) in Near(spots, floor))
        {
            if (names[at] is null && !Taken(name))
            {
                names[at] = name;
            }
        }

        for (var i = 0; i < names.Length; i++)
        {
            var part = Part(spots[i], floor, Front(cameras));
            for (var number = 1; names[i] is null; number++)
            {
                var name = number == 1 ? part : $"{part} {number.ToString(CultureInfo.InvariantCulture)}";
                names[i] = Taken(name) ? null : name;
            }
        }

        return [.. spots.Select((s, i) => new HeroMark(names[i]!, new(s.X), new(s.Y)))];

        bool Taken(string name) => names.Contains(name, StringComparer.OrdinalIgnoreCase);
    }

    /// <summary>Marks beside something that has a name of its own, the nearest first.</summary>
    private static IEnumerable<(int Mark, string Name)> Near(IReadOnlyList<Spot> spots, FloorPlan floor)
    {
        var doors = floor.WaysIn.Where((w, i) => !IsNumber(w.Name, "way in")).SelectMany(w => spots.Select((s, i) => (Mark: i, w.Name, Away: s.To(w.X.Value, w.Y.Value), Most: BesideWayIn)));
        var things = floor.Obstacles.Where(o => !IsNumber(o.Name, "obstacle")).SelectMany(o => spots.Select((s, i) => (Mark: i, o.Name, Away: o.To(s.X, s.Y), Most: Beside)));
        return doors.Concat(things).Where(n => n.Away <= n.Most).OrderBy(n => n.Away).Select(n => (n.Mark, Side(n.Name)));
    }

    private static bool IsNumber(string name, string what) => name.StartsWith(what + " ", StringComparison.OrdinalIgnoreCase) && name[(what.Length + 1)..].All(char.IsAsciiDigit);

    private static string Side(string name) => (name.StartsWith("the ", StringComparison.OrdinalIgnoreCase) ? name[4..] : name) + " side";

    /// <summary>The quarter of the clock to which the stage is open: 0 for 12, 1 for 3, 2 for 6, 3 for 9.</summary>
    private static int Front(IReadOnlyList<Camera> cameras)
    {
        var looks = cameras.FirstOrDefault(c => c.IsAudience) ?? (cameras.Count > 0 ? cameras[0] : null);
        return looks is null ? 2 : (looks.Bearing.HalfHours + 3) / 6 % 4;
    }

    private static string Part(Spot spot, FloorPlan floor, int front)
    {
        var (across, along) = (Third(spot.X, floor.Width.Value), Third(spot.Y, floor.Depth.Value));
        var (down, left) = front switch
        {
            0 => (along, -across),
            1 => (across, along),
            2 => (-along, across),
            _ => (-across, -along),
        };
        return (down, left) switch
        {
            (0, 0) => "centre",
            (0, 1) => "stage left",
            (0, _) => "stage right",
            (1, 0) => "down centre",
            (1, 1) => "down left",
            (1, _) => "down right",
            (_, 0) => "up centre",
            (_, 1) => "up left",
            _ => "up right",
        };
    }

    /// <summary>In which third of a side a place lies: −1, 0 or 1.</summary>
    private static int Third(int at, int side) => 3 * at < side ? -1 : 3 * at > 2 * side ? 1 : 0;
}
