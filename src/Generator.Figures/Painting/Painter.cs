using System.Globalization;
using System.Text;
using Generator.Domain;
using Generator.Figures.Bodies;
using Generator.Figures.Posing;

namespace Generator.Figures.Painting;

/// <summary>
/// Draws bodies as filled mannequins in SVG, what is farther off first. A hero is dark and wears a belt, an attacker is light and wears a cap; left forearms and shins
/// have two bands. So nothing hangs on colour alone.
/// </summary>
internal sealed class Painter
{
    /// <summary>Units of the picture in a metre.</summary>
    public const double Scale = 100;

    private readonly IEye camera;
    private readonly (Ink Hero, Ink Attacker) inks;
    private readonly int digits;
    private readonly List<(double Away, Ink? Ink, string Text)> parts = [];
    private readonly StringBuilder marks = new();

    /// <param name="card">Of which something is drawn, from where it is looked at.</param>
    /// <param name="inks">With what hero and attacker are drawn.</param>
    /// <param name="digits">Decimals of places: 1 is a millimetre of the body.</param>
    public Painter(Card card, (Ink Hero, Ink Attacker) inks, int digits = 1)
        : this(new Camera(card.Side, card.Round), inks, digits)
    {
    }

    /// <inheritdoc cref="Painter(Card, ValueTuple{Ink, Ink}, int)"/>
    public Painter(IEye from, (Ink Hero, Ink Attacker) inks, int digits) => (camera, this.inks, this.digits) = (from, inks, digits);

    /// <summary>The smallest box round everything drawn: left, top, right, bottom in units.</summary>
    public (double Left, double Top, double Right, double Bottom) Box { get; private set; } = (double.MaxValue, double.MaxValue, double.MinValue, double.MinValue);

    /// <summary>Highest part of a thing that is drawn, in units; what is higher goes on above the picture.</summary>
    private const double Highest = 204;

    /// <summary>Units below the feet down to the line of the floor.</summary>
    public const double Floor = 2;

    /// <summary>Whoever is in the picture, and the thing with which it is done, behind them.</summary>
    public void Both(Frame frame)
    {
        if (frame.Thing is { } thing)
        {
            Thing(thing);
        }

        if (frame.Hero is { } hero)
        {
            Draw(hero, inks.Hero, hero: true);
        }

        if (frame.Attacker is { } attacker)
        {
            Draw(attacker, inks.Attacker, hero: false);
        }

        if (frame.Second is { } second)
        {
            Draw(second, inks.Attacker, hero: false);
        }

        foreach (var prop in frame.Props)
        {
            Prop(prop);
        }

        foreach (var mark in frame.Marks)
        {
            marks.Append(MarkPicture.Of(camera.See(mark.At), mark.Kind, inks == Ink.Page ? Ink.Meeting.Page : Ink.Meeting.Own));
        }
    }

    /// <summary>One more body.</summary>
    public void Body(Figure body, bool isHero) => Draw(body, isHero ? inks.Hero : inks.Attacker, isHero);

    /// <summary>What somebody has in their hand, or what lies on the floor.</summary>
    public void Prop(HeldProp prop)
    {
        var (hand, far) = (camera.See(prop.Hand), camera.See(prop.Far));
        var drawn = PropPicture.Of(prop, hand, far, inks == Ink.Page, digits);

        // Over the hand that holds it, and over whatever is as far off.
        Put(Math.Min(hand.Away, (hand.Away + far.Away) / 2) - 0.06, null, drawn.Text);
        Box = (Math.Min(Box.Left, drawn.Left), Math.Min(Box.Top, drawn.Top), Math.Max(Box.Right, drawn.Right), Math.Max(Box.Bottom, drawn.Bottom));
    }

    /// <summary>Where between left and right a body is, in units.</summary>
    public double Across(Figure body) => camera.See(body[Joint.Hips]).X * Scale;

    /// <summary>What is farther off first; neighbours of one body share a group, which says with what it is drawn.</summary>
    public string Text
    {
        get
        {
            var text = new StringBuilder();
            Ink? last = null;
            foreach (var (_, ink, part) in parts.OrderByDescending(p => p.Away))
            {
                text.Append(ink == last ? string.Empty : (last is null ? string.Empty : "</g>") + (ink is null ? string.Empty : $"<g {ink.Outline}>")).Append(part);
                last = ink;
            }

            return text.Append(last is null ? string.Empty : "</g>").Append(marks).ToString();
        }
    }

    /// <summary>Its two sides and its top, which is left out where it goes on above the picture.</summary>
    private void Thing(DrawnThing thing)
    {
        var (one, other) = (camera.See(new Vec(0, 0, thing.From)).X * Scale, camera.See(new Vec(0, 0, thing.To)).X * Scale);
        var high = -camera.See(new Vec(0, thing.High, 0)).Y * Scale;
        var top = -Math.Min(high, Highest);
        Box = (Math.Min(Box.Left, Math.Min(one, other)), Math.Min(Box.Top, top), Math.Max(Box.Right, Math.Max(one, other)), Math.Max(Box.Bottom, Floor));
        var (fill, line) = inks == Ink.Page ? ("class=\"fr\"", "class=\"ft\"") : ("fill=\"#e4e4e4\"", "fill=\"none\" stroke=\"#555\" stroke-width=\"1.6\"");
        var (foot, head, near, far) = (N(Floor), N(top), N(one), N(other));
        Put(double.MaxValue, null, $"<path {fill} d=\"M{near} {foot}V{head}H{far}V{foot}Z\"/><path {line} d=\"M{near} {foot}V{head}{(high > Highest ? 'M' : 'L')}{far} {head}V{foot}\"/>");
    }

    private void Draw(Figure body, Ink ink, bool hero)
    {
        foreach (var capsule in Mannequin.Of(body))
        {
            var (from, to) = (camera.See(capsule.From), camera.See(capsule.To));
            Put((from.Away + to.Away) / 2, ink, Outline(from, to, capsule.FromRadius, capsule.ToRadius) + (capsule.Banded ? Bands(from, to, capsule, ink) : string.Empty));
        }

        Head(body, ink, hero);
        Front(body, ink);
        if (hero)
        {
            Belt(body, ink);
        }
    }

    private void Head(Figure body, Ink ink, bool hero)
    {
        var centre = camera.See(body.HeadCentre);
        var up = camera.See(body.HeadCentre + (body.HeadTurned.Up * 0.1));
        var nose = camera.See(body.HeadCentre + (body.HeadTurned.Ahead * (0.082 * body.Stature)) - (body.HeadTurned.Up * (0.010 * body.Stature)));
        var angle = Math.Atan2(up.X - centre.X, centre.Y - up.Y) * 180 / Math.PI;
        var (rx, ry) = (0.050 * body.Stature * Scale, 0.064 * body.Stature * Scale);
        var text = new StringBuilder();
        var noseRoots = new[] { 0.022, -0.034 }.Select(h => camera.See(body.HeadCentre + (body.HeadTurned.Ahead * (0.040 * body.Stature)) + (body.HeadTurned.Up * (h * body.Stature)))).ToArray();
        text.Append(Line([noseRoots[0], nose, noseRoots[1]]));
        text.Append(CultureInfo.InvariantCulture, $"<ellipse cx=\"{N(centre.X * Scale)}\" cy=\"{N(centre.Y * Scale)}\" rx=\"{N(rx)}\" ry=\"{N(ry)}\" transform=\"rotate({N(angle)} {N(centre.X * Scale)} {N(centre.Y * Scale)})\"/>");
        if (nose.Away < centre.Away)
        {
            text.Append(Line([noseRoots[0], nose, noseRoots[1]]));
            text.Append(Eyes(body, ink.Band));
        }

        if (!hero)
        {
            text.Append(CultureInfo.InvariantCulture, $"<path d=\"M{N(-rx)} {N(-ry * 0.25)}A{N(rx)} {N(ry)} 0 0 1 {N(rx)} {N(-ry * 0.25)}Z\" transform=\"translate({N(centre.X * Scale)} {N(centre.Y * Scale)}) rotate({N(angle)})\" {ink.Cap}/>");
        }

        Put(centre.Away - 0.02, ink, text.ToString());
        Grow(centre, 0.08 * body.Stature);
    }

    private string Eyes(Figure body, string ink)
    {
        var eyes = new[] { -1, 1 }.Select(s => camera.See(body.HeadCentre + (body.HeadTurned.Ahead * (0.046 * body.Stature)) + (body.HeadTurned.Left * (0.022 * s * body.Stature)) + (body.HeadTurned.Up * (0.014 * body.Stature))));
        return $"<path d=\"{string.Concat(eyes.Select(e => $"M{At(e.X, e.Y)}h2"))}\" {ink}/>";
    }

    /// <summary>A seam down the front of the trunk: without it a chest looks like a back.</summary>
    private void Front(Figure body, Ink ink)
    {
        var ahead = body.ChestTurned.Ahead * (0.064 * body.Stature);
        var (top, bottom) = (camera.See(body[Joint.Neck] + (ahead * 0.5)), camera.See(body[Joint.Waist] + ahead));
        var middle = camera.See(body[Joint.Chest]);
        var seam = camera.See(body[Joint.Chest] + ahead);
        if (seam.Away < middle.Away)
        {
            Put(middle.Away - 0.072, ink, $"<path d=\"M{At(top.X, top.Y)}L{At(seam.X, seam.Y)}L{At(bottom.X, bottom.Y)}\" {ink.Band} fill=\"none\"/>");
        }
    }

    private void Belt(Figure body, Ink ink)
    {
        var middle = camera.See(body[Joint.Waist]);
        var across = camera.See(body[Joint.Waist] + (body.HipsTurned.Up * 0.1));
        var (dx, dy) = Unit(across.X - middle.X, across.Y - middle.Y);
        var half = 0.062 * body.Stature;
        Put(middle.Away - 0.07, ink, string.Create(CultureInfo.InvariantCulture, $"<path d=\"M{At(middle.X - (dy * half), middle.Y + (dx * half))}L{At(middle.X + (dy * half), middle.Y - (dx * half))}\" {ink.Belt}/>"));
    }

    private string Outline(Seen from, Seen to, double fromRadius, double toRadius)
    {
        Grow(from, fromRadius);
        Grow(to, toRadius);
        var (dx, dy) = (to.X - from.X, to.Y - from.Y);
        var length = Math.Sqrt((dx * dx) + (dy * dy));
        if (length <= Math.Abs(fromRadius - toRadius) + 1e-6)
        {
            var (seen, radius) = fromRadius > toRadius ? (from, fromRadius) : (to, toRadius);
            return string.Create(CultureInfo.InvariantCulture, $"<circle cx=\"{N(seen.X * Scale)}\" cy=\"{N(seen.Y * Scale)}\" r=\"{N(radius * Scale)}\"/>");
        }

        var heading = Math.Atan2(dy, dx);
        var open = Math.Acos((fromRadius - toRadius) / length);
        var (a, b) = (On(from, fromRadius, heading + open), On(to, toRadius, heading + open));
        var (c, d) = (On(to, toRadius, heading - open), On(from, fromRadius, heading - open));
        var (big, small) = (open > Math.PI / 2 ? 1 : 0, open < Math.PI / 2 ? 1 : 0);
        return string.Create(
            CultureInfo.InvariantCulture,
            $"<path d=\"M{a}L{b}A{N(toRadius * Scale)} {N(toRadius * Scale)} 0 {big} 0 {c}L{d}A{N(fromRadius * Scale)} {N(fromRadius * Scale)} 0 {small} 0 {a}Z\"/>");
    }

    private string Bands(Seen from, Seen to, Capsule capsule, Ink ink)
    {
        var (dx, dy) = Unit(to.X - from.X, to.Y - from.Y);
        var text = new StringBuilder();
        foreach (var share in new[] { 0.5, 0.72 })
        {
            var (x, y, half) = (from.X + ((to.X - from.X) * share), from.Y + ((to.Y - from.Y) * share), capsule.FromRadius + ((capsule.ToRadius - capsule.FromRadius) * share));
            text.Append(CultureInfo.InvariantCulture, $"<path d=\"M{At(x - (dy * half), y + (dx * half))}L{At(x + (dy * half), y - (dx * half))}\" {ink.Band}/>");
        }

        return text.ToString();
    }

    private string Line(Seen[] points) => $"<path d=\"M{string.Join('L', points.Select(p => At(p.X, p.Y)))}Z\"/>";

    private void Put(double away, Ink? ink, string text) => parts.Add((away, ink, text));

    private void Grow(Seen seen, double radius) => Box = (
        Math.Min(Box.Left, (seen.X - radius) * Scale), Math.Min(Box.Top, (seen.Y - radius) * Scale), Math.Max(Box.Right, (seen.X + radius) * Scale), Math.Max(Box.Bottom, (seen.Y + radius) * Scale));

    private static (double X, double Y) Unit(double x, double y) => Math.Sqrt((x * x) + (y * y)) is var length && length < 1e-9 ? (0, 1) : (x / length, y / length);

    private string On(Seen seen, double radius, double angle) => At(seen.X + (radius * Math.Cos(angle)), seen.Y + (radius * Math.Sin(angle)));

    private string At(double x, double y) => N(x * Scale, digits) + " " + N(y * Scale, digits);

    /// <summary>A tenth of a unit, a millimetre of the body, so that every machine writes the same.</summary>
    public static string N(double value, int digits = 1) => (Math.Round(value, digits, MidpointRounding.AwayFromZero) + 0.0).ToString("0.#", CultureInfo.InvariantCulture) is var text && text == "-0" ? "0" : text;
}
