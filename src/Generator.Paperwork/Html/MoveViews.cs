using Generator.Domain;
using Generator.Paperwork.Text;
using Generator.Rules.Replaying;

namespace Generator.Paperwork.Html;

/// <summary>Puts the moves of a routine into words for the pages.</summary>
internal static class MoveViews
{
    public static IReadOnlyList<MoveView> Of(PaperSource source, FigureSet figures) => [.. source.Steps.Select(s => Of(source, s, figures))];

    private static MoveView Of(PaperSource source, Step step, FigureSet figures)
    {
        var steps = source.Steps;
        var last = step.Index == steps.Count - 1 || steps[step.Index + 1].Opens || steps[step.Index + 1].HasTarget != step.HasTarget;
        return new MoveView
        {
            Number = step.Index + 1,
            AtCount = Words.AtCount(step.Start),
            Attacker = step.Target,
            Who = step.HasTarget ? Page.Clean(source.Brief.Attackers[step.Row.Attacker].Name) : Page.Clean(source.Brief.Hero.Name) + " alone",
            From = step.HasTarget ? Words.Clock(step.TargetBearing) : string.Empty,
            Attack = step.Attack?.Name ?? string.Empty,
            Technique = step.Technique?.Name ?? Words.Unanswered,
            Reaction = step.Reaction?.Name ?? string.Empty,
            Picture = figures.Contact(step),
            Sell = step.Reaction?.Sell ?? string.Empty,
            Details = [.. StepDetails.Of(source.Scene, source.Routine.Moves[step.Index], step)],
            Fates = last ? [.. ResetLines.After(source.Scene, steps, step.Index)] : [],
            Findings = [.. source.Verdict.Findings.Where(f => f.Move == step.Index + 1).Select(FindingView.Of)],
            Body = step.Technique is null ? [] : Body(source, step),
            Safety = Safety(step),
        };
    }

    private static IReadOnlyList<(string What, string Before, string After)> Body(PaperSource source, Step step)
    {
        var stances = source.Scene.Book.Stances;
        return
        [
            ("stance", Words.Low(stances.NameOf(step.StanceStart)), Words.Low(stances.NameOf(step.After.Stance))),
            ("left hand", Of(source, step.LeftStart), Of(source, step.After.Left)),
            ("right hand", Of(source, step.RightStart), Of(source, step.After.Right)),
            ("faces", Words.Clock(step.FacingStart), Words.Clock(step.After.Facing)),
        ];
    }

    private static string Of(PaperSource source, Hand hand) => hand.Kind switch
    {
        HandKind.Guard => "in guard",
        HandKind.Out => "out",
        HandKind.Holding => "holds " + StepDetails.Name(source.Scene, hand.Who),
        _ => "held by " + StepDetails.Name(source.Scene, hand.Who),
    };

    private static List<string> Safety(Step step)
    {
        var lines = new List<string>();
        foreach (var (name, note) in new[] { (step.Attack?.Name, step.Attack?.Safety), (step.Technique?.Name, step.Technique?.Safety) })
        {
            if (name is { Length: > 0 } && note is { Length: > 0 })
            {
                lines.Add($"{name}: {note}");
            }
        }

        return lines;
    }
}
