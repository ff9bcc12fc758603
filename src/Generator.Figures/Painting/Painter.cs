using System.Globalization;
using System.Text;
using Generator.Domain;
using Generator.Figures.Bodies;

namespace Generator.Figures.Painting;

/// <summary>
/// Draws bodies as filled mannequins in SVG, what is farther off first. A hero is dark and wears a belt, an attacker is light and wears a cap; left forearms and shins
/// have two bands. So nothing hangs on colour alone.
/// </summary>
internal sealed class Painter
{
    /// <summary>Units of the picture in a metre.</summary>
    public const double Scale = 100;

    private static readonly Look HeroLook = new("#2f3b52", "#ffffff", "#ffffff");

    private static readonly Look AttackerLook = new("#f6ead2", "#2b2b2b", "#2b2b2b");

    private readonly Camera camera;
    private readonly List<(double Away, string Text)> parts = [];

    public Painter(Side from) => camera = new Camera(from);

    /// <summary>The smallest box round everything drawn: left, top, right, bottom in units.</summary>
    public (double Left, double Top, double Right, double Bottom) Box { get; private set; } = (double.MaxValue, double.MaxValue, double.MinValue, double.MinValue);

    public void Hero(Figure body) => Draw(body, HeroLook, hero: true);

    public void Attacker(Figure body) => Draw(body, AttackerLook, hero: false);

    public string Text => string.Concat(parts.OrderByDescending(p => p.Away).Select(p => p.Text));

    private void Draw(Figure body, Look look, bool hero)
    {
        foreach (var capsule in Mannequin.Of(body))
        {
            var (from, to) = (camera.See(capsule.From), camera.See(capsule.To));
            Put((from.Away + to.Away) / 2, Outline(from, to, capsule.FromRadius, capsule.ToRadius, look) + (capsule.Banded ? Bands(from, to, capsule, look) : string.Empty));
        }

        Head(body, look, hero);
        if (hero)
        {
            Belt(body, look);
        }
    }

    private void Head(Figure body, Look look, bool hero)
    {
        var centre = camera.See(body.HeadCentre);
        var up = camera.See(body.HeadCentre + (body.HeadTurned.Up * 0.1));
        var nose = camera.See(body.HeadCentre + (body.HeadTurned.Ahead * (0.082 * body.Stature)) - (body.HeadTurned.Up * (0.010 * body.Stature)));
        var angle = Math.Atan2(up.X - centre.X, centre.Y - up.Y) * 180 / Math.PI;
        var (rx, ry) = (0.050 * body.Stature * Scale, 0.064 * body.Stature * Scale);
        var text = new StringBuilder();
        var noseRoots = new[] { 0.022, -0.034 }.Select(h => camera.See(body.HeadCentre + (body.HeadTurned.Ahead * (0.040 * body.Stature)) + (body.HeadTurned.Up * (h * body.Stature)))).ToArray();
        text.Append(Line(look, [noseRoots[0], nose, noseRoots[1]]));
        text.Append(CultureInfo.InvariantCulture, $"<ellipse cx=\"{N(centre.X * Scale)}\" cy=\"{N(centre.Y * Scale)}\" rx=\"{N(rx)}\" ry=\"{N(ry)}\" transform=\"rotate({N(angle)} {N(centre.X * Scale)} {N(centre.Y * Scale)})\" {look.Stroke}/>");
        if (nose.Away < centre.Away)
        {
            text.Append(Line(look, [noseRoots[0], nose, noseRoots[1]]));
        }

        if (!hero)
        {
            text.Append(CultureInfo.InvariantCulture, $"<path d=\"M{N(-rx)} {N(-ry * 0.25)}A{N(rx)} {N(ry)} 0 0 1 {N(rx)} {N(-ry * 0.25)}Z\" transform=\"translate({N(centre.X * Scale)} {N(centre.Y * Scale)}) rotate({N(angle)})\" fill=\"{look.Mark}\"/>");
        }

        Put(centre.Away - 0.02, text.ToString());
        Grow(centre, 0.08 * body.Stature);
    }

    private void Belt(Figure body, Look look)
    {
        var middle = camera.See(body[Joint.Waist]);
        var across = camera.See(body[Joint.Waist] + (body.HipsTurned.Up * 0.1));
        var (dx, dy) = Unit(across.X - middle.X, across.Y - middle.Y);
        var half = 0.062 * body.Stature;
        Put(middle.Away - 0.07, string.Create(CultureInfo.InvariantCulture, $"<path d=\"M{At(middle.X - (dy * half), middle.Y + (dx * half))}L{At(middle.X + (dy * half), middle.Y - (dx * half))}\" stroke=\"{look.Mark}\" stroke-width=\"4\"/>"));
    }

    private string Outline(Seen from, Seen to, double fromRadius, double toRadius, Look look)
    {
        Grow(from, fromRadius);
        Grow(to, toRadius);
        var (dx, dy) = (to.X - from.X, to.Y - from.Y);
        var length = Math.Sqrt((dx * dx) + (dy * dy));
        if (length <= Math.Abs(fromRadius - toRadius) + 1e-6)
        {
            var (seen, radius) = fromRadius > toRadius ? (from, fromRadius) : (to, toRadius);
            return string.Create(CultureInfo.InvariantCulture, $"<circle cx=\"{N(seen.X * Scale)}\" cy=\"{N(seen.Y * Scale)}\" r=\"{N(radius * Scale)}\" {look.Stroke}/>");
        }

        var heading = Math.Atan2(dy, dx);
        var open = Math.Acos((fromRadius - toRadius) / length);
        var (a, b) = (On(from, fromRadius, heading + open), On(to, toRadius, heading + open));
        var (c, d) = (On(to, toRadius, heading - open), On(from, fromRadius, heading - open));
        var (big, small) = (open > Math.PI / 2 ? 1 : 0, open < Math.PI / 2 ? 1 : 0);
        return string.Create(
            CultureInfo.InvariantCulture,
            $"<path d=\"M{a}L{b}A{N(toRadius * Scale)} {N(toRadius * Scale)} 0 {big} 0 {c}L{d}A{N(fromRadius * Scale)} {N(fromRadius * Scale)} 0 {small} 0 {a}Z\" {look.Stroke}/>");
    }

    private static string Bands(Seen from, Seen to, Capsule capsule, Look look)
    {
        var (dx, dy) = Unit(to.X - from.X, to.Y - from.Y);
        var text = new StringBuilder();
        foreach (var share in new[] { 0.5, 0.72 })
        {
            var (x, y, half) = (from.X + ((to.X - from.X) * share), from.Y + ((to.Y - from.Y) * share), capsule.FromRadius + ((capsule.ToRadius - capsule.FromRadius) * share));
            text.Append(CultureInfo.InvariantCulture, $"<path d=\"M{At(x - (dy * half), y + (dx * half))}L{At(x + (dy * half), y - (dx * half))}\" stroke=\"{look.Mark}\" stroke-width=\"2.6\"/>");
        }

        return text.ToString();
    }

    private static string Line(Look look, Seen[] points) => $"<path d=\"M{string.Join('L', points.Select(p => At(p.X, p.Y)))}Z\" {look.Stroke}/>";

    private void Put(double away, string text) => parts.Add((away, text));

    private void Grow(Seen seen, double radius) => Box = (
        Math.Min(Box.Left, (seen.X - radius) * Scale), Math.Min(Box.Top, (seen.Y - radius) * Scale), Math.Max(Box.Right, (seen.X + radius) * Scale), Math.Max(Box.Bottom, (seen.Y + radius) * Scale));

    private static (double X, double Y) Unit(double x, double y) => Math.Sqrt((x * x) + (y * y)) is var length && length < 1e-9 ? (0, 1) : (x / length, y / length);

    private static string On(Seen seen, double radius, double angle) => At(seen.X + (radius * Math.Cos(angle)), seen.Y + (radius * Math.Sin(angle)));

    private static string At(double x, double y) => N(x * Scale) + " " + N(y * Scale);

    /// <summary>A tenth of a unit, a millimetre of the body, so that every machine writes the same.</summary>
    public static string N(double value) => (Math.Round(value, 1, MidpointRounding.AwayFromZero) + 0.0).ToString("0.#", CultureInfo.InvariantCulture) is var text && text == "-0" ? "0" : text;

    private sealed record Look(string Fill, string Line, string Mark)
    {
        public string Stroke { get; } = $"fill=\"{Fill}\" stroke=\"{Line}\" stroke-width=\"1.2\" stroke-linejoin=\"round\"";
    }
}
