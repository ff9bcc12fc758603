using Generator.Paperwork.Floor;
using Generator.Paperwork.Following;
using Generator.Paperwork.HandOffs;
using Generator.Paperwork.Text;
using Newtonsoft.Json;
using Newtonsoft.Json.Linq;

namespace Generator.Paperwork.Html;

/// <summary>What the playback moves: places in units of the drawing, times in half counts.</summary>
internal static class PlaybackData
{
    private const string FigureLetters = "SKLA";

    /// <summary>JSON that can stand inside a script element: no angle bracket, ampersand or quotation mark from outside is left as it is.</summary>
    public static string Of(RoutineView view)
    {
        var data = new JObject
        {
            ["tempo"] = view.Source.Brief.Pulse.At(0).CountsPerMinute,
            ["metre"] = Math.Round(view.Painter.Window.Scale * 100, 3),
            ["inner"] = new JArray(Inner(view.Painter.Window.Inner)),
            ["from"] = view.Course.From,
            ["to"] = view.Course.To,
            ["phrases"] = new JArray(view.Phrases.Select(p => new JArray(p.From, p.To))),
            ["doings"] = new JArray(Enum.GetValues<Doing>().Select(DoingWords.Of)),
            ["performers"] = new JArray(view.Course.Performers.Select(p => Of(view, p))),
            ["moves"] = new JArray(view.Moves.Select(m => new JArray(view.Source.Steps[m.Number - 1].Start, view.Source.Steps[m.Number - 1].End, m.Attacker, Caption(m)))),
        };
        if (view.Course.Props.Count > 0)
        {
            data["props"] = new JArray(view.Course.Props.Select(p => new JArray(p.Spells.Select(s => Spell(view, s)))));
        }

        if (Clock(view) is { } clock)
        {
            data["clock"] = clock;
        }

        using var text = new StringWriter { NewLine = "\n" };
        using var writer = new JsonTextWriter(text) { StringEscapeHandling = StringEscapeHandling.EscapeHtml };
        data.WriteTo(writer);
        return text.ToString();
    }

    /// <summary>Half counts, seconds at which they come and at which it goes on from them; null where one tempo lasts throughout.</summary>
    private static JArray? Clock(RoutineView view)
    {
        var pulse = view.Source.Brief.Pulse;
        var (clock, from, to) = (new ShowClock(pulse), view.Course.From, view.Course.To);
        return pulse.IsEven ? null : new JArray(Enumerable.Range(from, to - from + 1).Select(m => new JArray(m, Math.Round(clock.SecondsAt(m), 3), Math.Round(clock.SecondsFrom(m), 3))));
    }

    /// <summary>Left, top, right and bottom between which a sign stays whole.</summary>
    private static IEnumerable<double> Inner(Box box) =>
        new[] { box.X + Shapes.Radius, box.Y + Shapes.Radius, box.Right - Shapes.Radius, box.Bottom - Shapes.Radius }.Select(n => Math.Round(n, 1));

    private static JObject Of(RoutineView view, PerformerCourse performer) => new()
    {
        ["name"] = Page.Clean(performer.Name),
        ["ways"] = new JArray(performer.Ways.Select(w => Frame(view, w))),
        ["bodies"] = new JArray(performer.Bodies.Select(b => Body(view, b))),
        ["turns"] = new JArray(performer.Turns.Select(t => new JArray(t.Time, t.Degrees))),
        ["figures"] = string.Concat(performer.Figures.Select(f => FigureLetters[(int)f])),
        ["doings"] = new JArray(performer.Doings.Select(d => (int)d)),
        ["contacts"] = new JArray(performer.Contacts.Select(c => new JArray(c.Time, c.On + 1, c.Lands ? 1 : 0))),
    };

    private static JArray Frame(RoutineView view, Keyframe way)
    {
        var point = view.Painter.Window.Of(way.Place);
        return new JArray(Math.Round(way.Time, 2), Math.Round(point.X, 1), Math.Round(point.Y, 1));
    }

    /// <summary>From when to when (−1 for good), where the feet are, and how far the body is turned.</summary>
    private static JArray Body(RoutineView view, LyingBody body)
    {
        var (feet, head) = (view.Painter.Window.Of(body.Feet), view.Painter.Window.Of(body.Head));
        return new JArray(body.From, double.IsInfinity(body.To) ? -1 : body.To, Math.Round(feet.X, 1), Math.Round(feet.Y, 1), Math.Round(Shapes.Turned(feet, head), 1));
    }

    /// <summary>From when, where in words, and where on the drawing it lies if it does.</summary>
    private static JArray Spell(RoutineView view, PropSpell spell)
    {
        var point = view.Painter.Window.Of(spell.State.Place);
        return spell.State.Lies ? new JArray(spell.From, spell.Where, Math.Round(point.X, 1), Math.Round(point.Y, 1)) : new JArray(spell.From, spell.Where);
    }

    private static string Caption(MoveView move)
    {
        IReadOnlyList<string> parts = [move.Attack, move.Technique, move.Reaction];
        return $"move {Words.Number(move.Number)}, {move.Who}: {string.Join(" – ", parts.Where(p => p.Length > 0))}";
    }
}
