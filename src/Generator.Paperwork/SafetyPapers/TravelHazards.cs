using Generator.Domain;
using Generator.Paperwork.Text;
using Generator.Rules.Replaying;

namespace Generator.Paperwork.SafetyPapers;

/// <summary>The hero's ways from mark to mark, one hazard for each way of getting there.</summary>
internal static class TravelHazards
{
    /// <summary>An obstacle nearer than this to the way is named, in centimetres: the lane of a fall. Common practice, no source.</summary>
    public const int Lane = 80;

    public static IEnumerable<Hazard> Of(Finder find) =>
        Enum.GetValues<TravelKind>().SelectMany(kind => OfKind(find, kind, [.. find.Done.Where(s => s.Travels >= 0 && s.Technique!.Travel?.How == kind)]));

    private static IEnumerable<Hazard> OfKind(Finder find, TravelKind kind, List<Step> steps) =>
        Finder.At([.. steps.SelectMany(s => Concerned(find, s).Select(who => (s, who)))], (who, _) => Hazard(find, kind, steps, who));

    private static IEnumerable<string> Concerned(Finder find, Step step) =>
        step.HasTarget && step.Technique!.Travel!.How != TravelKind.ByWill ? [find.Hero, find.Name(step.Row.Attacker)] : [find.Hero];

    private static Hazard Hazard(Finder find, TravelKind kind, List<Step> steps, IReadOnlyList<string> who)
    {
        var unseen = steps.Where(s => IsBackwards(find, s)).ToList();
        var close = steps.SelectMany(s => find.Brief.Floor.Obstacles.Select(o => (Step: s, Obstacle: o, Gap: find.OnTheWay(o, s)))).Where(c => c.Gap < Lane).ToList();
        var often = find.Often(steps.Count, who);
        return new Hazard
        {
            Title = Title(kind),
            Who = [],
            Moves = [],
            How = string.Join("; ", steps.Select(s => Way(find, s))) + ". " + Dangers(kind, steps)
                + (unseen.Count == 0 ? string.Empty : $" The hero cannot see where they go at {Tags(unseen)}.")
                + string.Concat(close.Select(c => $" {Words.MoveTag(c.Step.Index + 1)} passes {Page.Clean(c.Obstacle.Name)} at {new Centimetres(c.Gap)}.")),
            Harm = kind == TravelKind.ByWill && unseen.Count == 0 ? Harm.Moderate : Harm.Serious,
            Likelihood = close.Count > 0 ? Likelihood.Likely : unseen.Count > 0 ? Finder.Up(often) : often,
            Controls = Finder.Controls(
                "Play it on one mark, or move the two marks nearer together.",
                $"The lane from mark to mark taped and kept free, {new Centimetres(Lane)} to either side of it: {string.Join(", ", steps.Select(s => Marks(find, s)).Distinct(StringComparer.Ordinal))}; nobody and nothing in it while they go.",
                [
                    .. unseen.Count == 0 ? Array.Empty<string>() : [$"Somebody named watches what is behind at {Tags(unseen)} and calls the stop."],
                    Pace(kind),
                    .. steps.Select(s => s.Technique!).Where(t => t.Safety.Length > 0).Select(t => $"{t.Name}: {Words.Low(t.Safety)}").Distinct(StringComparer.Ordinal),
                ]),
        };
    }

    /// <summary>The other mark lies outside the hero's sight.</summary>
    private static bool IsBackwards(Finder find, Step step) => new Bearing(step.Heading).Apart(new Bearing(step.FacingStart)) > find.Scene.Settle.SightHalfAngle;

    /// <summary>"m7: Is driven back, 2.40 m, door to window".</summary>
    private static string Way(Finder find, Step step) => $"{Words.MoveTag(step.Index + 1)}: {step.Technique!.Name}, {new Centimetres(step.Way)}, {Marks(find, step)}";

    private static string Marks(Finder find, Step step) => $"{find.MarkOf(step.Before)} to {StepDetails.MarkName(find.Scene, step.Travels)}";

    private static string Tags(IEnumerable<Step> steps) => string.Join(", ", steps.Select(s => Words.MoveTag(s.Index + 1)));

    private static string Dangers(TravelKind kind, List<Step> steps)
    {
        var parts = steps.Select(s => s.Technique!.Hazard).Where(h => h.Length > 0).Distinct(StringComparer.Ordinal).ToList();
        var what = kind switch
        {
            TravelKind.ByWill => "Tripping, or running into somebody or something on the way",
            TravelKind.Driven => "Pressed faster than the feet go, into what is behind",
            TravelKind.Thrown => "Sent too hard, and landing short of the mark, past it or on somebody",
            TravelKind.Dragged => "Pulled off the feet, or by joint, hair or cloth",
            TravelKind.CarriedAlong => "Run off the feet by somebody's weight, both falling",
            _ => "Running into one another when the first one stops",
        };
        return what + (parts.Count == 0 ? "." : $"; the records name {string.Join("; ", parts)}.");
    }

    private static string Pace(TravelKind kind) => kind switch
    {
        TravelKind.ByWill => "Walk the way at quarter speed first, and count the steps.",
        TravelKind.Driven => "The hero sets the pace and the other follows; a word stops both at once.",
        TravelKind.Thrown => "The other one only starts it: the hero goes by themselves, looks where, and stops on the mark.",
        TravelKind.Dragged => "The grip is slack: the hero goes by themselves, half a step behind it.",
        TravelKind.CarriedAlong => "The hero's own feet go, and set the pace; a word stops both at once.",
        _ => "The one behind keeps two steps off, and slows down first.",
    };

    private static string Title(TravelKind kind) => kind switch
    {
        TravelKind.ByWill => "Goes to another mark",
        TravelKind.Driven => "Driven back to another mark",
        TravelKind.Thrown => "Thrown or shoved to another mark",
        TravelKind.Dragged => "Dragged to another mark",
        TravelKind.CarriedAlong => "Carried along to another mark",
        _ => "Chased to another mark",
    };
}
