using Generator.Domain;
using Generator.Rules;
using Generator.Rules.Replaying;
using Generator.Rules.Rules;

namespace Generator.Paperwork.Text;

/// <summary>What stands in small print under a move, in the order in which it happens.</summary>
internal static class StepDetails
{
    public static IEnumerable<string> Of(Scene scene, Move move, Step step)
    {
        string?[] details =
        [
            step.WalkRound > 0 ? $"comes round from {Words.Clock(step.Before.Attackers[step.Row.Attacker].Bearing)}" : null,
            CueOf(scene, step),
            Settles(scene, step),
            Travels(scene, step),
            Opening(scene, step),
            .. Thing.Used(scene, step).Select(u => $"{ThingWords.Before(u.Need.Use)} {Page.Clean(u.Thing.InWords)}").Distinct(StringComparer.Ordinal),
            .. PropLines.Of(scene, step),
            .. step.Falls.Select(f => Fall(scene, step, f.Who, f.Kind)),
            Second(scene, step),
            .. HurtLines.Of(step).Select(h => $"{Name(scene, h.Who)} {HurtLines.Plays(h)}: nothing with it or on it"),
            move.Linger > HalfCounts.Zero && step.Row.Attacker >= 0 ? $"{Name(scene, step.Row.Attacker)} takes {Words.Span(move.Linger)} longer to recover" : null,
            Page.Clean(move.Note) is { Length: > 0 } note ? "note: " + note : null,
        ];
        return details.OfType<string>();
    }

    /// <summary>The name of a performer, the hero being −1.</summary>
    internal static string Name(Scene scene, int who) => Page.Clean(who < 0 ? scene.Brief.Hero.Name : scene.Brief.Attackers[who].Name);

    /// <summary>"goes to the window, 2.40 m towards 3 o'clock, there at count 12"; null where the hero stays on the mark.</summary>
    internal static string? Travels(Scene scene, Step step) => step.Travels < 0 ? null
        : $"goes to {MarkName(scene, step.Travels)}, {new Centimetres(step.Way)} towards {Words.Clock(step.Heading)}, there at {Words.AtCount(step.End)}";

    /// <summary>A mark in a sentence: what the crew calls it, "the mark" where there is one alone.</summary>
    internal static string TheMark(Scene scene, int mark) => scene.Brief.Ally is not null ? $"{Page.Clean(scene.OnMark(mark).Name)}'s mark" : scene.Brief.Travels ? MarkName(scene, mark) : "the mark";

    /// <summary>Behind where somebody opens: ", with the left knee down"; nothing for who opens on both feet.</summary>
    internal static string OnTheKnee(AttackerPart attacker) => attacker.Kneels is { } knee ? $", with the {(knee == Side.Left ? "left" : "right")} knee down" : string.Empty;

    /// <summary>From where the hours round a plan are seen, which are others than those of the moves; null where there is one mark alone.</summary>
    internal static string? RimHours(Scene scene) => scene.Brief.Travels ? $"Hours round the plan are seen from {MarkName(scene, 0)}, the first mark; in the moves, from the mark of the moment." : null;

    /// <summary>What the crew calls a mark.</summary>
    internal static string MarkName(Scene scene, int mark) => Page.Clean(scene.Brief.Marks[mark].Name);

    private static string? CueOf(Scene scene, Step step)
    {
        var behind = step.HasTarget && step.Attack is not null && Math.Abs(step.SeenFrom) > scene.Settle.SightHalfAngle;
        var whose = scene.Brief.Ally is null ? "the hero" : Name(scene, -1);
        return step.Row.Cue switch
        {
            Cue.None => behind ? $"comes from outside {whose}'s sight, without a cue" : null,
            var cue => $"cue: {Words.Of(cue)}{(behind ? $", comes from outside {whose}'s sight" : string.Empty)}",
        };
    }

    /// <summary>What the hero does in the gap before the move.</summary>
    private static string? Settles(Scene scene, Step step)
    {
        if (step.Technique is null)
        {
            return null;
        }

        var turn = step.TurnMade == 0 ? null : $"turns {(step.TurnMade > 0 ? "clockwise" : "counter-clockwise")} to face {Words.Clock(step.FacingStart)}";
        var change = step.StanceStart == step.Before.Stance || step.StanceTime == 0 ? null : "changes to " + StanceName(scene, step.StanceStart);
        IReadOnlyList<string> done = [.. new[] { turn, change }.OfType<string>()];
        return done.Count == 0 ? null : $"first {Name(scene, -1)} {string.Join(" and ", done)}";
    }

    private static string StanceName(Scene scene, Stance stance)
    {
        var name = scene.Book.Stances.NameOf(stance);
        return char.ToLowerInvariant(name[0]) + name[1..];
    }

    private static string? Opening(Scene scene, Step step)
    {
        if (step.Mode != MoveMode.FollowUp)
        {
            return null;
        }

        var name = Name(scene, step.Row.Attacker);
        return step.TargetPosture switch
        {
            null => $"no opening: {name} is recovering",
            Posture.Ready or Posture.Knelt => $"{name} is {Words.Of(step.TargetPosture.Value)}",
            Posture.Out => $"{name} is out",
            Posture.Gripping => $"answers the grip of {name}",
            var held when held.Value.IsControlled() => $"{name} is {Words.Of(held.Value)}",
            var open => $"while {name} is {Words.Of(open.Value)}, until {Words.AtCount(step.Before.Attackers[step.Row.Attacker].OpenUntil)}",
        };
    }

    private static string Fall(Scene scene, Step step, int who, FallClass kind) =>
        $"{Name(scene, who)} {FallWords(kind)}{(who < 0 ? string.Empty : $", lands at {Words.Clock(step.After.Attackers[who].Bearing)}")}";

    private static string FallWords(FallClass fall) => fall switch
    {
        FallClass.ToKnee => "goes down to a knee",
        FallClass.Back => "falls on the back",
        FallClass.Side => "falls on the side",
        FallClass.Forward => "falls forward",
        _ => "is thrown over",
    };

    private static string? Second(Scene scene, Step step)
    {
        if (step.Second < 0 || step.Technique is null)
        {
            return null;
        }

        return step.Technique.TakesTwo ? $"takes {Name(scene, step.Second)} as well" : $"{Name(scene, step.Row.Attacker)} bumps into {Name(scene, step.Second)}";
    }
}
