using Generator.Domain;
using Generator.Paperwork.Text;

namespace Generator.Paperwork.SafetyPapers;

/// <summary>The risk assessment in five steps as plain text of fixed width.</summary>
public static class RiskSheet
{
    private const string Blank = "______________________";

    /// <summary>The whole sheet, ending with a line feed.</summary>
    public static string Of(PaperSource source, IReadOnlyList<Hazard> hazards) => string.Concat(Lines(source, hazards).Select(l => l + "\n"));

    /// <summary>Green is low, yellow medium, red high.</summary>
    public static string Word(RiskLevel level) => level switch
    {
        RiskLevel.Green => "low (green)",
        RiskLevel.Yellow => "medium (yellow)",
        _ => "HIGH (red)",
    };

    /// <summary>"m2 c3, m4 c5&amp;", or "throughout".</summary>
    public static string When(Hazard hazard) => hazard.Moves.Count == 0 ? "throughout" : string.Join(", ", hazard.Moves.Select(Words.Tag));

    private static IEnumerable<string> Lines(PaperSource source, IReadOnlyList<Hazard> hazards) =>
    [
        .. Page.Wrap("Risk assessment: " + source.Brief.Title, Page.Width),
        .. Page.Wrap($"Guidance: {source.Options.Guidance.Country}. {string.Join(' ', source.Options.Guidance.Sources)}", Page.Width),
        .. Page.Wrap("Any change of the routine clears the sign-offs.", Page.Width),
        Page.Line('='),
        .. Page.Wrap(SafetyCautions.NoClearance, Page.Width),
        string.Empty,
        .. Findings(source),
        "STEP 1  IDENTIFY THE HAZARDS",
        .. Page.Hang("  ", Words.Tags),
        .. hazards.SelectMany((h, i) => Page.Row(2, (Number(i), 3), (h.Title, 26), (When(h), 45))),
        "",
        "STEP 2  WHO MIGHT BE HARMED, AND HOW",
        .. hazards.SelectMany((h, i) => Page.Row(2, (Number(i), 3), (string.Join(", ", h.Who), 26), (h.How, 45))),
        "",
        "STEP 3  EVALUATE THE RISKS AND DECIDE ON PRECAUTIONS",
        .. Page.Wrap("First ask why it is not avoided. Then the controls in their order: design it out, guard, inform. Likelihood is counted from how often it is done in a day of runs (up to 6 times unlikely, up to 24 possible, more often likely; a step more for a novice or a bad floor): a proposal, no source. The rating after the controls holds only once somebody has seen that guards and information are in place.", Page.Width),
        .. hazards.SelectMany((h, i) => Evaluated(h, Number(i))),
        "",
        .. Matrix(),
        "",
        .. Record(),
        "",
        "STEP 5  REVIEW",
        $"  Review on: {Blank}   by: {Blank}",
        .. Page.Hang("  ", "And whenever the routine, the cast, the place, the floor or the clothes change, after any injury or near miss, and when anybody asks."),
        "",
        .. Kept(source),
    ];

    private static string Number(int index) => "H" + Words.Number(index + 1);

    private static IEnumerable<string> Findings(PaperSource source)
    {
        if (source.Verdict.Grave is not { Count: > 0 } grave)
        {
            return [];
        }

        return
        [
            "UNSAFE OR BROKEN AS IT STANDS",
            .. grave.SelectMany(f => Page.Hang("  - ", $"{(f.Move > 0 ? $"move {Words.Number(f.Move)}, count {f.Count.ToCountText()}: " : string.Empty)}{f.Message}")),
            string.Empty,
        ];
    }

    private static IEnumerable<string> Evaluated(Hazard hazard, string number)
    {
        yield return string.Empty;
        foreach (var line in Page.Row(2, (number, 3), (hazard.Title, 26), ($"{Words.Of(hazard.Harm)} x {Words.Of(hazard.Likelihood)}: {Word(hazard.Level)}", 45)))
        {
            yield return line;
        }

        yield return $"       Why not avoided? {Blank}{Blank}";
        foreach (var control in hazard.Controls)
        {
            foreach (var line in Page.Hang("       ", $"{Words.Of(control.Order)}: {control.Text}"))
            {
                yield return line;
            }
        }

        if (hazard.OnlyInforms)
        {
            yield return "       Telling people is the only control here: look for a guard.";
        }

        yield return $"       With guards and information: {Words.Of(hazard.Harm)} x {Words.Of(hazard.LikelihoodAfter)}: {Word(hazard.LevelAfter)}";
        yield return $"       Seen by: {Blank}";
    }

    private static IEnumerable<string> Matrix()
    {
        yield return "  How the ratings are read; the matrix orders what to look at first and";
        yield return "  measures nothing.";
        yield return Page.Row(4, [("", 10), .. Enum.GetValues<Likelihood>().Select(l => (Words.Of(l), 10))]).First();
        foreach (var harm in Enum.GetValues<Harm>().Reverse())
        {
            yield return Page.Row(4, [(Words.Of(harm), 10), .. Enum.GetValues<Likelihood>().Select(l => (Words.Of(RiskMatrix.Of(harm, l)), 10))]).First();
        }

        foreach (var line in Page.Hang("    ", "minor: goes on working; moderate: misses a day or two; serious: a broken bone, a joint out, a concussion; grave: head, neck or spine, lasting harm or worse."))
        {
            yield return line;
        }
    }

    private static IEnumerable<string> Record()
    {
        yield return "STEP 4  RECORD AND IMPLEMENT";
        foreach (var field in new[] { "Fight coordinator", "Why competent", "Fight captain", "Who may stop it", "Rehearsal hours agreed", "How all are told", "First aider, kit at", "Hospital, way there", "Controls in place by" })
        {
            yield return Page.Row(2, (field, 24), (Blank + Blank, 44)).First();
        }
    }

    /// <summary>What the library says of each move that is done.</summary>
    private static IEnumerable<string> Kept(PaperSource source)
    {
        yield return "HOW EACH MOVE IS KEPT SAFE  from the library's records";
        foreach (var group in Records(source).GroupBy(r => (r.Name, r.Hazard, r.Safety)))
        {
            foreach (var line in Page.Hang("  ", $"{group.Key.Name} ({group.Key.Hazard}), {string.Join(", ", group.Select(g => g.At).Distinct())}").Concat(Page.Hang("      ", group.Key.Safety)))
            {
                yield return line;
            }
        }
    }

    private static IEnumerable<(string At, string Name, string Hazard, string Safety)> Records(PaperSource source)
    {
        foreach (var step in source.Steps)
        {
            if (step.Attack is { Safety.Length: > 0 } attack)
            {
                yield return (Words.Tag(step), attack.Name, attack.Hazard, attack.Safety);
            }

            if (step.Technique is { Safety.Length: > 0 } technique)
            {
                yield return (Words.Tag(step), technique.Name, technique.Hazard, technique.Safety);
            }

            if (step.Reaction is { Risk.Length: > 0 } reaction)
            {
                yield return (Words.Tag(step), reaction.Name, reaction.Risk, reaction.Sell);
            }
        }
    }
}
