using Generator.Domain;
using Generator.Paperwork.Floor;
using Generator.Paperwork.Following;
using Generator.Paperwork.Text;

namespace Generator.Paperwork.Tracks;

/// <summary>Lays the courses of all performers out as lines of equally many counts.</summary>
public static class TrackScore
{
    private const int LeastEven = 6;

    private const double LeastNames = 60;

    private const double MostNames = 116;

    /// <summary>Width of a half count.</summary>
    public const double Half = 21;

    /// <summary>Height of a row.</summary>
    public const double Row = 28;

    /// <summary>Height of the ruler above the rows: phrases, then counts.</summary>
    public const double Ruler = 40;

    /// <summary>Font size of what has none of its own; the style sheet has it too.</summary>
    public const double Size = 15;

    /// <summary>As the drawing has it; null for the usual one.</summary>
    public static string? SizeOf(double size) => Svg.Number(size) is var text && text == Svg.Number(Size) ? null : text;

    /// <summary>Font size in a wedge.</summary>
    private const double WordSize = 12;

    /// <summary>Smaller text is left out, since it could not be read on paper: forms are told without it.</summary>
    private const double LeastSize = 12;

    /// <summary>Most counts in a line on a phone, and beside a plan.</summary>
    public const int Short = 9;

    /// <summary>Most counts in a line across a sheet or a wide screen.</summary>
    public const int Long = 17;

    /// <summary>Font size of the phrases on the ruler.</summary>
    public const double PhraseSize = 13;

    /// <summary>Lines from one half count to another; the first starts on a whole count.</summary>
    /// <param name="course">Who does what.</param>
    /// <param name="phrases">Where each phrase begins.</param>
    /// <param name="from">First half count that must be shown.</param>
    /// <param name="to">Half count up to which it must.</param>
    /// <param name="most">Most counts in a line; all have as many, so that none is left with a scrap.</param>
    /// <param name="only">Performers to show; null for all.</param>
    public static IReadOnlyList<TrackLine> Of(Course course, IReadOnlyList<(int Number, int From)> phrases, int from, int to, int most = Short, IReadOnlyList<int>? only = null)
    {
        var counts = Even(from, to, most);
        var lines = new List<TrackLine>();
        var performers = course.Performers.Where(p => only is null || only.Contains(p.Attacker)).ToList();
        var names = Math.Clamp(performers.Max(p => TextSize.Width(Named(p), Size)) + 14, LeastNames, MostNames);
        for (var start = from - (((from % HalfCounts.PerCount) + HalfCounts.PerCount) % HalfCounts.PerCount); start < to; start += counts * HalfCounts.PerCount)
        {
            var end = start + (counts * HalfCounts.PerCount);
            var begin = start;
            lines.Add(new TrackLine(
                start,
                end,
                names,
                [.. performers.Select(p => RowOf(p, names, begin, Math.Min(end, to)) with { Hurts = [.. HurtsOf(course, p, names, begin, Math.Min(end, to))] })],
                PhrasesIn(phrases, names, begin, end, Math.Min(end, to))));
        }

        return lines;
    }

    private static int Even(int from, int to, int most)
    {
        var counts = (to - from + (((from % HalfCounts.PerCount) + HalfCounts.PerCount) % HalfCounts.PerCount) + HalfCounts.PerCount - 1) / HalfCounts.PerCount;
        var lines = Math.Max(1, (counts + most - 1) / most);
        return Math.Max(LeastEven, (counts + lines - 1) / lines);
    }

    public static double Width(TrackLine line) => line.Names + ((line.To - line.From) * Half) + 8;

    public static double Height(TrackLine line) => Ruler + (line.Rows.Count * Row);

    /// <summary>Whole counts of a line with where they stand.</summary>
    public static IEnumerable<(string Text, double X)> Counts(TrackLine line) =>
        Enumerable.Range(line.From, line.To - line.From).Where(t => t % HalfCounts.PerCount == 0).Select(t => (Words.CountTag(t), X(line.Names, line.From, t)));

    /// <summary>The word of an attacker's doing where it fits; what is drawn as a line needs none. The hero's boxes bear the number of the move, "m7".</summary>
    public static string Word(Doing doing) => doing switch
    {
        Doing.Waiting => "waits",
        Doing.Attack => "attacks",
        Doing.Reaction => "reacts",
        Doing.Fall => "falls",
        Doing.Held => "held",
        Doing.Grips => "grips",
        Doing.Enters => "enters",
        Doing.ComesIn => "closes in",
        _ => string.Empty,
    };

    /// <summary>A box with its word, or with "m7" for its move, which is "7" in a short one; nothing where neither is fit to be read in it.</summary>
    public static TrackBox Box(double x, double width, Doing doing, string text)
    {
        var most = doing is Doing.Attack or Doing.Fall ? WordSize : Size;
        string[] forms = text == Word(doing) ? [text] : [text, text.TrimStart('m')];
        foreach (var form in forms)
        {
            if (TextSize.Within(form, most, TrackForms.Room(doing, width)) is var size && size >= LeastSize)
            {
                return new TrackBox(x, width, doing, form, size);
            }
        }

        return new TrackBox(x, width, doing, string.Empty, Size);
    }

    private static double X(double names, int from, int time) => names + ((time - from) * Half);

    private static string Named(PerformerCourse performer) => SignOf(performer) + Page.Clean(performer.Name);

    private static string SignOf(PerformerCourse performer) => performer.IsHero ? string.Empty : performer.Sign + " ";

    /// <summary>"phrase 3" over each bar, or "p3" where the next bar or the edge is too near.</summary>
    private static IReadOnlyList<(string Text, double X)> PhrasesIn(IReadOnlyList<(int Number, int From)> phrases, double names, int from, int edge, int to)
    {
        var here = phrases.Where(p => p.From >= from && p.From < to).OrderBy(p => p.From).ToList();
        return
        [
            .. here.Select((p, i) =>
            {
                var (number, x) = (Words.Number(p.Number), X(names, from, p.From));
                var room = (i + 1 < here.Count ? X(names, from, here[i + 1].From) : X(names, from, edge)) - x;
                return (TextSize.Width("phrase " + number, PhraseSize) + 6 <= room ? "phrase " + number : "p" + number, x);
            }),
        ];
    }

    private static IEnumerable<TrackHurt> HurtsOf(Course course, PerformerCourse performer, double names, int from, int to) =>
        course.Hurts.Where(h => h.Who == performer.Attacker && h.From < to && h.What.Until.Value > from).Select(h =>
        {
            var left = Math.Max(from, h.From);
            return new TrackHurt(X(names, from, left), (Math.Min(to, h.What.Until.Value) - left) * Half, HurtLines.Plays(h));
        });

    private static TrackRow RowOf(PerformerCourse performer, double names, int from, int to)
    {
        var boxes = performer.Spans(from, to).Select(s =>
        {
            var text = performer.IsHero ? (s.Move > 0 ? Words.MoveTag(s.Move) : string.Empty) : Word(s.Doing);
            var width = (s.To - s.From) * Half;
            return Box(X(names, from, s.From), width, s.Doing, text);
        });
        var contacts = performer.Contacts.Where(c => c.Time >= from && c.Time < to).Select(c => X(names, from, c.Time)).Distinct();
        return new TrackRow(performer.Attacker, TextSize.Name(SignOf(performer), Page.Clean(performer.Name), Size, names - 6), [.. boxes], [.. contacts]);
    }
}
