using Generator.Domain;
using Generator.Paperwork.Following;
using Generator.Paperwork.Teaching;
using Generator.Paperwork.Text;
using Generator.Rules;
using Generator.Rules.Replaying;

namespace Generator.Paperwork.HandOffs;

/// <summary>
/// What sound, light and camera wait for, with timecode. Spoken and sounded cues come as the attack starts, knaps at the contact of the technique,
/// falls at the end of the move. The timecode is that of the click, count-in included.
/// </summary>
public static class CueList
{
    /// <summary>In order of time; at one moment in the order in which they are called, where its count is held what lands and ends before what begins.</summary>
    public static IReadOnlyList<CueEntry> Of(Scene scene, Routine routine, IReadOnlyList<Step> steps, IReadOnlyList<Phrase> phrases)
    {
        IEnumerable<CueEntry> all =
        [
            .. phrases.Select(p => new CueEntry(steps[p.First - 1].Start, "phrase", string.Empty, "phrase " + Words.Number(p.Number), p.First, Begins: true)),
            .. routine.Placements.Take(scene.Cast).Select((p, a) => (Placement: p, Attacker: a, Cue: EntranceCue.Of(scene, p, a))).Where(e => e.Cue is not null)
                .Select(e => new CueEntry(e.Cue!.SetsOff, "enters", StepDetails.Name(scene, e.Attacker), $"from {e.Cue.From} to {Words.Clock(e.Placement.Bearing)}", 0, Begins: true)),
            .. LeadIn.Of(scene, steps) is { } early ? [new CueEntry(early.SetsOff, "sets off", early.Who, early.Short, 1, Begins: true)] : Array.Empty<CueEntry>(),
            .. steps.SelectMany(s => Of(scene, s)),
        ];
        return [.. all.Select((cue, i) => (cue, i)).OrderBy(c => c.cue.Moment).ThenBy(c => c.cue.Begins && scene.Pulse.HoldAt(c.cue.Moment) is not null).ThenBy(c => c.i).Select(c => c.cue)];
    }

    /// <summary>The list as plain text of fixed width, ending with a line feed.</summary>
    public static string Text(string title, IReadOnlyList<CueEntry> cues, Pulse pulse, FrameRate rate) => Block.TextOf(Blocks(title, cues, pulse, rate));

    /// <summary>What it says, piece by piece.</summary>
    public static IEnumerable<Block> Blocks(string title, IReadOnlyList<CueEntry> cues, Pulse pulse, FrameRate rate)
    {
        var clock = new ShowClock(pulse);
        return
        [
            Block.Title("Cue list: " + title),
            Block.Prose($"Timecode at {rate} frames a second, from the first click; {Words.Number(ShowClock.CountIn)} clicks count in, count 1 is at {rate.LabelOf(rate.FrameAt(clock.At(0)))}. {PulseWords.Of(pulse)}. Knaps stand where the blow lands, a hit of the hero at the end of its technique: move them by ear. MOVE is the move to which a cue belongs, COUNT when the cue itself comes. {Words.Tags} {Words.Entrances}"),
            Block.Rule,
            Block.Caution(Cautions.Sheet),
            Block.Gap,
            Block.Columns(("TIMECODE", 11), ("MOVE", 4), ("COUNT", 8), ("KIND", 8), ("WHO", 15), ("WHAT", 22)),
            .. cues.Select(c => Block.Row(
                (rate.LabelOf(rate.FrameAt(c.Begins ? clock.From(c.Moment) : clock.At(c.Moment))), 11),
                (c.Move == 0 ? string.Empty : Words.MoveTag(c.Move), 4),
                (Words.CountTag(c.Moment), 8),
                (c.Kind, 8),
                (c.Who, 15),
                (c.What, 22))),
        ];
    }

    private static IEnumerable<CueEntry> Of(Scene scene, Step step)
    {
        var move = step.Index + 1;
        if (step.Row.Cue != Cue.None && step.Row.Attacker >= 0)
        {
            var starts = step.Attack is { } attack ? step.Contact - attack.Length.Value : step.Start;
            yield return new CueEntry(starts, Words.Of(step.Row.Cue), StepDetails.Name(scene, step.Row.Attacker), step.Attack is { } a ? "before " + a.Name : "before the move", move, Begins: true);
        }

        if (step.Technique is not { } technique)
        {
            yield break;
        }

        if (KnapMaker(scene, step, technique) is { } maker)
        {
            yield return new CueEntry(HeroTrail.SoundsAt(step), "knap", maker, technique.Name, move, Begins: false);
        }

        foreach (var (who, _) in step.Falls)
        {
            yield return new CueEntry(step.End, "fall", StepDetails.Name(scene, who), who < 0 ? technique.Name : $"{step.Reaction?.Name}, at {Words.Clock(step.After.Attackers[who].Bearing)}", move, Begins: false);
        }

        foreach (var hurt in HurtLines.Of(step))
        {
            yield return new CueEntry(hurt.From, "hurt", StepDetails.Name(scene, hurt.Who), $"{hurt.What.PartInWords}, until {Words.AtCount(hurt.What.Until.Value)}", move, Begins: false);
        }

        for (var a = 0; a < scene.Cast; a++)
        {
            var (before, after) = (step.Before.Attackers[a], step.After.Attackers[a]);
            if (after.Posture == Posture.Out && before.Posture != Posture.Out)
            {
                yield return new CueEntry(step.End, "out", StepDetails.Name(scene, a), after.Gone ? "leaves at " + Words.Clock(after.Bearing) : "stays at " + Words.Clock(after.Bearing), move, Begins: false);
            }
        }
    }

    private static string? KnapMaker(Scene scene, Step step, Technique technique) => !step.HasTarget || step.IsAnswered ? null : technique.Knap switch
    {
        Knap.Hero => StepDetails.Name(scene, -1),
        Knap.Victim => technique.Family == Family.Setback ? StepDetails.Name(scene, -1) : StepDetails.Name(scene, step.Row.Attacker),
        Knap.Contact => $"{StepDetails.Name(scene, -1)} and {StepDetails.Name(scene, step.Row.Attacker)}",
        _ => null,
    };
}
