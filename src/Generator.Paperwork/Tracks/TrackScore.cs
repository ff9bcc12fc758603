using Generator.Domain;
using Generator.Paperwork.Floor;
using Generator.Paperwork.Following;
using Generator.Paperwork.Text;

namespace Generator.Paperwork.Tracks;

/// <summary>Lays the courses of all performers out as lines of eight counts.</summary>
public static class TrackScore
{
    /// <summary>Width of the column of names.</summary>
    public const double Names = 84;

    /// <summary>Width of a half count.</summary>
    public const double Half = 21;

    /// <summary>Height of a row, and of the ruler above the rows.</summary>
    public const double Row = 28;

    /// <summary>Font size.</summary>
    public const double Size = 15;

    /// <summary>Half counts in a line.</summary>
    public const int Long = 8 * HalfCounts.PerCount;

    public const double Width = Names + (Long * Half) + 8;

    /// <summary>Lines from one half count to another; the first starts on a whole count.</summary>
    /// <param name="course">Who does what.</param>
    /// <param name="phrases">Where each phrase begins.</param>
    /// <param name="from">First half count that must be shown.</param>
    /// <param name="to">Half count up to which it must.</param>
    /// <param name="only">Performers to show; null for all.</param>
    public static IReadOnlyList<TrackLine> Of(Course course, IReadOnlyList<(int Number, int From)> phrases, int from, int to, IReadOnlyList<int>? only = null)
    {
        var lines = new List<TrackLine>();
        var performers = course.Performers.Where(p => only is null || only.Contains(p.Attacker)).ToList();
        for (var start = from - (((from % HalfCounts.PerCount) + HalfCounts.PerCount) % HalfCounts.PerCount); start < to; start += Long)
        {
            var end = start + Long;
            var begin = start;
            lines.Add(new TrackLine(
                start,
                end,
                [.. performers.Select(p => RowOf(p, begin, Math.Min(end, to)))],
                [.. phrases.Where(p => p.From >= begin && p.From < Math.Min(end, to)).Select(p => (p.Number, X(begin, p.From)))]));
        }

        return lines;
    }

    public static double Height(TrackLine line) => (line.Rows.Count + 1) * Row;

    /// <summary>Whole counts of a line with where they stand.</summary>
    public static IEnumerable<(string Text, double X)> Counts(TrackLine line) =>
        Enumerable.Range(line.From, line.To - line.From).Where(t => t % HalfCounts.PerCount == 0).Select(t => (Words.Count(t), X(line.From, t)));

    /// <summary>The letter of a doing on the tracks; the hero's boxes bear the number of the move.</summary>
    public static string Letter(Doing doing) => doing switch
    {
        Doing.Waiting => "W",
        Doing.Attack => "A",
        Doing.Reaction => "R",
        Doing.Fall => "F",
        Doing.Held => "H",
        Doing.Grips => "G",
        Doing.Out => "X",
        _ => string.Empty,
    };

    private static double X(int from, int time) => Names + ((time - from) * Half);

    private static TrackRow RowOf(PerformerCourse performer, int from, int to)
    {
        var boxes = performer.Spans(from, to).Select(s =>
        {
            var text = performer.IsHero ? (s.Move > 0 ? Words.Number(s.Move) : string.Empty) : Letter(s.Doing);
            var width = (s.To - s.From) * Half;
            return new TrackBox(X(from, s.From), width, s.Doing, TextSize.Width(text, Size) <= width ? text : string.Empty);
        });
        var contacts = performer.Contacts.Where(c => c.Time >= from && c.Time < to).Select(c => X(from, c.Time)).Distinct();
        var name = performer.IsHero ? Page.Clean(performer.Name) : performer.Sign + " " + Page.Clean(performer.Name);
        return new TrackRow(performer.Attacker, TextSize.Fit(name, Size, Names - 6), [.. boxes], [.. contacts]);
    }
}
