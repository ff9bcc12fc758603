using Generator.Domain;
using Generator.Paperwork.Following;
using Generator.Paperwork.Text;
using Generator.Rules.Replaying;

namespace Generator.Paperwork.Printing;

/// <summary>What the poster shows.</summary>
/// <param name="Source">The routine.</param>
public sealed record PosterView(PaperSource Source)
{
    /// <summary>"Ines against Bruno and Wanda, 12 moves".</summary>
    public string Gist =>
        $"{Words.Many(Source.Steps.Count, "move")}, {Words.Span(new HalfCounts(Source.End))} at {Teaching.Speed.Performance.MetronomeOf(Source.Brief.Pulse)} a minute";

    /// <summary>The hero, then the attackers: who, and where they open.</summary>
    public IEnumerable<(int Performer, string Name, string Opens)> Cast
    {
        get
        {
            yield return (-1, Page.Clean(Source.Brief.Hero.Name), "on the mark");
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
        s.HasTarget ? Page.Clean(Source.Brief.Attackers[s.Row.Attacker].Name) : Page.Clean(Source.Brief.Hero.Name),
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
