using System.Globalization;
using Generator.Figures.Posing;

namespace Generator.Figures.Painting;

/// <summary>Draws where two bodies meet: rays round a touch, rays and a gap for a planned miss, a ring round a grip; so form tells them apart, and not colour.</summary>
internal static class MarkPicture
{
    private static readonly (double X, double Y)[] Ways = [.. Enumerable.Range(0, 8).Select(i => Math.SinCos(i * Math.PI / 4)).Select(w => (w.Cos, w.Sin))];

    public static string Of(Seen at, MarkKind kind, string ink)
    {
        var (x, y) = (at.X * Painter.Scale, at.Y * Painter.Scale);
        return kind switch
        {
            MarkKind.Touch => $"<path d=\"{Rays(x, y, 10, 16)}\" {ink}/>",
            MarkKind.Miss => $"<path d=\"{Rays(x, y, 14, 17)}\" {ink}/>",
            _ => string.Create(CultureInfo.InvariantCulture, $"<circle cx=\"{Whole(x)}\" cy=\"{Whole(y)}\" r=\"8\" {ink}/>"),
        };
    }

    private static string Rays(double x, double y, double from, double to) => string.Concat(Ways.Select(w =>
        $"M{Whole(x + (w.X * from))} {Whole(y + (w.Y * from))}l{Whole(w.X * (to - from))} {Whole(w.Y * (to - from))}"));

    private static string Whole(double value) => Painter.N(value, 0);
}
