using Generator.Domain;
using Generator.Paperwork.Floor;
using Generator.Paperwork.Following;
using Generator.Paperwork.Text;
using Generator.Rules.Replaying;

namespace Generator.Paperwork.Printing;

/// <summary>What the poster shows.</summary>
/// <param name="Source">The routine.</param>
public sealed record PosterView(PaperSource Source)
{
    /// <summary>Size of the letters of counts and names, and the widest name that stands whole beside a count; in units of the smallest sheet, a millimetre each.</summary>
    internal const double NameSize = 11.6, WidestName = 72;

    /// <summary>Bold letters are wider than those for which widths are reckoned: "Gorm" is 3.04 times its size in DejaVu Sans Bold and 2.82 by reckoning.</summary>
    private const double Bold = 1.1;

    /// <summary>What stands beside the counts for each name, the hero's first; the cast above has all of it, with the same sign.</summary>
    public IReadOnlyList<string> Calls => field ??= [.. new[] { Source.Brief.Hero.Name }.Concat(Source.Brief.Attackers.Select(a => a.Name)).Select(n => CallOf(Page.Clean(n)))];

    /// <summary>Room that the widest of them takes.</summary>
    public double CallWidth => Calls.Max(c => TextSize.Width(c, NameSize) * Bold);

    /// <summary>Some name stands shortened beside the counts.</summary>
    public bool Shortens => Cast.Zip(Calls).Any(c => c.First.Name != c.Second);

    /// <summary>As many words of a name as fit, or of a first word that is too long the part before a hyphen, or as many letters as fit.</summary>
    internal static string CallOf(string name)
    {
        var fits = TextSize.Name(name, NameSize * Bold, WidestName);
        var part = name.Split('-', ' ')[0];
        return fits.EndsWith('…') && part.Length > 0 && part.Length < name.Length && TextSize.Width(part, NameSize * Bold) <= WidestName ? part : fits;
    }

    /// <summary>"Ines against Bruno and Wanda, 12 moves".</summary>
    public string Gist =>
        $"{Words.Many(Source.Steps.Count, "move")}, {Words.Span(new HalfCounts(Source.End))} at {Teaching.Speed.Performance.MetronomeOf(Source.Brief.Pulse)} a minute{(StyleWords.Of(Source.Scene) is { } style ? ", " + style : string.Empty)}";

    /// <summary>The hero, then the attackers: who, and where they open.</summary>
    public IEnumerable<(int Performer, string Name, string Opens)> Cast
    {
        get
        {
            yield return (-1, Page.Clean(Source.Brief.Hero.Name), "on " + StepDetails.TheMark(Source.Scene, 0));
            for (var a = 0; a < Source.Brief.Attackers.Count; a++)
            {
                var opens = a < Source.Routine.Placements.Count ? Source.Routine.Placements[a] : null;
                var late = opens is null ? null : EntranceCue.Of(Source.Scene, opens, a);
                yield return (a, Page.Clean(Source.Brief.Attackers[a].Name), opens is null ? string.Empty : Words.Clock(opens.Bearing) + (late is null ? string.Empty : $", in play from {Words.AtCount(late.Stands)}"));
            }
        }
    }

    public IEnumerable<PosterMove> Moves => Source.Steps.Select(s => new PosterMove(
        Words.MoveTag(s.Index + 1),
        Words.CountTag(s.Start),
        s.Target,
        Calls[s.Target + 1],
        s.Opens && s.HasTarget ? new Bearing(s.TargetBearing) : null,
        s.Technique?.Name ?? Words.Unanswered,
        string.Join(", ", Around(s)),
        [.. s.Falls.Select(f => StepDetails.Name(Source.Scene, f.Who))],
        Source.Verdict.Grave.Any(f => f.Move == s.Index + 1)));

    private static IEnumerable<string> Around(Step step)
    {
        if (step.Attack is { } attack)
        {
            yield return "against " + Words.Low(attack.Name);
        }

        if (PropLines.With(step.Scene, step) is { } props)
        {
            yield return props;
        }

        if (step.Travels >= 0)
        {
            yield return "to " + StepDetails.MarkName(step.Scene, step.Travels);
        }

        if (step.Row.Cue != Cue.None)
        {
            yield return "cue: " + Words.Of(step.Row.Cue);
        }

        if (step.Reaction is { } reaction)
        {
            yield return Words.Low(reaction.Name);
        }
    }
}
