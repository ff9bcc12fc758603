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

    private const int Circles = 18;

    private const double Widening = 9;

    private const int Directions = 32;

    /// <summary>So many units farther a label goes to keep off a piece of a thin line.</summary>
    private const double Crossing = 2;

    /// <summary>So many units farther a label goes to stand nearer to its own sign than to another's.</summary>
    private const double Mistaken = 25;

    /// <summary>So many units farther a label goes to keep its own line off something else that is read.</summary>
    private const double Overrunning = 15;

    /// <summary>So many units farther a label goes to keep off whoever lies there and off what is barred: farther than there is room, and over the hours, for nothing can be read over a body.</summary>
    private const double Covering = 1000;

    /// <summary>So many units farther a label goes to stay inside its home.</summary>
    private const double Straying = 170;

    private readonly Box sheet = new(0, 0, width, height);
    private readonly List<Box> taken = [];
    private readonly List<(Box Box, double Cost)> shunned = [];
    private readonly List<Box> barred = [];
    private readonly List<Sign> signs = [];
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

    /// <summary>Keeps labels off a line where there is room elsewhere.</summary>
    /// <param name="line">The line.</param>
    /// <param name="broad">Its breadth.</param>
    /// <param name="cost">So many units farther a label goes to keep off each piece of it.</param>
    public void Shun(IReadOnlyList<Point> line, double broad = 4, double cost = Crossing) =>
        shunned.AddRange(line.Zip(line.Skip(1)).SelectMany(l => Pieces(l.First, l.Second)).Select(p => (Box.Around(p.X, p.Y, broad, broad), cost)));

    /// <summary>Keeps labels off a line over which nothing can be read: whatever finds no room elsewhere stands under the drawing.</summary>
    public void Bar(Point from, Point to, double broad) => barred.AddRange(Pieces(from, to).Select(p => Box.Around(p.X, p.Y, broad, broad)));

    /// <summary>Says that something is there, for which the label of something else must not be taken.</summary>
    public void Note(Sign sign) => signs.Add(sign);

    /// <summary>Keeps labels off somebody who lies there, where there is room elsewhere on the drawing or under it.</summary>
    public void Cover(Outline body) => bodies.Add(body);

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

    /// <summary>Places a text round a sign: as near as may be, but rather farther away than over a line or nearer to another's.</summary>
    /// <param name="text">The text.</param>
    /// <param name="own">What it speaks of.</param>
    /// <param name="size">Font size.</param>
    /// <param name="kind">Kind of label.</param>
    /// <param name="off">What this one must not lie on either; null for nothing.</param>
    public void Near(string text, Sign own, double size, string kind, IReadOnlyList<Box>? off = null)
    {
        var fitted = TextSize.Fit(text, size, sheet.Width - (4 * Gap));
        var box = BoxOf(fitted, own.Discs[0].At, size);
        var rivals = signs.Where(s => !string.Equals(s.Owner, own.Owner, StringComparison.Ordinal)).ToList();
        var (best, least) = ((Label?)null, double.PositiveInfinity);
        for (var circle = 0; circle < Circles && circle * Widening < least; circle++)
        {
            foreach (var candidate in own.Discs.SelectMany(d => Candidates(d.At, box, d.Radius + Gap + (circle * Widening))).Where(c => IsFree(c) && off?.Any(o => o.Overlaps(c)) != true))
            {
                var gap = own.Gap(candidate);
                var isMistaken = rivals.Exists(r => r.Gap(candidate) <= gap);
                var label = new Label(fitted, candidate, size, kind, isMistaken || circle * Widening > Close ? own.End(candidate) : null);
                if ((circle * Widening) + (isMistaken ? Mistaken : 0) + Cost(label) is var cost && cost < least)
                {
                    (best, least) = (label, cost);
                }
            }
        }

        if (best is null || IsStruck(best.Box))
        {
            Under(fitted, own, box, size, kind);
            return;
        }

        Add(best);
    }

    private double Cost(Label label)
    {
        var crossed = shunned.Sum(s => s.Box.Overlaps(label.Box) ? s.Cost : 0) + (IsStruck(label.Box) ? Covering : 0) + (Home.Holds(label.Box) ? 0 : Straying);
        if (label.Leader is not { } end)
        {
            return crossed;
        }

        var along = Pieces(label.Box.Nearest(end), end).ToList();
        return crossed + (Overrunning * taken.Count(t => !t.Holds(end) && along.Exists(t.Holds)));
    }

    private bool IsStruck(Box box) => barred.Exists(b => b.Overlaps(box)) || bodies.Exists(b => b.Overlaps(box));

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

    private void Under(string text, Sign own, Box box, double size, string kind)
    {
        if (column > Gap && column + box.Width > sheet.Width)
        {
            (column, row) = (Gap, Height);
        }

        var place = box with { X = column, Y = row };
        Add(new Label(text, place, size, kind, own.End(place)));
        column += box.Width + (2 * Gap);
        Height = Math.Max(Height, row + box.Height + Gap);
    }

    private void Add(Label label)
    {
        labels.Add(label);
        taken.Add(label.Box);
        if (label.Leader is { } end)
        {
            Shun([label.Box.Nearest(end), end], 1);
        }
    }
}
