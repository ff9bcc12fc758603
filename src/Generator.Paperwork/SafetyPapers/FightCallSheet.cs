using Generator.Domain;
using Generator.Library.Words;
using Generator.Paperwork.Text;
using Generator.Rules.Replaying;

namespace Generator.Paperwork.SafetyPapers;

/// <summary>The sheet for the fight call before every performance.</summary>
public static class FightCallSheet
{
    private static readonly string[] Fields = ["Date, performance", "Fight call at", "Fight captain", "Named to stop it", "First aider", "First aid kit at", "Word that stops all"];

    /// <summary>The whole sheet as plain text of fixed width, ending with a line feed.</summary>
    public static string Of(PaperSource source, IReadOnlyList<Hazard> hazards) => Block.TextOf(Blocks(source, hazards));

    /// <summary>What it says, piece by piece.</summary>
    public static IEnumerable<Block> Blocks(PaperSource source, IReadOnlyList<Hazard> hazards) =>
    [
        Block.Title("Fight call: " + source.Brief.Title),
        Block.Prose($"Guidance: {source.Options.Guidance.Country}."),
        Block.Rule,
        Block.Caution(SafetyCautions.NoClearance),
        Block.Gap,
        Block.Prose("Everybody in the fight runs it before every performance. No fight call, no fight; only fight coordinator or fight captain may make an exception. Understudies have rehearsed it with the real props."),
        Block.Gap,
        Block.Heading("Who and when"),
        .. Fields.Select(Block.Field),
        Block.Item("  ", "Anybody may stop it at any time. After any knock to the head: stop, assess, and do not go on that day. The time is set by your own agreement (a sample US stage clause: in the 15 minutes before half-hour)."),
        Block.Gap,
        Block.Heading("Checks before"),
        .. Checks(source).Select(c => Block.Item("  [ ] ", c)),
        Block.Gap,
        Block.Heading("Run"),
        Block.Item("  ", Words.Tags),
        .. Runs(source).Select(c => Block.Item("  [ ] ", c)),
        Block.Gap,
        Block.Heading("Cues to hear"),
        .. Cues(source),
        Block.Gap,
        Block.Heading("Watch for"),
        .. hazards.Where(h => h.Level > RiskLevel.Green && h.Moves.Count > 0).Select(h => Block.Row((RiskSheet.Word(h.Level), 15), (h.Title, 26), (RiskSheet.When(h), 33))),
        Block.Gap,
        Block.Heading("Each confirms", "I know every count of mine, and I am fit to do it today"),
        .. new Finder(source).Everybody.Select(n => Block.Sign(n, "fit: yes / no")),
        Block.Item("  ", "After any change of the routine everybody meets, walks the change, and confirms anew."),
    ];

    private static IEnumerable<string> Checks(PaperSource source)
    {
        var floor = source.Brief.Floor;
        yield return floor.Surface switch
        {
            Surface.Matted => "Surface: mats joined and taped, dry, swept.",
            Surface.Sprung => "Surface: sprung floor dry and swept, pads under the falls.",
            Surface.Hard when floor.Mats.Count > 0 => $"Surface: hard floor dry and swept; on their marks, taped down and joined: {string.Join(", ", floor.Mats.Select(m => Page.Clean(m.Name)))}. Every fall lands on one.",
            Surface.Hard => "Surface: hard floor dry and swept; no fall but what the risk assessment allows.",
            Surface.Wet => "Surface: WET. Dry it, or do not run the fight until the coordinator has seen it.",
            _ => "Surface: UNEVEN or raked. Walk it in the shoes of the performance first.",
        };
        foreach (var obstacle in floor.Obstacles)
        {
            if (ThingsUsed.How(source, obstacle) is not { } how)
            {
                yield return $"Obstacle: {Page.Clean(obstacle.Name)} stands on its marks, padded and taped off.";
                continue;
            }

            yield return $"Used: {Page.Clean(obstacle.Name)}, {how}. {string.Join(" ", ThingsUsed.Checks(source, obstacle))} Checked by: {Block.Blank}";
        }

        foreach (var check in PropsSheet.Checks(source))
        {
            yield return check;
        }

        foreach (var (performer, who) in AllyWords.Everybody(source.Brief).Select((p, i) => (p, i - 1)))
        {
            var limits = string.Concat(LimitText.Of(performer).Concat(HurtLines.Of(source.Steps, who).Select(HurtLines.Plays)).Select(l => "; " + l));
            yield return $"{Page.Clean(performer.Name)}: firm, non-slip shoes, no jewellery, pads on{limits}; any pain or illness today?";
        }

        for (var a = 0; a < source.Scene.Cast && source.Steps.Count > 0; a++)
        {
            if (source.Steps[^1].After.Attackers[a] is { Gone: true } gone)
            {
                yield return $"Exit of {Page.Clean(source.Brief.Attackers[a].Name)} at {new Finder(source).Seen(source.Steps[^1].After, gone.Bearing)}: open, lit, nobody in it.";
            }
        }

        yield return "Light as in the performance; floor, wings and crew clear; everybody knows who is not there today.";
    }

    private static IEnumerable<string> Runs(PaperSource source)
    {
        yield return "Walk it through at half speed, falls walked down, everybody naming their own cue.";
        var throws = source.Steps.Where(s => s.Falls.Any()).Select(Words.Tag).ToList();
        if (throws.Count > 0)
        {
            yield return $"The falls alone, once each, as the one who falls wants it: {string.Join(", ", throws)}.";
        }

        yield return $"The whole at three-quarter speed, metronome {Teaching.Speed.ThreeQuarter.MetronomeOf(source.Brief.Pulse)}.";
        yield return $"Only if all say yes: the whole once at performance speed, metronome {Teaching.Speed.Performance.MetronomeOf(source.Brief.Pulse)}, never faster.";
    }

    private static IEnumerable<Block> Cues(PaperSource source)
    {
        var cued = source.Steps.Where(s => s.Row.Cue != Cue.None && s.Row.Attacker >= 0).ToList();
        return cued.Count == 0 ? [Block.Item("  ", "none")] : cued.Select(s => Block.Row((Words.MoveTag(s.Index + 1), 4), (Words.CountTag(s.Start), 5), (Words.Of(s.Row.Cue), 6), (Page.Clean(source.Brief.Attackers[s.Row.Attacker].Name), 15), (Told(s), 40)));
    }

    private static string Told(Step step) => $"{step.Attack?.Name ?? step.Technique?.Name} from {Words.Clock(step.TargetBearing)}";
}
