using System.Globalization;
using Generator.Domain;
using Generator.Paperwork.Floor;
using Generator.Paperwork.Following;
using Generator.Paperwork.Teaching;
using Generator.Paperwork.Text;
using Generator.Paperwork.Tracks;
using Generator.Rules.Replaying;

namespace Generator.Paperwork.Html;

/// <summary>Everything that the pages of a routine show, worked out once for all of them.</summary>
public sealed class RoutineView
{
    public RoutineView(PaperSource source)
    {
        Source = source;
        Course = Course.Of(source);
        Painter = new FloorPainter(source, Course);
        Figures = new FigureSet(source);
        Moves = MoveViews.Of(source, Figures);
        KeyFrames = KeyFrame.Of(source, Moves, Figures);
        var starts = source.Phrases.Select(p => (p.Number, Start(p))).ToList();
        Phrases = [.. source.Phrases.Select(p => View(p, starts))];
        Tracks = TrackScore.Of(Course, starts, Course.From, Course.To);
        WideTracks = TrackScore.Of(Course, starts, Course.From, Course.To, TrackScore.Long);
        Findings = [.. source.Verdict.Findings.Where(f => f.Move < 1 || f.Move > source.Steps.Count).Select(FindingView.Of)];
    }

    public PaperSource Source { get; }

    public Course Course { get; }

    public FloorPainter Painter { get; }

    public FigureSet Figures { get; }

    public IReadOnlyList<MoveView> Moves { get; }

    /// <summary>Moves that show what the fight is; none where no figures are drawn.</summary>
    public IReadOnlyList<KeyFrame> KeyFrames { get; }

    public IReadOnlyList<PhraseView> Phrases { get; }

    public IReadOnlyList<TrackLine> Tracks { get; }

    /// <summary>The same in longer lines.</summary>
    public IReadOnlyList<TrackLine> WideTracks { get; }

    /// <summary>Findings about the routine as a whole.</summary>
    public IReadOnlyList<FindingView> Findings { get; }

    public PaperHead Head => Source.Head;

    /// <summary>The whole floor, drawn small beside every plan.</summary>
    public FloorPicture Whole => field ??= Painter.Whole();

    /// <summary>What lies on the floor before the first count: "mop, at 3 o'clock, 1.50 m from the mark"; empty for nothing.</summary>
    public string Lying => field ??= string.Join("; ", PropLines.Lying(Source.Scene, Source.Routine).Select(p => $"{PropLines.NameOf(Source.Scene, p.Prop)}, {p.At}"));

    public string Title => Page.Clean(Source.Brief.Title);

    public string HeroName => Page.Clean(Source.Brief.Hero.Name);

    /// <summary>"Ines against Bruno and Wanda: 12 moves in 20 counts, 12.0 s at full speed. 2 falls; Wanda is out last, at count 19."</summary>
    public string Gist
    {
        get
        {
            var names = Source.Brief.Attackers.Select(a => Page.Clean(a.Name)).ToList();
            var against = names.Count switch
            {
                1 => names[0],
                <= 3 => $"{string.Join(", ", names.SkipLast(1))} and {names[^1]}",
                _ => $"{Words.Number(names.Count)} attackers",
            };
            var seconds = Source.Brief.Pulse.SecondsWithHolds(0, Source.End).ToString("0.0", CultureInfo.InvariantCulture);
            var falls = Words.Many(Source.Steps.Sum(s => s.Falls.Count()), "fall");
            var last = Source.Shape.Outs is [.., var gone] ? $"; {names[gone.Attacker]} {(gone.RunsOff ? "runs off" : "is out")} last, at {Words.AtCount(gone.Time)}" : string.Empty;
            return $"{HeroName} against {against}: {Words.Many(Moves.Count, "move")} in {Words.Span(new HalfCounts(Source.End))}, {seconds} s at full speed. {falls}{last}.";
        }
    }

    private int Start(Phrase phrase) => Source.Steps[phrase.First - 1].Start;

    private PhraseView View(Phrase phrase, IReadOnlyList<(int Number, int From)> starts)
    {
        var steps = phrase.Of(Source.Steps);
        var (from, to) = phrase.SpanOf(Source.Steps);
        var own = phrase.Number == 1 ? 0 : 1;
        return new PhraseView
        {
            Number = phrase.Number,
            Counts = $"counts {Words.Count(from)} to {Words.Count(to)}",
            PickUp = own == 0 ? null : Moves[phrase.First - 1],
            Moves = [.. Moves.Skip(phrase.First - 1 + own).Take(phrase.Moves - own)],
            Floor = Painter.Of(steps),
            FloorWords = InWords(steps[0], from, to),
            Tracks = TrackScore.Of(Course, starts, from, to),
            From = from,
            To = to,
        };
    }

    /// <summary>"Floor at count 1: Ines on the mark facing 12 o'clock; Bruno at 12 o'clock, 2.60 m. To count 9: Bruno to 2 o'clock, 0.90 m."</summary>
    private string InWords(Step first, int from, int to)
    {
        var places = Course.Performers.Skip(1).Select(p => $"{Page.Clean(p.Name)} {Whereabouts(p, from)}");
        var moved = Course.Performers.Skip(1).Where(p => Whereabouts(p, from) != Whereabouts(p, to)).Select(p => $"{Page.Clean(p.Name)} {Whereabouts(p, to)}").ToList();
        var end = moved.Count == 0 ? string.Empty : $" At {Words.AtCount(to)}: {string.Join("; ", moved)}.";
        return $"Floor at {Words.AtCount(from)}: {HeroName} on the mark facing {Words.Clock(first.Before.Facing)}; {string.Join("; ", places)}.{end}";
    }

    private static string Whereabouts(PerformerCourse performer, int time)
    {
        if (performer.FigureAt(time) == Figure.Away)
        {
            return DoingWords.Of(performer.DoingAt(time));
        }

        return $"at {performer.WhereAt(time)}, {DoingWords.Of(performer.DoingAt(time))}";
    }
}
