using Generator.Domain;
using Generator.Paperwork.Floor;
using Generator.Paperwork.Text;
using Generator.Rules.Replaying;
using Generator.Rules.Shapes;

namespace Generator.Paperwork.Html;

/// <summary>The whole fight in one picture: weight over time and a lane for each performer, laid out for a wide screen and paper, or for a phone.</summary>
public sealed class GlanceView
{
    private const double Names = 132;

    private readonly PaperSource source;

    public GlanceView(PaperSource source, bool wide)
    {
        (this.source, IsWide) = (source, wide);
        Lanes = [.. Shape.Wears.Select((w, i) => LaneOf(w, i))];
        Height = LanesTop + (Lanes.Count * Lane) + 4;
    }

    public bool IsWide { get; }

    public double Width => IsWide ? 1000 : 380;

    public double Height { get; }

    public IReadOnlyList<GlanceLane> Lanes { get; }

    /// <summary>Where the bars of weight stand.</summary>
    public const double BarsFoot = 82;

    /// <summary>Height of the highest bar.</summary>
    public const double Bars = 48;

    public double Left => IsWide ? Names : 6;

    public double Right => IsWide ? Width - 220 : Width - 20;

    /// <summary>Height of a lane; on a phone the words stand above it.</summary>
    public double Lane => IsWide ? 30 : 44;

    /// <summary>Counts from one line of the ruler to the next.</summary>
    public int Every => HalfCounts.PerCount * (Shape.End > 160 || !IsWide ? 16 : 8);

    public FightShape Shape => source.Shape;

    private double LanesTop => BarsFoot + (source.Verdict.Grave.Count > 0 ? 34 : 14);

    public const double SignsAt = BarsFoot + 22;

    public double X(double moment) => Left + ((Right - Left) * Math.Clamp(moment, 0, Shape.End) / Math.Max(1, Shape.End));

    /// <summary>One stretch of four counts: where it is, how high its bar, how many contacts.</summary>
    public IEnumerable<(double X, double Width, double Height, int Contacts)> Weights()
    {
        var (weight, most) = (Shape.Intensity.Weight, Math.Max(1, Shape.Intensity.Weight.Max()));
        for (var i = 0; i < weight.Count; i++)
        {
            var (from, to) = (X(i * Intensity.Stretch), X((i + 1) * Intensity.Stretch));
            if (to - from >= 2 && weight[i] > 0)
            {
                yield return (from + 0.5, to - from - 1, Bars * weight[i] / most, Shape.Intensity.Contacts[i]);
            }
        }
    }

    /// <summary>What is said of a lane, in one line, or in two where one would be too small to read; on a phone what is found of them goes before what the signs show as well.</summary>
    public IReadOnlyList<string> Lines(GlanceLane lane)
    {
        if (Fits(lane.Told))
        {
            return [lane.Told];
        }

        var alarms = Fits(lane.Alarms) ? lane.Alarms : lane.AlarmSigns;
        return IsWide ? [alarms, lane.Facts] : [alarms];
    }

    private bool Fits(string told) => TextSize.Width(told, Said) <= ToldWidth;

    /// <summary>Room for what is said of a lane.</summary>
    public double ToldWidth => IsWide ? Width - Right - 26 : 200;

    /// <summary>Size of what is said of a lane, of its counts and of the numbers over the bars; the wide picture is shown smaller, beside another.</summary>
    public double Said => IsWide ? 15.5 : 13;

    /// <summary>Size of a name.</summary>
    public double Named => IsWide ? 16 : 14;

    /// <summary>The picture for who cannot see it.</summary>
    public string InWords =>
        $"The fight from count 1 to {Words.AtCount(Shape.End)}. Contacts in every four counts: {string.Join(", ", Shape.Intensity.Contacts.Select(Words.Number))}. "
        + string.Join(" ", Lanes.Select(l => $"{l.Name}: {l.Told}."));

    /// <summary>Moments of unsafe and broken findings; a sign that would lie on the one before is left to its line.</summary>
    public IEnumerable<(double X, string Text)> GraveSigns()
    {
        var free = double.MinValue;
        foreach (var moment in source.Verdict.Grave.Where(f => f.Move > 0).GroupBy(f => f.Count.Value).OrderBy(g => g.Key))
        {
            var text = FindingView.Of(moment.MaxBy(f => f.Severity)!).Sign + " " + Words.CountTag(moment.Key);
            var (x, half) = (X(moment.Key), TextSize.Width(text, Said) / 2);
            var fits = x - half > free;
            free = fits ? x + half + 4 : free;
            yield return (x, fits ? text : string.Empty);
        }
    }

    private GlanceLane LaneOf(Wear wear, int row)
    {
        var who = wear.Performer;
        var left = Shape.Outs.Where(o => o.Attacker == who).Select(o => (Out?)o).FirstOrDefault();
        var grave = source.Verdict.Grave.Where(f => f.Move > 0 && f.Move <= source.Steps.Count && source.Steps[f.Move - 1].Target == who).ToList();
        var steps = Shape.Steps.Where(s => who < 0 || s.Concerns(who) || s.Row.Attacker == who).ToList();
        var enters = who < 0 || Shape.Steps.Count == 0 ? 0 : Math.Max(0, Shape.Steps[0].Before.Attackers[who].Entrance);
        var alarms = grave.GroupBy(f => f.Severity).OrderByDescending(g => g.Key).Select(g => (Sign: $"{FindingView.Of(g.First()).Sign} {Words.Number(g.Count())}", Word: Words.Of(g.Key))).ToList();
        var facts = new[] { Words.Many(wear.Falls, "fall"), left is { } gone ? (gone.RunsOff ? "runs off " : "out ") + Words.CountTag(gone.Time) : string.Empty };
        return new GlanceLane
        {
            Performer = who,
            Name = Page.Clean(who < 0 ? source.Brief.Hero.Name : source.Brief.Attackers[who].Name),
            Alarms = string.Join(", ", alarms.Select(a => $"{a.Sign} {a.Word}")),
            AlarmSigns = string.Join(", ", alarms.Select(a => a.Sign)),
            Facts = string.Join(", ", facts.Where(t => t.Length > 0)),
            Middle = LanesTop + (row * Lane) + (IsWide ? 15 : 30),
            From = X(enters),
            To = X(left?.Time ?? Shape.End),
            Swings = [.. steps.Where(s => who >= 0 && s.Attack is not null && s.Row.Attacker == who).Select(s => (X(s.Contact - s.Attack!.Length.Value), X(s.Contact)))],
            Moves = [.. steps.Select(s => (X(s.Start), X(s.End)))],
            Taken = [.. Shape.Contacts.Where(c => c.Lands && (who < 0 ? !c.ByHero : c.ByHero && c.Attacker == who)).Select(c => X(c.Time))],
            Falls = [.. steps.Where(s => s.Falls.Any(f => f.Who == who)).Select(s => X(s.End))],
            Out = left is { } o ? (X(o.Time), o.RunsOff) : null,
            Grave = [.. grave.Select(f => X(f.Count.Value)).Distinct()],
        };
    }
}
