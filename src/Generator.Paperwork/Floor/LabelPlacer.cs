namespace Generator.Paperwork.Floor;

/// <summary>
/// Finds room for labels, one after the other: beside what they speak of, else farther away with a line, else in rows under the drawing. No
/// label is ever laid over another or over what was marked as taken.
/// </summary>
public sealed class LabelPlacer(double width, double height)
{
    private const double Gap = 2;

    /// <summary>A label this far from its marker gets a line to it.</summary>
    private const double Close = 10;

    private const int Circles = 14;

    private const double Widening = 9;

    private const int Directions = 32;

    /// <summary>So many units farther a label goes to keep off a piece of a line.</summary>
    private const double Crossing = 2;

    /// <summary>So many units farther a label goes to keep its own line off something else that is read.</summary>
    private const double Overrunning = 15;

    /// <summary>So many units farther a label goes to keep off whoever lies there: farther than there is room, and over the hours, for nothing can be read over a body.</summary>
    private const double Covering = 1000;

    /// <summary>So many units farther a label goes to stay inside its home.</summary>
    private const double Straying = 170;

    private readonly Box sheet = new(0, 0, width, height);
    private readonly List<Box> taken = [];
    private readonly List<Box> shunned = [];
    private readonly List<Outline> bodies = [];
    private readonly List<Label> labels = [];
    private double row = height;
    private double column = Gap;

    public IReadOnlyList<Label> Labels => labels;

    /// <summary>Where labels belong, as on a floor within the hours of its clock; they leave it only where there is no room near by.</summary>
    public Box Home { get; init; } = new(0, 0, width, height);

    /// <summary>Height of the drawing with the rows under it.</summary>
    public double Height { get; private set; } = height;

    /// <summary>Keeps labels away from a box.</summary>
    public void Take(Box box) => taken.Add(box);

    /// <summary>Keeps labels off a line of that breadth where there is room elsewhere.</summary>
    public void Shun(IReadOnlyList<Point> line, double broad = 4)
    {
        foreach (var (from, to) in line.Zip(line.Skip(1)))
        {
            Shun(from, to, broad);
        }
    }

    /// <summary>Keeps labels off somebody who lies there, where there is room elsewhere on the drawing or under it.</summary>
    public void Cover(Outline body) => bodies.Add(body);

    private void Shun(Point from, Point to, double broad)
    {
        shunned.AddRange(Pieces(from, to).Select(p => Box.Around(p.X, p.Y, broad, broad)));
    }

    private static IEnumerable<Point> Pieces(Point from, Point to)
    {
        var pieces = Math.Max(1, (int)Math.Ceiling(Math.Max(Math.Abs(to.X - from.X), Math.Abs(to.Y - from.Y)) / 5));
        return Enumerable.Range(0, pieces + 1).Select(i => (double)i / pieces).Select(share => new Point(from.X + ((to.X - from.X) * share), from.Y + ((to.Y - from.Y) * share)));
    }

    public bool IsFree(Box box) => sheet.Holds(box) && !taken.Exists(t => t.Overlaps(box));

    /// <summary>Places a text at one fixed place if that is free.</summary>
    /// <returns>Whether it was.</returns>
    public bool TryAt(string text, Point centre, double size, string kind)
    {
        var box = BoxOf(text, centre, size);
        if (!IsFree(box))
        {
            return false;
        }

        Add(new Label(text, box, size, kind, null));
        return true;
    }

    /// <summary>Places a text round an anchor whose own marker reaches <paramref name="radius"/> far: as near as may be, but rather farther away than over a line.</summary>
    /// <param name="text">The text.</param>
    /// <param name="anchor">What it speaks of.</param>
    /// <param name="radius">How far its marker reaches.</param>
    /// <param name="size">Font size.</param>
    /// <param name="kind">Kind of label.</param>
    /// <param name="off">What this one must not lie on either; null for nothing.</param>
    public void Near(string text, Point anchor, double radius, double size, string kind, IReadOnlyList<Box>? off = null)
    {
        var fitted = TextSize.Fit(text, size, sheet.Width - (4 * Gap));
        var box = BoxOf(fitted, anchor, size);
        var (best, least) = ((Label?)null, double.PositiveInfinity);
        for (var circle = 0; circle < Circles && circle * Widening < least; circle++)
        {
            foreach (var candidate in Candidates(anchor, box, radius + Gap + (circle * Widening)).Where(c => IsFree(c) && off?.Any(o => o.Overlaps(c)) != true))
            {
                var label = new Label(fitted, candidate, size, kind, circle * Widening > Close ? anchor : null);
                if ((circle * Widening) + Cost(label) is var cost && cost < least)
                {
                    (best, least) = (label, cost);
                }
            }
        }

        if (best is null || IsOnBody(best.Box))
        {
            Under(fitted, anchor, box, size, kind);
            return;
        }

        Add(best);
    }

    private double Cost(Label label)
    {
        var crossed = (Crossing * shunned.Count(s => s.Overlaps(label.Box))) + (IsOnBody(label.Box) ? Covering : 0) + (Home.Holds(label.Box) ? 0 : Straying);
        if (label.Leader is not { } end)
        {
            return crossed;
        }

        var along = Pieces(label.Box.Nearest(end), end).ToList();
        return crossed + (Overrunning * taken.Count(t => !t.Holds(end) && along.Exists(t.Holds)));
    }

    private bool IsOnBody(Box box) => bodies.Exists(b => b.Overlaps(box));

    private static Box BoxOf(string text, Point centre, double size) =>
        Box.Around(centre.X, centre.Y, TextSize.Width(text, size) + (2 * Gap), size * TextSize.Line);

    /// <summary>All round, the sides first, each drawn in as far as the drawing's edge asks.</summary>
    private IEnumerable<Box> Candidates(Point anchor, Box box, double away)
    {
        for (var i = 0; i < Directions; i++)
        {
            var (sin, cos) = Math.SinCos(((i * 4 % Directions) + (i * 4 / Directions)) * 2 * Math.PI / Directions);
            var (x, y) = (anchor.X + (cos * (away + (box.Width / 2))), anchor.Y + (sin * (away + (box.Height / 2))));
            yield return box with { X = Math.Clamp(x - (box.Width / 2), 0, sheet.Width - box.Width), Y = Math.Clamp(y - (box.Height / 2), 0, sheet.Height - box.Height) };
        }
    }

    private void Under(string text, Point anchor, Box box, double size, string kind)
    {
        if (column > Gap && column + box.Width > sheet.Width)
        {
            (column, row) = (Gap, Height);
        }

        Add(new Label(text, box with { X = column, Y = row }, size, kind, anchor));
        column += box.Width + (2 * Gap);
        Height = Math.Max(Height, row + box.Height + Gap);
    }

    private void Add(Label label)
    {
        labels.Add(label);
        taken.Add(label.Box);
        if (label.Leader is { } end)
        {
            Shun(label.Box.Nearest(end), end, 1);
        }
    }
}
