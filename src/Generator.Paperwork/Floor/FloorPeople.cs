using Generator.Domain;
using Generator.Paperwork.Following;
using Generator.Paperwork.Text;
using Generator.Rules.Bodies;
using Generator.Rules.Replaying;

namespace Generator.Paperwork.Floor;

/// <summary>The people of a routine as signs on a plan: where they stand, go, fall and lie, and what is written beside them.</summary>
/// <param name="source">The routine.</param>
/// <param name="window">The plan.</param>
internal sealed class FloorPeople(PaperSource source, PlanWindow window)
{
    /// <summary>Somebody who moves less than this, in centimetres, gets no path.</summary>
    private const double Moved = 12;

    private const string Here = "here";

    /// <summary>Whether somebody goes anywhere between two moments, in half counts.</summary>
    public static bool IsOnTheMove(PerformerCourse performer, int from, int to) => performer.Path(from, to) is var path && path.Any(p => p.To(path[0]) > Moved);

    /// <summary>The first moment of the part at which somebody is on the floor; its end for whoever is not in yet or has left.</summary>
    public static int SeenFrom(PerformerCourse performer, int from, int to)
    {
        while (from < to && performer.FigureAt(from) == Figure.Away)
        {
            from++;
        }

        return from;
    }

    /// <summary>The hero at the mark, and everybody else where they open, the first in the brief first.</summary>
    public IReadOnlyList<Marker> Opening() =>
    [
        new Marker(-1, window.Mark, window.Mark, 0, Figure.Standing, Here),
        .. source.Routine.Placements.Select((p, i) => (Who: i, At: window.Held(Place.At(p.Bearing.HalfHours, p.Distance.Value), Shapes.Radius), Facing: 180.0 + (p.Bearing.HalfHours * Bearing.DegreesPerHalfHour)))
            .Select(p => new Marker(p.Who, p.At, p.At, p.Facing, Figure.Standing, Here)),
    ];

    /// <summary>What is written beside somebody: the name, when they enter if that is after the part begins, and how far off they are where the plan does not reach so far.</summary>
    public string NameOf(PerformerCourse performer, int from, int time)
    {
        var name = TextSize.Name(Page.Clean(performer.Name), FloorPainter.Size, 120) + (time > from ? " enters, " + Words.AtCount(time) : string.Empty);
        var far = performer.MarkAt(time).To(performer.PlaceAt(time));
        return window.Keeps(performer.PlaceAt(time), Shapes.Radius) ? name : $"{name}, {Words.Number(Math.Round((decimal)far / 100, 1))} m";
    }

    /// <summary>Somebody at a moment, in the style of what they do then or in another.</summary>
    public Marker MarkerOf(PerformerCourse performer, int time, string? style = null)
    {
        var at = window.Held(performer.PlaceAt(time), Shapes.Radius);
        return new Marker(performer.Attacker, at, at, performer.FacingAt(time), performer.FigureAt(time), style ?? (performer.DoingAt(time) == Doing.Out ? "out" : Here));
    }

    /// <summary>Somebody who lies, as large as they are.</summary>
    public Outline OutlineOf(int performer, LyingBody body, string style)
    {
        var height = performer < 0 ? source.Brief.Hero.Height : source.Brief.Attackers[performer].Height;
        return new Outline(performer, window.Of(body.Feet), Shapes.Turned(window.Of(body.Feet), window.Of(body.Head)), Shapes.Body(height, window.Scale), style);
    }

    /// <summary>The path of somebody who is on the move.</summary>
    public Way WayOf(PerformerCourse performer, int from, int to)
    {
        var points = performer.Path(from, to).Select(s => window.Held(s, Shapes.Radius)).ToList();
        var tip = points[^1];
        var before = points.FindLast(p => Math.Abs(p.X - tip.X) + Math.Abs(p.Y - tip.Y) > 2);
        return new Way(performer.Attacker, points, tip, Math.Atan2(tip.X - before.X, before.Y - tip.Y) * 180 / Math.PI);
    }

    /// <summary>Who goes down in a move, and what is written beside them.</summary>
    public IEnumerable<(Outline Body, string Text)> FallsIn(Step step)
    {
        foreach (var (who, _) in step.Falls.Where(f => f.Who >= 0))
        {
            var state = step.After.Attackers[who];
            var knees = new Outline(who, window.Of(state.Place), 0, Shapes.Body(new Centimetres(50), window.Scale), "landing");
            var body = state.Leg?.LastingBody(step.Index) is { } leg ? OutlineOf(who, new LyingBody(leg.From, leg.To, leg.Start.Rounded(), leg.End.Rounded()), "landing") : knees;
            yield return (body, $"{TextSize.Name(Page.Clean(source.Brief.Attackers[who].Name), FloorPainter.Size, 90)} down, {Words.AtCount(step.End)}");
        }
    }
}
