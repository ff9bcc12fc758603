using System.Globalization;
using System.Text.RegularExpressions;
using AngleSharp.Dom;
using AngleSharp.Html.Parser;
using Generator.Domain;
using Generator.Paperwork;
using Generator.Paperwork.Floor;
using Generator.Paperwork.Html;
using Generator.Rules;
using Generator.Testing;
using Newtonsoft.Json.Linq;
using Xunit.Abstractions;

namespace Generator.Cli.Tests.Papers;

/// <summary>
/// The plans of a page measured as somebody with a ruler would: by the bar that is a metre and the cross that is the mark. Floors of all sizes, with obstacles
/// anywhere, cameras on the floor and off it, and ways in on every side.
/// </summary>
public partial class PlansTests(ITestOutputHelper output)
{
    private int edges;
    private int cuts;
    private int obstacles;
    private int near;
    private int far;
    private int doors;
    private int labels;
    private int signs;
    private int keyed;

    [Fact]
    public void Edges_obstacles_cameras_and_ways_in_are_where_they_are_on_every_plan_and_on_the_whole_floor()
    {
        var plans = 0;
        for (var seed = 1; seed <= 64; seed++)
        {
            var brief = OnAnyFloor(new Chance(seed));
            var routine = RandomRoutine.Of(seed, Made.Book);
            routine = routine with { Brief = routine.Brief with { Floor = brief.Floor, Cameras = brief.Cameras, Attackers = [.. routine.Brief.Attackers.Select(a => a with { Bearing = null, Distance = null })] } };
            var page = new HtmlParser().ParseDocument(RoutinePaper.Of(new RoutineView(PaperSource.Of(new Scene(routine.Brief, Made.Book), routine))));
            foreach (var drawing in page.QuerySelectorAll("svg.plan"))
            {
                if (drawing.QuerySelector("use") is { } again)
                {
                    // The whole floor is drawn once and shown again beside every plan.
                    Assert.Equal("#whole-floor", again.GetAttribute("href"));
                    Assert.NotNull(page.QuerySelector("#whole-floor")!.Closest(".whole"));
                    continue;
                }

                Drawing(drawing, routine.Brief, drawing.Closest(".whole") is not null, $"seed {seed}");
                Clear(drawing, drawing.Id == "stage" ? Played(page) : Signs(drawing), $"seed {seed}");
                plans++;
            }
        }

        output.WriteLine($"{labels} labels, none over another or over {signs} signs");
        Assert.True(labels > 1000 && signs > 1000);
        output.WriteLine($"{plans} plans: {edges} edges, {cuts} cuts, {obstacles} obstacles, {near} cameras where they are, {far} with their distance, {doors} ways in, {keyed} letters");
        Assert.True(plans > 150 && edges > 300 && cuts > 100 && obstacles > 100 && near > 100 && far > 50 && doors > 100 && keyed > 5);
    }

    /// <summary>What the letters of a small plan stand for, by the text beside it.</summary>
    private Dictionary<string, string> KeyOf(IElement drawing)
    {
        var told = drawing.Closest(".whole")?.QuerySelector("figcaption")?.TextContent ?? string.Empty;
        var key = KeyEntry().Matches(told).ToDictionary(m => m.Groups["letter"].Value, m => m.Groups["name"].Value);
        keyed += key.Count;
        return key;
    }

    [GeneratedRegex(@"(?<=[.;] )(?<letter>[a-z]): (?<name>[^;.]+)")]
    private static partial Regex KeyEntry();

    private void Drawing(IElement drawing, Brief brief, bool whole, string where)
    {
        var floor = brief.Floor;
        var scale = Numbers(drawing.QuerySelector(".scale path")!)[5];
        var cross = Numbers(drawing.QuerySelector(".mark")!);
        (double X, double Y) InCentimetres(double x, double y) => (((x - ((cross[0] + cross[2]) / 2)) * 100 / scale) + floor.MarkX.Value, ((cross[1] - y) * 100 / scale) + floor.MarkY.Value);
        var key = KeyOf(drawing);
        var names = drawing.QuerySelectorAll(".label text").Select(t => key.GetValueOrDefault(t.TextContent, t.TextContent)).ToList();
        var shown = Span(drawing.QuerySelector(".floor")!, InCentimetres);

        // Drawings are written to a tenth of a unit, the bar too.
        var slack = (60 + (0.05 * Math.Max(3000, Math.Max(floor.Width.Value, floor.Depth.Value)))) / scale;
        bool Same(double one, double other) => Math.Abs(one - other) <= slack;

        // A straight side is an edge; where the floor goes on the side is torn.
        var straight = drawing.QuerySelectorAll("path.edge").Select(p => Numbers(p)).Select(n => (One: InCentimetres(n[0], n[1]), Other: InCentimetres(n[2], n[3]))).ToList();
        Assert.Equal(4, straight.Count + drawing.QuerySelectorAll("path.torn").Length);
        foreach (var (one, other) in straight)
        {
            var upright = Same(one.X, other.X);
            Assert.True(upright ? Same(one.X, 0) || Same(one.X, floor.Width.Value) : Same(one.Y, other.Y) && (Same(one.Y, 0) || Same(one.Y, floor.Depth.Value)), $"{where}: {one} to {other} of {floor.Width} by {floor.Depth}, slack {slack}");
        }

        Assert.Equal(straight.Count, new[] { Same(shown.Left, 0), Same(shown.Right, floor.Width.Value), Same(shown.Bottom, 0), Same(shown.Top, floor.Depth.Value) }.Count(e => e));
        Assert.True(!whole || straight.Count == 4, $"{where}: {straight.Count} edges, {shown} of {floor.Width} by {floor.Depth}");
        (edges, cuts) = (edges + straight.Count, cuts + 4 - straight.Count);

        var things = drawing.QuerySelectorAll("rect.thing").Select(t => Span(t, InCentimetres)).ToList();
        foreach (var thing in floor.Obstacles)
        {
            var (left, right) = (Math.Max(thing.X.Value, shown.Left), Math.Min(thing.X.Value + thing.Width.Value, shown.Right));
            var (bottom, top) = (Math.Max(thing.Y.Value, shown.Bottom), Math.Min(thing.Y.Value + thing.Depth.Value, shown.Top));
            if (whole || (left < right - (2 * slack) && bottom < top - (2 * slack)))
            {
                Assert.Contains(things, t => Same(t.Left, left) && Same(t.Right, right) && Same(t.Bottom, bottom) && Same(t.Top, top));
                Assert.Contains(thing.Name, names);
                obstacles++;
            }
        }

        var lenses = drawing.QuerySelectorAll("path.camera").Select(p => Numbers(p, "transform")).Select(n => InCentimetres(n[0], n[1])).ToList();
        Assert.Equal(brief.Cameras.Count, lenses.Count);
        foreach (var (camera, at) in brief.Cameras.Zip(lenses))
        {
            var (sin, cos) = Math.SinCos(camera.Bearing.Degrees * Math.PI / 180);
            var isThere = Same(at.X, floor.MarkX.Value + (sin * camera.Distance.Value)) && Same(at.Y, floor.MarkY.Value + (cos * camera.Distance.Value));
            var label = names.Single(l => l.StartsWith(camera.Text, StringComparison.Ordinal));
            var told = Metres().Match(label);
            Assert.True(isThere || (told.Success && Math.Abs(decimal.Parse(told.Groups["far"].Value, CultureInfo.InvariantCulture) - (camera.Distance.Value / 100m)) <= 0.5m), $"{where}: {label} at {at}");
            (near, far) = (near + (isThere ? 1 : 0), far + (isThere ? 0 : 1));
        }

        var ways = drawing.QuerySelectorAll("path.door").Select(p => Numbers(p, "transform")).Select(n => InCentimetres(n[0], n[1])).ToList();
        foreach (var way in floor.WaysIn)
        {
            var touches = way.X.Value >= shown.Left && way.X.Value <= shown.Right && way.Y.Value >= shown.Bottom && way.Y.Value <= shown.Top;
            Assert.True(!(whole || touches) || (ways.Exists(w => Same(w.X, way.X.Value) && Same(w.Y, way.Y.Value)) && names.Contains(way.Name)), $"{where}: {way.Name}");
            doors += whole || touches ? 1 : 0;
        }
    }

    /// <summary>No label is over another, over a sign or off the drawing.</summary>
    private void Clear(IElement drawing, List<Box> taken, string where)
    {
        var size = drawing.GetAttribute("viewBox")!.Split(' ').Select(Number).ToList();
        var placed = drawing.QuerySelectorAll(".label text").Select(t => (Text: t.TextContent, Size: Of(t, "font-size"), Line: Of(t, "y"), Middle: Of(t, "x")))
            .Select(t => (t.Text, Box: new Box(t.Middle - (TextSize.Width(t.Text, t.Size) / 2), t.Line - (t.Size * 0.8), TextSize.Width(t.Text, t.Size), t.Size))).ToList();
        for (var i = 0; i < placed.Count; i++)
        {
            Assert.True(new Box(size[0], size[1], size[2], size[3]).Holds(placed[i].Box), $"{where}: {placed[i].Text} is off the drawing");
            Assert.DoesNotContain(placed.Skip(i + 1), p => p.Box.Overlaps(placed[i].Box));
            Assert.True(!taken.Any(t => t.Overlaps(placed[i].Box)), $"{where}: {placed[i].Text} lies on a sign");
        }

        for (var i = 0; i < taken.Count && drawing.Id != "stage"; i++)
        {
            Assert.DoesNotContain(taken.Skip(i + 1), t => t.Overlaps(taken[i]));
        }

        (labels, signs) = (labels + placed.Count, signs + taken.Count);
    }

    /// <summary>The room of everybody's sign on a plan.</summary>
    private static List<Box> Signs(IElement drawing) => [.. drawing.QuerySelectorAll("g.marker > path:first-of-type").Select(p => Moved(Room(p), Numbers(p.ParentElement!, "transform")))];

    /// <summary>The room of everybody's sign in every half count of the playback, drawn back to the edge as its script does.</summary>
    private static List<Box> Played(IDocument page)
    {
        var course = JObject.Parse(page.QuerySelector("script#course")!.TextContent);
        var inner = course["inner"]!.Select(n => (double)n!).ToList();
        var rooms = page.QuerySelectorAll("#stage .actor").ToDictionary(a => (int)Number(a.GetAttribute("data-performer")!), a => Room(a.QuerySelector(":scope > path")!));
        var played = new List<Box>();
        foreach (var (performer, p) in course["performers"]!.Select((o, p) => (o, p)))
        {
            var ways = performer["ways"]!.Select(w => w.Select(n => (double)n!).ToList()).ToList();
            foreach (var (figure, time) in ((string)performer["figures"]!).Select((f, i) => (f, (double)(int)course["from"]! + i)).Where(f => f.f != 'A'))
            {
                var after = ways.FindIndex(w => w[0] > time);
                var (from, to) = (ways[after < 0 ? ^1 : Math.Max(0, after - 1)], ways[after < 0 ? ^1 : after]);
                var share = to[0] > from[0] ? Math.Clamp((time - from[0]) / (to[0] - from[0]), 0, 1) : 0;
                var (x, y) = (from[1] + ((to[1] - from[1]) * share), from[2] + ((to[2] - from[2]) * share));
                if (x >= inner[0] && x <= inner[2] && y >= inner[1] && y <= inner[3])
                {
                    played.Add(Moved(rooms[p], [x, y]));
                }
            }
        }

        return played;
    }

    private static Box Room(IElement path)
    {
        var numbers = Numbers(path).Chunk(2).ToList();
        var (left, top) = (numbers.Min(n => n[0]), numbers.Min(n => n[1]));
        return new Box(left, top, numbers.Max(n => n[0]) - left, numbers.Max(n => n[1]) - top);
    }

    private static Box Moved(Box box, List<double> by) => box with { X = box.X + by[0], Y = box.Y + by[1] };

    private static double Number(string text) => double.Parse(text, CultureInfo.InvariantCulture);

    private static double Of(IElement element, string attribute) => Number(element.GetAttribute(attribute)!);

    private static Brief OnAnyFloor(Chance chance)
    {
        var (width, depth) = (chance.Whole(300, chance.Percent(70) ? 1500 : 6000), chance.Whole(300, chance.Percent(70) ? 1200 : 5000));
        Centimetres At(int most) => new(chance.Whole(0, most));
        return new Brief
        {
            Attackers = [],
            Floor = new FloorPlan
            {
                Width = new Centimetres(width),
                Depth = new Centimetres(depth),
                MarkX = new Centimetres(chance.Whole(100, width - 100)),
                MarkY = new Centimetres(chance.Whole(100, depth - 100)),
                Obstacles = chance.List(0, 4, i => (At(width - 20), At(depth - 20)) is var (x, y) ? new Obstacle("crate " + (i + 1), x, y, new Centimetres(chance.Whole(10, width - x.Value)), new Centimetres(chance.Whole(10, depth - y.Value))) : throw new InvalidOperationException()),
                WaysIn = chance.List(0, 3, i => chance.Whole(0, 3) switch
                {
                    0 => new WayIn("door " + i, At(width), new Centimetres(depth + chance.Whole(0, 300))),
                    1 => new WayIn("door " + i, At(width), new Centimetres(0)),
                    2 => new WayIn("door " + i, new Centimetres(0), At(depth)),
                    _ => new WayIn("door " + i, new Centimetres(width + chance.Whole(0, 300)), At(depth)),
                }),
            },
            Cameras = chance.List(0, 4, i => new Camera("lens " + i, new Bearing(chance.Whole(0, 23)), new Centimetres(chance.Whole(75, chance.Percent(60) ? 500 : 3000)), new Centimetres(150))),
        };
    }

    private static (double Left, double Right, double Bottom, double Top) Span(IElement rectangle, Func<double, double, (double X, double Y)> inCentimetres)
    {
        var (x, y) = (Of(rectangle, "x"), Of(rectangle, "y"));
        var (one, other) = (inCentimetres(x, y), inCentimetres(x + Of(rectangle, "width"), y + Of(rectangle, "height")));
        return (one.X, other.X, other.Y, one.Y);
    }

    private static List<double> Numbers(IElement element, string attribute = "d") => [.. Figure().Matches(element.GetAttribute(attribute)!).Select(m => double.Parse(m.Value, CultureInfo.InvariantCulture))];

    [GeneratedRegex(@"-?\d+(\.\d+)?", RegexOptions.CultureInvariant | RegexOptions.NonBacktracking)]
    private static partial Regex Figure();

    [GeneratedRegex(@", (?<far>\d+(\.\d+)?) m\b", RegexOptions.CultureInvariant | RegexOptions.NonBacktracking)]
    private static partial Regex Metres();
}
