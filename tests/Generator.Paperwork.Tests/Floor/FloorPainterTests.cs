using Generator.Domain;
using Generator.Paperwork.Floor;
using Generator.Paperwork.Following;
using Generator.Rules;
using Generator.Rules.Bodies;
using Generator.Testing;

namespace Generator.Paperwork.Tests.Floor;

/// <summary>Plans of many routines that nobody wrote with plans in mind: crowded, huge, off the floor, with long names.</summary>
public class FloorPainterTests
{
    private const int Seeds = 300;

    /// <summary>Somebody whose whole name has no room goes by its first words, and only a single one is cut.</summary>
    [Theory]
    [InlineData("Ines Valverde", 90, "Ines")]
    [InlineData("Ines Valverde", 200, "Ines Valverde")]
    [InlineData("Ana Maria de la Cruz", 110, "Ana Maria")]
    [InlineData("Konstantinopolska", 90, "Konstan…")]
    public void A_name_without_room_is_called_by_its_first_words(string name, double width, string shown)
    {
        Assert.Equal(shown, TextSize.Name(name, 16, width));
        Assert.InRange(TextSize.Width(TextSize.Name("A1 ", name, 16, width), 16), 0, width);
    }

    [Fact]
    public void No_label_lies_on_another_or_on_a_marker_or_off_the_drawing()
    {
        var (plans, labels, beside) = (0, 0, 0);
        foreach (var (painter, plan) in Plans().Concat(Others()))
        {
            plans++;
            labels += plan.Labels.Count;
            beside += plan.Labels.Count(l => l.Box.Y >= painter.Window.Height);
            var sheet = new Box(0, 0, plan.Width, plan.Height);
            for (var i = 0; i < plan.Labels.Count; i++)
            {
                Assert.True(sheet.Holds(plan.Labels[i].Box), plan.Labels[i].Text);
                Assert.DoesNotContain(plan.Labels.Skip(i + 1), l => l.Box.Overlaps(plan.Labels[i].Box));
                Assert.DoesNotContain(plan.Markers, m => plan.Labels[i].Box.Overlaps(Shapes.Around(m)));
            }
        }

        Assert.True(plans > 4 * Seeds && labels > 10 * plans && beside > 0, $"{plans} plans, {labels} labels, {beside} under the drawing");
    }

    /// <summary>A name over the hatching of somebody who lies cannot be read: where there is no room beside it, it stands under the drawing, with a line to what it names.</summary>
    [Fact]
    public void No_label_lies_over_somebody_on_the_floor()
    {
        var (labels, over) = (0, 0);
        foreach (var (painter, plan) in Plans().Where(p => p.Plan.Bodies.Count > 0))
        {
            foreach (var label in plan.Labels.Where(l => l.Kind != "hour" && l.Box.Y < painter.Window.Height))
            {
                (labels, over) = (labels + 1, over + (plan.Bodies.Any(b => Covers(label.Box, b)) ? 1 : 0));
            }
        }

        Assert.True(labels > 1000 && over == 0, $"{over} of {labels} labels over a body");
    }

    /// <summary>The middle of a line of text lies on a body, judged point by point.</summary>
    private static bool Covers(Box label, Outline body)
    {
        var (sin, cos) = Math.SinCos(-body.Turned * Math.PI / 180);
        return Enumerable.Range(0, 21).Select(i => new Point(label.X + (label.Width * i / 20), label.Y + (label.Height / 2))).Any(p =>
        {
            var (x, y) = (p.X - body.Feet.X, p.Y - body.Feet.Y);
            return body.Body.Holds(new Point((x * cos) - (y * sin), (x * sin) + (y * cos)));
        });
    }

    /// <summary>Whoever looks for an hour of the clock finds nothing else written there while there is room on the floor.</summary>
    [Fact]
    public void Names_of_cameras_people_and_things_keep_off_the_ring_of_hours()
    {
        var (inside, on) = (0, 0);
        foreach (var (painter, plan) in Plans())
        {
            foreach (var label in plan.Labels.Where(l => l.Kind != "hour" && l.Box.Y < painter.Window.Height))
            {
                (inside, on) = painter.Window.Inner.Holds(label.Box) ? (inside + 1, on) : (inside, on + 1);
            }
        }

        Assert.True(inside > 1000 && on < inside / 5, $"{inside} on the floor, {on} on the ring");
        var ferry = new FloorPainter(Ferry.Source, Course.Of(Ferry.Source));

        // Only where somebody lies before the camera its name goes under the floor, and under the hours too.
        var (free, under) = (0, 0);
        foreach (var plan in Ferry.Source.Phrases.Select(p => ferry.Of(p.Of(Ferry.Source.Steps))))
        {
            var near = plan.Bodies.Any(b => plan.Lenses.Any(l => Math.Abs(l.At.X - b.Feet.X) < 150 && Math.Abs(l.At.Y - b.Feet.Y) < 100));
            foreach (var label in plan.Labels.Where(l => l.Kind == "lens"))
            {
                Assert.True(near || ferry.Window.Inner.Holds(label.Box), label.Text);
                (free, under) = (free + (near ? 0 : 1), under + (ferry.Window.Inner.Holds(label.Box) ? 0 : 1));
            }
        }

        Assert.True(free > 2 && under < 3, $"{free} with room, {under} under the floor");
    }

    [Fact]
    public void Everybody_on_the_floor_is_drawn_once_with_a_name_and_no_marker_hides_another()
    {
        foreach (var (_, plan) in Plans())
        {
            var here = plan.Markers.Where(m => m.Style != "end").ToList();
            Assert.Equal(here.Count, here.DistinctBy(m => m.Performer).Count());
            Assert.Equal(here.Count, plan.Labels.Count(l => l.Kind.StartsWith("who", StringComparison.Ordinal)));
            Assert.Contains(here, m => m.Performer < 0);
            for (var i = 0; i < plan.Markers.Count; i++)
            {
                Assert.DoesNotContain(plan.Markers.Skip(i + 1), m => Math.Abs(m.At.X - plan.Markers[i].At.X) < 8 && Math.Abs(m.At.Y - plan.Markers[i].At.Y) < 8);
            }
        }
    }

    [Fact]
    public void Places_are_to_scale()
    {
        var source = PaperSource.Of(Fights.SceneOf(Fights.Night), Fights.Night);
        var painter = new FloorPainter(source, Course.Of(source));
        var (mark, east, north) = (painter.Window.Of(Place.Mark), painter.Window.Of(Place.At(6, 200)), painter.Window.Of(Place.At(0, 100)));
        Assert.Equal(200 * painter.Window.Scale, east.X - mark.X, 6);
        Assert.Equal(mark.Y, east.Y, 6);
        Assert.Equal(100 * painter.Window.Scale, mark.Y - north.Y, 6);
        var bruno = painter.Of([source.Steps[0]]).Markers.Single(m => m is { Performer: 0, Style: "here" });
        Assert.Equal(mark.X, bruno.Stands.X, 6);
        Assert.True(bruno.Stands.Y < mark.Y);
        Assert.Equal(180, bruno.Facing);
    }

    /// <summary>Names beside one another on a small plan stand by the wrong thing.</summary>
    [Fact]
    public void Many_things_on_the_small_plan_of_the_whole_floor_have_letters_beside_them_and_a_key()
    {
        var routine = Fights.Night;
        var few = new FloorPainter(PaperSource.Of(Fights.SceneOf(routine), routine), Course.Of(PaperSource.Of(Fights.SceneOf(routine), routine))).Whole();
        Assert.Empty(few.Key);

        Obstacle[] crates = [.. Enumerable.Range(0, 8).Select(i => new Obstacle($"crate number {i + 1}", new Centimetres(20 + (80 * i)), new Centimetres(10), new Centimetres(50), new Centimetres(40)))];
        var full = routine with { Brief = routine.Brief with { Floor = routine.Brief.Floor with { Obstacles = crates } } };
        var source = PaperSource.Of(Fights.SceneOf(full), full);
        var painter = new FloorPainter(source, Course.Of(source));
        var whole = painter.Whole();
        Assert.Equal(["a: crate number 1", "b: crate number 2"], whole.Key.Take(2));
        Assert.Equal(8, whole.Key.Count(k => k.Contains("crate", StringComparison.Ordinal)));
        var letters = whole.Labels.Where(l => l.Kind == "thing").ToList();
        Assert.Equal(["a", "b", "c", "d", "e", "f", "g", "h"], letters.Select(l => l.Text));
        Assert.All(letters.Zip(whole.Things), pair => Assert.True(
            Math.Abs(pair.First.CentreX - (pair.Second.Box.X + (pair.Second.Box.Width / 2))) < 40 && Math.Abs(pair.First.Box.Y - pair.Second.Box.Y) < 50, $"{pair.First.Text} stands apart"));
        Assert.All(Others().Select(o => o.Plan).Append(whole).Where(p => p.Things.Count > 0), plan =>
            Assert.DoesNotContain(plan.Labels, l => l.Kind is "thing" or "door" && plan.Things.Any(t => t.Box.Overlaps(l.Box))));
        Assert.Contains(FloorPainter.OfAll(source, Course.Of(source)).Empty().Labels, l => l.Text == "crate number 1");
    }

    /// <summary>The whole floor, the floor of the playback, and where everybody opens.</summary>
    private static IEnumerable<(FloorPainter Painter, FloorPicture Plan)> Others()
    {
        for (var seed = 0; seed < Seeds; seed++)
        {
            var routine = RandomRoutine.Of(seed, TinyBook.Book);
            var source = PaperSource.Of(new Scene(routine.Brief, TinyBook.Book), routine);
            var painter = new FloorPainter(source, Course.Of(source));
            yield return (painter, painter.Whole());
            yield return (painter, painter.Stage());
            yield return (painter, painter.Opening());
        }
    }

    private static IEnumerable<(FloorPainter Painter, FloorPicture Plan)> Plans()
    {
        for (var seed = 0; seed < Seeds; seed++)
        {
            var routine = RandomRoutine.Of(seed, TinyBook.Book);
            var source = PaperSource.Of(new Scene(routine.Brief, TinyBook.Book), routine);
            var painter = new FloorPainter(source, Course.Of(source));
            foreach (var phrase in source.Phrases)
            {
                yield return (painter, painter.Of([.. source.Steps.Skip(phrase.First - 1).Take(phrase.Moves)]));
            }
        }
    }
}
