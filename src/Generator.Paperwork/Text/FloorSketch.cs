using Generator.Domain;

namespace Generator.Paperwork.Text;

/// <summary>
/// A floor plan drawn with characters, seen from above, 12 o'clock at the top. A row stands for twice the length of a column, as
/// letters are about twice as high as wide.
/// </summary>
internal static class FloorSketch
{
    private const int MostColumns = 40;

    private const int MostRows = 24;

    private const int Margin = 5;

    private const char MarkSign = '^';

    private const char PropSign = '*';

    private const char MatSign = '.';

    private const string ObstacleLetters = "abcdefghijklmnopqrstuvwxyz";

    /// <summary>Centimetres that a column may stand for.</summary>
    private static readonly int[] Scales = [25, 50, 100, 200, 250, 500, 1000];

    public static IEnumerable<string> Of(Brief brief, IReadOnlyList<Placement> placements)
    {
        var floor = brief.Floor;
        var scale = ScaleOf(floor);
        var grid = Draw(brief, placements, scale, out var outside);
        var markColumn = Math.Clamp(floor.MarkX.Value / scale, 0, grid[0].Length - 1);
        var markRow = RowOf(floor.MarkY.Value, floor, scale, grid.Length);
        var legend = Legend(brief, placements, scale, outside).ToList();
        var narrow = legend.SelectMany(l => Page.Wrap(l, Page.Width - grid[0].Length - (2 * Margin) - 5)).ToList();
        var beside = new Queue<string>(narrow.Count < grid.Length ? narrow : []);
        foreach (var line in Page.Hang("FLOOR  ", $"{Words.Number(floor.Width.Metres)} m wide, {Words.Number(floor.Depth.Metres)} m deep, {Words.Of(floor.Surface)}; seen from above, 12 o'clock at the top"))
        {
            yield return line;
        }

        var edge = new string(' ', Margin) + "+" + new string('-', grid[0].Length) + "+";
        yield return Under("12 o'clock", markColumn);
        yield return edge;
        for (var row = 0; row < grid.Length; row++)
        {
            var left = row == markRow ? "9:00 " : new string(' ', Margin);
            var right = row == markRow ? " 3:00" : "     ";
            var words = row > 0 && beside.Count > 0 ? "   " + beside.Dequeue() : string.Empty;
            yield return $"{left}|{new string(grid[row])}|{right}{words}".TrimEnd();
        }

        yield return edge;
        yield return Under("6 o'clock", markColumn);
        foreach (var line in narrow.Count < grid.Length ? [] : legend.SelectMany(l => Page.Hang(new string(' ', Margin), l)))
        {
            yield return line;
        }
    }

    private static string Under(string label, int column) => new string(' ', Margin + 1 + column) + label;

    private static int ScaleOf(FloorPlan floor) =>
        Scales.FirstOrDefault(s => Cells(floor.Width.Value, s) <= MostColumns && Cells(floor.Depth.Value, 2 * s) <= MostRows, Scales[^1]);

    private static int Cells(int length, int scale) => Math.Max(1, (length + scale - 1) / scale);

    private static int RowOf(int y, FloorPlan floor, int scale, int rows) => Math.Clamp((floor.Depth.Value - y) / (2 * scale), 0, rows - 1);

    private static char[][] Draw(Brief brief, IReadOnlyList<Placement> placements, int scale, out HashSet<int> outside)
    {
        var floor = brief.Floor;
        var rows = Cells(floor.Depth.Value, 2 * scale);
        var columns = Cells(floor.Width.Value, scale);
        var grid = Enumerable.Range(0, rows).Select(_ => Enumerable.Repeat(' ', columns).ToArray()).ToArray();
        foreach (var mat in floor.Mats)
        {
            Fill(grid, floor, new Obstacle(mat.Name, mat.X, mat.Y, mat.Width, mat.Depth), MatSign, scale);
        }

        for (var o = 0; o < floor.Obstacles.Count; o++)
        {
            Fill(grid, floor, floor.Obstacles[o], ObstacleMark(o), scale);
        }

        grid[RowOf(floor.MarkY.Value, floor, scale, rows)][Math.Clamp(floor.MarkX.Value / scale, 0, columns - 1)] = MarkSign;
        for (var m = 1; m < brief.Marks.Count; m++)
        {
            var sign = MarkSignOf(m);
            Put(grid[RowOf(brief.Marks[m].Y.Value, floor, scale, rows)], Math.Clamp(brief.Marks[m].X.Value / scale, 0, columns - sign.Length), sign);
        }

        if (brief.Ally is { } ally)
        {
            _ = Put(grid[RowOf(floor.MarkY.Value + ally.Mark.Y, floor, scale, rows)], Math.Clamp((floor.MarkX.Value + ally.Mark.X) / scale, 0, columns - 2), MarkSignOf(1));
        }

        outside = [];
        for (var a = 0; a < Math.Min(placements.Count, brief.Attackers.Count); a++)
        {
            var (x, y) = PlaceOf(placements[a], floor);
            if (placements[a].Entrance > HalfCounts.Zero || x < 0 || y < 0 || x > floor.Width.Value || y > floor.Depth.Value || !Put(grid[RowOf(y, floor, scale, rows)], Math.Min(x / scale, columns - 2), Words.Sign(a)))
            {
                outside.Add(a);
            }
        }

        for (var p = 0; p < brief.Props.Count; p++)
        {
            if (brief.Props[p] is { With: null } lies)
            {
                _ = Put(grid[RowOf(lies.Y.Value, floor, scale, rows)], Math.Min(lies.X.Value / scale, columns - 1), PropSignOf(brief, p));
            }
        }

        return grid;
    }

    private static (int X, int Y) PlaceOf(Placement placement, FloorPlan floor)
    {
        var (x, y) = placement.Bearing.Direction;
        return (floor.MarkX.Value + (int)Math.Round(placement.Distance.Value * x), floor.MarkY.Value + (int)Math.Round(placement.Distance.Value * y));
    }

    /// <summary>Puts a sign where its column is, or, when somebody stands there already, into the next free place with room between.</summary>
    private static bool Put(char[] row, int column, string sign)
    {
        for (var c = Math.Max(0, column); c + sign.Length <= row.Length; c++)
        {
            if (!Enumerable.Range(c, sign.Length).Any(i => IsTaken(row[i])) && (c == 0 || c == column || !IsTaken(row[c - 1])))
            {
                sign.CopyTo(0, row, c, sign.Length);
                return true;
            }
        }

        return false;
    }

    /// <summary>The mark on which the hero opens is the sign alone, the others bear their number: "^2".</summary>
    private static string MarkSignOf(int mark) => MarkSign + (mark == 0 ? string.Empty : Words.Number(mark + 1));

    /// <summary>One that lies alone is the sign alone, several are counted: "*2".</summary>
    private static string PropSignOf(Brief brief, int prop) => PropSign + (brief.Props.Count(p => p.With is null) == 1 ? string.Empty : Words.Number(brief.Props.Take(prop + 1).Count(p => p.With is null)));

    private static bool IsTaken(char cell) => cell is MarkSign or PropSign or 'A' or (>= '1' and <= '9');

    private static void Fill(char[][] grid, FloorPlan floor, Obstacle obstacle, char mark, int scale)
    {
        for (var row = 0; row < grid.Length; row++)
        {
            var top = floor.Depth.Value - (row * 2 * scale);
            if (obstacle.Y.Value >= top || obstacle.Y.Value + obstacle.Depth.Value <= top - (2 * scale))
            {
                continue;
            }

            for (var column = 0; column < grid[row].Length; column++)
            {
                var left = column * scale;
                if (obstacle.X.Value < left + scale && obstacle.X.Value + obstacle.Width.Value > left)
                {
                    grid[row][column] = mark;
                }
            }
        }
    }

    private static char ObstacleMark(int index) => index < ObstacleLetters.Length ? ObstacleLetters[index] : '#';

    private static IEnumerable<string> Legend(Brief brief, IReadOnlyList<Placement> placements, int scale, HashSet<int> outside)
    {
        yield return $"{MarkSign} {Page.Clean(brief.Hero.Name)} on {(brief.Travels ? "the first mark, " + Page.Clean(brief.Marks[0].Name) : "the mark")}";
        if (brief.Ally is { } ally)
        {
            yield return $"{MarkSignOf(1)} {Page.Clean(ally.Part.Name)}, the ally, on a mark of their own";
        }

        for (var m = 1; m < brief.Marks.Count; m++)
        {
            yield return $"{MarkSignOf(m)} the mark {Page.Clean(brief.Marks[m].Name)}";
        }

        for (var a = 0; a < brief.Attackers.Count; a++)
        {
            var enters = a < placements.Count && placements[a].Entrance > HalfCounts.Zero ? $", in play from count {placements[a].Entrance.ToCountText()}" : null;
            var beyond = enters ?? (outside.Contains(a) || a >= placements.Count ? " (not on this plan)" : string.Empty);
            yield return Words.Sign(a) + " " + Page.Clean(brief.Attackers[a].Name) + beyond;
        }

        for (var o = 0; o < brief.Floor.Obstacles.Count; o++)
        {
            yield return ObstacleMark(o) + " " + Page.Clean(brief.Floor.Obstacles[o].Name);
        }

        if (brief.Floor.Mats.Count > 0)
        {
            yield return $"{MatSign} {string.Join(", ", brief.Floor.Mats.Select(m => Page.Clean(m.Name)))} (mat{(brief.Floor.Mats.Count == 1 ? string.Empty : "s")})";
        }

        for (var p = 0; p < brief.Props.Count; p++)
        {
            if (brief.Props[p].With is null)
            {
                yield return $"{PropSignOf(brief, p)} {Page.Clean(brief.Props[p].Name)}, on the floor";
            }
        }

        foreach (var camera in brief.Cameras)
        {
            yield return $"{Page.Clean(camera.Text)}: {Words.Clock(camera.Bearing)}, {camera.Distance} away, {camera.Height} high";
        }

        if (brief.Travels)
        {
            yield return $"hours and distances here are from {Page.Clean(brief.Marks[0].Name)}";
        }

        yield return "scale: a row is " + Words.Number(scale / 50m) + " m";
    }
}
