using Generator.Domain;
using Generator.Paperwork.Following;
using Generator.Paperwork.Text;
using Generator.Rules.Bodies;
using Generator.Rules.Replaying;
using Generator.Rules.Sight;
using Sight = Generator.Rules.Sight;

namespace Generator.Paperwork.Floor;

/// <summary>Draws the floor as it is used in a part of a routine.</summary>
public sealed class FloorPainter
{
    /// <summary>Font size of labels.</summary>
    public const double Size = 16;

    /// <summary>Font size of the hours round the clock.</summary>
    private const double HourSize = 13;

    /// <summary>Font size of everything on a small plan, so that it can still be read.</summary>
    private const double SmallPlan = 17;

    private const double WidestName = 150;

    /// <summary>So many units farther a label goes to keep off each piece of a path.</summary>
    private const double OnPath = 6;

    /// <summary>Breadth of the floor's edge, with a little air.</summary>
    private const double EdgeBreadth = 5;

    /// <summary>From the side of a mat to the middle of its name.</summary>
    private const double Corner = 40;

    /// <summary>A name, and from and until when it lies there.</summary>
    private const double WidestProp = 340;

    private static readonly int[] Hours = [0, 12, 6, 18, 2, 4, 8, 10, 14, 16, 20, 22];

    /// <summary>How many of the hours there is room for on a small plan.</summary>
    private const int MainHours = 4;

    private readonly PaperSource source;
    private readonly Course course;
    private readonly LensSigns signs;
    private readonly FloorPeople people;
    private readonly IReadOnlyList<Camera> cameras;
    private readonly bool isSmall;

    public FloorPainter(PaperSource source, Course course)
    {
        (this.source, this.course, cameras) = (source, course, source.Brief.Cameras);
        Window = new PlanWindow(
            source.Brief.Floor,
            [
                .. course.Performers.SelectMany(p => p.Ways).Select(w => w.Place),
                .. course.Props.SelectMany(p => p.Spells).Where(s => s.State.Lies).Select(s => s.State.Place),
                .. source.Steps.SelectMany(s => Rules.Rules.Thing.Used(source.Scene, s)).Select(u => u.Thing).Distinct().SelectMany(t => Corners(source.Brief.Floor, t)),
            ],
            [.. Enumerable.Range(0, source.Scene.Marks.Count).Select(m => source.Scene.Marks[m])]);
        signs = new LensSigns(Hit.Of(source.Scene, source.Steps), Window);
        people = new FloorPeople(source, Window);
    }

    private static IEnumerable<Place> Corners(FloorPlan floor, Obstacle thing)
    {
        var (x, y) = (thing.X.Value - floor.MarkX.Value, thing.Y.Value - floor.MarkY.Value);
        return [new Place(x, y), new Place(x + thing.Width.Value, y + thing.Depth.Value)];
    }

    private FloorPainter(FloorPainter of, PlanWindow window, IReadOnlyList<Camera>? cameras = null, bool isSmall = false) =>
        (source, course, Window, signs, people, this.cameras, this.isSmall) = (of.source, of.course, window, of.signs.On(window), new FloorPeople(of.source, window), cameras ?? of.cameras, isSmall);

    public PlanWindow Window { get; }

    private double LabelSize => isSmall ? SmallPlan : Size;

    private double RimSize => isSmall ? SmallPlan : HourSize;

    /// <summary>Draws on the whole floor instead of the part on which people are.</summary>
    public static FloorPainter OfAll(PaperSource source, Course course) => new(new FloorPainter(source, course), PlanWindow.Whole(source.Brief.Floor, PlanWindow.Side));

    /// <summary>The whole floor and, with it, these cameras instead of those of the brief, where they stand; one that is farther off than this stands at the edge of the drawing.</summary>
    /// <param name="source">The routine.</param>
    /// <param name="course">Its course.</param>
    /// <param name="cameras">The cameras.</param>
    /// <param name="farthest">Centimetres from the mark.</param>
    public static FloorPainter OfCameras(PaperSource source, Course course, IReadOnlyList<Camera> cameras, int farthest) => new(
        new FloorPainter(source, course), PlanWindow.Beside(source.Brief.Floor, cameras.Where(c => c.Distance.Value <= farthest).Select(c => Place.At(c.Bearing.HalfHours, c.Distance.Value))), cameras);

    /// <summary>The whole floor: every obstacle, camera and way in, and nobody on it.</summary>
    public FloorPicture Whole()
    {
        var whole = new FloorPainter(this, PlanWindow.Whole(source.Brief.Floor), isSmall: true);
        var (first, last) = Window.Seen;
        var (a, b) = (whole.Window.Of(first), whole.Window.Of(last));
        return whole.Empty() with { Cut = new Box(a.X, a.Y, b.X - a.X, b.Y - a.Y).Within(whole.Window.Inner) };
    }

    /// <summary>Where the bar stands that says how long a metre is.</summary>
    public Box ScaleBar => new(PlanWindow.Margin, Window.Height - 14, 100 * Window.Scale, 12);

    /// <summary>The empty floor: obstacles, cameras and the clock, with nobody on it.</summary>
    public FloorPicture Empty() => Paint([], course.From, course.From, []);

    /// <summary>Everybody where they open, whoever is not in yet included.</summary>
    public FloorPicture Opening() => Paint([], course.From, course.From, [], opening: people.Opening());

    /// <summary>The same for playback: labels keep off the places where people will be.</summary>
    public FloorPicture Stage()
    {
        const double Near = 2;
        var placer = Placer;
        var places = new HashSet<(int Who, double X, double Y)>();
        foreach (var performer in course.Performers)
        {
            for (var time = course.From; time <= course.To; time++)
            {
                var at = Window.Held(performer.PlaceAt(time), Shapes.Radius);
                if (performer.FigureAt(time) != Figure.Away && places.Add((performer.Attacker, Math.Round(at.X / Near), Math.Round(at.Y / Near))))
                {
                    placer.Take(Shapes.Around(new Marker(performer.Attacker, at, at, 0, Figure.Standing, "here")));
                }
            }
        }

        foreach (var room in LyingProp.Rooms(course, Window))
        {
            placer.Take(room);
        }

        return Paint([], course.From, course.From, [], placer) with { Props = [] };
    }

    /// <summary>Everybody's places, paths and falls during some moves.</summary>
    /// <param name="steps">The moves; at least one.</param>
    /// <param name="only">Numbers in the brief of those who are shown; null for everybody.</param>
    public FloorPicture Of(IReadOnlyList<Step> steps, IReadOnlyList<int>? only = null)
    {
        var from = steps[0].Attack is null ? steps[0].Start : Math.Min(steps[0].Start, AttackerTrail.AttackStart(steps[0]));
        var to = steps.Max(s => s.Over) + 1;
        return Paint(steps, from, to, [.. course.Performers.Where(p => only?.Contains(p.Attacker) != false)]);
    }

    private LabelPlacer Placer => new(Window.Width, Window.Height) { Home = Window.Inner };

    /// <summary>The marks between which the hero goes; one alone needs no sign beside the hero's own.</summary>
    private IEnumerable<Door> Marks() => !source.Brief.Travels
        ? []
        : source.Brief.Marks.Select((m, i) => (m.Name, Place: source.Scene.Marks[i])).Where(m => Window.Shows(m.Place)).Select(m => new Door(Window.Of(m.Place), Page.Clean(m.Name), IsMark: true));

    private FloorPicture Paint(IReadOnlyList<Step> steps, int from, int to, IReadOnlyList<PerformerCourse> performers, LabelPlacer? labels = null, IReadOnlyList<Marker>? opening = null)
    {
        var placer = labels ?? Placer;
        var markers = opening?.ToList() ?? performers.Select(p => (Performer: p, From: FloorPeople.SeenFrom(p, from, to))).Where(p => p.From < to).Select(p => people.MarkerOf(p.Performer, p.From)).ToList();
        var ways = performers.Where(p => FloorPeople.IsOnTheMove(p, FloorPeople.SeenFrom(p, from, to), to)).Select(p => people.WayOf(p, FloorPeople.SeenFrom(p, from, to), to)).ToList();
        var ends = ways.Where(w => course.Performers[w.Performer + 1].FigureAt(to) != Figure.Away).Select(w => people.MarkerOf(course.Performers[w.Performer + 1], to, "end")).ToList();
        var falls = steps.SelectMany(people.FallsIn).Where(f => performers.Any(p => p.Attacker == f.Body.Performer)).ToList();
        var lenses = cameras.Select(c => signs.Of(c, steps)).ToList();
        var all = Spread.Of([.. markers, .. ends], [.. lenses.Select(LensSigns.RoomOf)], Window.Inner);
        (markers, ends) = ([.. all.Take(markers.Count)], [.. all.Skip(markers.Count)]);
        placer.Take(ScaleBar);
        foreach (var marker in all)
        {
            placer.Note(SignOf(marker));
            placer.Take(Shapes.Around(marker));
            var (sin, cos) = Math.SinCos(marker.Facing * Math.PI / 180);
            placer.Take(Box.Around(marker.At.X + (sin * Shapes.Radius * 1.5), marker.At.Y - (cos * Shapes.Radius * 1.5), 10, 10));
        }

        foreach (var (index, lens) in lenses.Index())
        {
            placer.Note(SignOf(index, lens));
            placer.Take(LensSigns.RoomOf(lens));
        }

        placer.TryAt("1 m", new Point(ScaleBar.Right + 16, ScaleBar.Y + 6), RimSize, "hour");
        PlaceHours(placer);
        ShunLines(placer, ways, lenses);
        var things = source.Brief.Floor.Obstacles.Select(o => Thing.Of(o, source.Brief.Floor, Window)).Where(t => t.Box.Overlaps(Window.Inner)).Select(t => t with { Box = t.Box.Within(Window.Inner) }).ToList();
        var mats = source.Brief.Floor.Mats.Select(m => Thing.Of(m, source.Brief.Floor, Window)).Where(t => t.Box.Overlaps(Window.Inner)).Select(t => t with { Box = t.Box.Within(Window.Inner) }).ToList();
        var doors = source.Brief.Floor.WaysIn.Select(w => (Name: Page.Clean(w.Name), Place: new Place(w.X.Value - source.Brief.Floor.MarkX.Value, w.Y.Value - source.Brief.Floor.MarkY.Value)))
            .Where(w => Window.Shows(w.Place)).Select(w => new Door(Window.Of(w.Place), w.Name)).Concat(Marks()).ToList();
        foreach (var door in doors)
        {
            placer.Take(Box.Around(door.At.X, door.At.Y, 16, 16));
        }

        var props = labels is null ? LyingProp.In(course, Window, from, to).ToList() : [];
        props.ForEach(p => placer.Take(Box.Around(p.At.X, p.At.Y, 2 * LyingProp.Room, 2 * LyingProp.Room)));

        foreach (var strip in things.SelectMany(t => t.Strips))
        {
            placer.Shun(strip, Thing.Hatched);
        }

        List<Outline> bodies = [.. falls.Select(f => f.Body), .. markers.Select(m => (Marker: m, Body: course.Performers[m.Performer + 1].BodyAt(FloorPeople.SeenFrom(course.Performers[m.Performer + 1], from, to)))).Where(m => m.Body is not null).Select(m => people.OutlineOf(m.Marker.Performer, m.Body!.Value, m.Marker.Style))];
        foreach (var body in bodies)
        {
            placer.Cover(body);
            placer.Note(SignOf(body));
        }

        foreach (var marker in markers)
        {
            var performer = course.Performers[marker.Performer + 1];
            placer.Near(opening is null ? people.NameOf(performer, from, FloorPeople.SeenFrom(performer, from, to)) : TextSize.Name(Page.Clean(performer.Name), Size, 120), SignOf(marker), LabelSize, $"who w{performer.Attacker + 1}");
        }

        for (var c = 0; c < lenses.Count; c++)
        {
            placer.Near(signs.Text(cameras[c], steps), SignOf(c, lenses[c]), LabelSize, "lens", [.. things.Select(t => t.Box)]);
        }

        foreach (var (fall, text) in falls)
        {
            placer.Near(text, SignOf(fall), LabelSize, "fall");
        }

        // The name of a thing on another would be taken for its, and so would a camera's.
        things.ForEach(t => placer.Take(t.Box));
        var key = new PlanKey([.. things.Select(t => t.Name), .. doors.Select(d => d.Name), .. props.Select(p => p.Name), .. mats.Select(m => m.Name)], isSmall);
        for (var p = 0; p < props.Count; p++)
        {
            placer.Near(key.Of(things.Count + doors.Count + p, WidestProp), Sign.Of($"prop{p}", props[p].At, LyingProp.Room), LabelSize, "prop");
        }

        for (var d = 0; d < doors.Count; d++)
        {
            placer.Near(key.Of(things.Count + d, WidestName), Sign.Of($"door{d}", doors[d].At, 9), LabelSize, "door");
        }

        for (var t = 0; t < things.Count; t++)
        {
            placer.Near(key.Of(t, WidestName), Sign.Of($"thing{t}", Centre(things[t].Box), Math.Min(things[t].Box.Width, things[t].Box.Height) / 2), LabelSize, "thing");
        }

        // People stand in the middle of a mat, so it is named at a corner.
        for (var m = 0; m < mats.Count; m++)
        {
            placer.Near(key.Of(things.Count + doors.Count + props.Count + m, WidestName), Sign.Of($"mat{m}", new Point(mats[m].Box.X + Corner, mats[m].Box.Bottom - (Size / 2)), 0), LabelSize, "mat");
        }

        return new FloorPicture
        {
            Window = Window,
            Height = placer.Height,
            Things = things,
            Mats = mats,
            Doors = doors,
            Props = props,
            Lenses = lenses,
            Ways = ways,
            Bodies = bodies,
            Markers = [.. ends, .. markers],
            Labels = placer.Labels,
            Key = key.Explained,
        };
    }

    /// <summary>Paths and the lines along which hits read are shunned, and so is where only the drawing ends; the floor's own edge strikes out whatever stands on it.</summary>
    private void ShunLines(LabelPlacer placer, IEnumerable<Way> ways, IEnumerable<Lens> lenses)
    {
        foreach (var way in ways)
        {
            placer.Shun(way.Points, cost: OnPath);
        }

        foreach (var line in lenses.SelectMany(l => l.Reads.Select(r => (IReadOnlyList<Point>)[l.At, r])))
        {
            placer.Shun(line);
        }

        foreach (var (from, to, isTorn) in Window.Sides)
        {
            if (isTorn)
            {
                placer.Shun([from, to], cost: OnPath);
            }
            else
            {
                placer.Bar(from, to, EdgeBreadth);
            }
        }
    }

    private static Sign SignOf(Marker marker) => Sign.Of(OwnerOf(marker.Performer), marker.At, Shapes.Radius + 2);

    private static Sign SignOf(Outline body) => Sign.Of(OwnerOf(body.Performer), body);

    private static Sign SignOf(int camera, Lens lens) => Sign.Of($"lens{camera}", lens.At, 9);

    private static string OwnerOf(int performer) => $"performer{performer}";

    private static Point Centre(Box box) => new(box.X + (box.Width / 2), box.Y + (box.Height / 2));

    /// <summary>The hours round the floor; the four main ones come first when there is no room for all.</summary>
    private void PlaceHours(LabelPlacer placer)
    {
        foreach (var hour in Hours.Take(isSmall ? MainHours : Hours.Length))
        {
            var at = Window.Held(Place.At(hour, 100_000), -PlanWindow.HourOut);
            placer.TryAt(new Bearing(hour).ToClockText() + ":00", at, RimSize, "hour");
        }
    }
}
