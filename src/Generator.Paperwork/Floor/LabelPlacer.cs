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

    /// <summary>So many circles farther a label goes to keep off a line.</summary>
    private const int Patience = 4;

    private readonly Box sheet = new(0, 0, width, height);
    private readonly List<Box> taken = [];
    private readonly List<Box> shunned = [];
    private readonly List<Label> labels = [];
    private double row = height;
    private double column = Gap;

    public IReadOnlyList<Label> Labels => labels;

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

    private void Shun(Point from, Point to, double broad)
    {
        var pieces = Math.Max(1, (int)Math.Ceiling(Math.Max(Math.Abs(to.X - from.X), Math.Abs(to.Y - from.Y)) / 5));
        for (var i = 0; i <= pieces; i++)
        {
            var share = (double)i / pieces;
            shunned.Add(Box.Around(from.X + ((to.X - from.X) * share), from.Y + ((to.Y - from.Y) * share), broad, broad));
        }
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

    /// <summary>Places a text round an anchor whose own marker reaches <paramref name="radius"/> far.</summary>
    public void Near(string text, Point anchor, double radius, double size, string kind)
    {
        var fitted = TextSize.Fit(text, size, sheet.Width - (4 * Gap));
        var box = BoxOf(fitted, anchor, size);
        Label? crossed = null;
        for (var (circle, last) = (0, Circles); circle < last; circle++)
        {
            foreach (var candidate in Candidates(anchor, box, radius + Gap + (circle * Widening)).Where(IsFree))
            {
                var label = new Label(fitted, candidate, size, kind, circle * Widening > Close ? anchor : null);
                if (!shunned.Exists(s => s.Overlaps(candidate)))
                {
                    Add(label);
                    return;
                }

                if (crossed is null)
                {
                    (crossed, last) = (label, Math.Min(Circles, circle + Patience));
                }
            }
        }

        if (crossed is not null)
        {
            Add(crossed);
            return;
        }

        Under(fitted, anchor, box, size, kind);
    }

    private static Box BoxOf(string text, Point centre, double size) =>
        Box.Around(centre.X, centre.Y, TextSize.Width(text, size) + (2 * Gap), size * TextSize.Line);

    /// <summary>Right, left, below, above, then the corners.</summary>
    private static IEnumerable<Box> Candidates(Point anchor, Box box, double away)
    {
        var (w, h) = (box.Width, box.Height);
        var slant = away * 0.75;
        yield return box with { X = anchor.X + away, Y = anchor.Y - (h / 2) };
        yield return box with { X = anchor.X - away - w, Y = anchor.Y - (h / 2) };
        yield return box with { X = anchor.X - (w / 2), Y = anchor.Y + away };
        yield return box with { X = anchor.X - (w / 2), Y = anchor.Y - away - h };
        yield return box with { X = anchor.X + slant, Y = anchor.Y + slant };
        yield return box with { X = anchor.X - slant - w, Y = anchor.Y + slant };
        yield return box with { X = anchor.X + slant, Y = anchor.Y - slant - h };
        yield return box with { X = anchor.X - slant - w, Y = anchor.Y - slant - h };
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
    }
}
