using Generator.Domain;
using Generator.Paperwork.Text;
using Generator.Rules.Replaying;

namespace Generator.Paperwork.SafetyPapers;

/// <summary>Falls, one hazard for each kind, and people sent across the floor.</summary>
internal static class FallHazards
{
    public static IEnumerable<Hazard> Of(Finder find)
    {
        foreach (var kind in Enum.GetValues<FallClass>().Where(f => f != FallClass.None).Reverse())
        {
            var places = find.Done.SelectMany(s => s.Falls.Where(f => f.Kind == kind).Select(f => (Step: s, f.Who))).ToList();
            foreach (var hazard in Finder.At([.. places.Select(p => (p.Step, Finder.At(p.Step, p.Who)))], (who, _) => Fall(find, kind, who, places)))
            {
                yield return hazard;
            }
        }

        var sent = find.Done.Where(s => s.HasTarget && s.Reaction is { Sends: true }).Select(s => (s, find.Name(s.Row.Attacker))).ToList();
        foreach (var hazard in Finder.At(sent, (who, times) => Sent(find, who, times)))
        {
            yield return hazard;
        }

        var crashes = find.Done.Where(s => s.Second >= 0).SelectMany(s => new[] { (s, find.Name(s.Row.Attacker)), (s, find.Name(s.Second)) }).ToList();
        foreach (var hazard in Finder.At(crashes, (who, _) => Crash(find, who)))
        {
            yield return hazard;
        }
    }

    private static Hazard Fall(Finder find, FallClass kind, IReadOnlyList<string> who, List<(Step Step, int Who)> places)
    {
        var parts = places.OrderBy(p => p.Who < 0).Select(p => p.Who < 0 ? p.Step.Technique!.Hazard : p.Step.Reaction!.Risk).Where(r => r.Length > 0).Distinct(StringComparer.Ordinal);
        var landings = places.OrderBy(p => p.Who < 0).Select(p => p.Who < 0 ? find.MarkOf(p.Step.After) : find.Seen(p.Step.After, p.Step.After.Attackers[p.Who].Bearing)).Distinct(StringComparer.Ordinal);
        return new Hazard
        {
            Title = Title(kind),
            Who = [],
            Moves = [],
            How = "Landing badly on " + string.Join("; ", parts.DefaultIfEmpty("the floor")) + ".",
            Harm = kind switch
            {
                FallClass.ToKnee => Harm.Moderate,
                FallClass.ThrownOver => Harm.Grave,
                _ => Harm.Serious,
            },
            Likelihood = find.Brief.Floor.Surface is Surface.Matted or Surface.Sprung ? find.Often(places.Count, who) : Finder.Up(find.Often(places.Count, who)),
            Controls = Finder.Controls(
                "Choose a reaction that stays on the feet, or film the fall as a shot of its own.",
                kind == FallClass.ToKnee ? "Knee pads under the clothes; no fall to a knee on a bare hard floor." : $"Mats where they land: {string.Join(", ", landings)}.",
                [.. Ways(places), "Walk it down at quarter and half speed before it is taken; the one who falls says when."]),
        };
    }

    /// <summary>How the records say that it is done.</summary>
    private static IEnumerable<string> Ways(List<(Step Step, int Who)> places) =>
        places.Select(p => p.Who < 0 ? (p.Step.Technique!.Name, Text: p.Step.Technique.Safety) : (p.Step.Reaction!.Name, Text: p.Step.Reaction.Sell))
            .Where(w => w.Text.Length > 0).Select(w => $"{w.Name}: {char.ToLowerInvariant(w.Text[0])}{w.Text[1..]}").Distinct(StringComparer.Ordinal);

    private static string Title(FallClass kind) => kind switch
    {
        FallClass.ToKnee => "Falls to the knees",
        FallClass.Back => "Falls on the back",
        FallClass.Side => "Falls on the side",
        FallClass.Forward => "Falls forward",
        _ => "Thrown over",
    };

    private static Hazard Sent(Finder find, IReadOnlyList<string> who, int times) => new()
    {
        Title = "Sent across the floor",
        Who = [],
        Moves = [],
        How = "Running or falling into somebody, an obstacle or the floor's edge.",
        Harm = Harm.Serious,
        Likelihood = find.Often(times, who),
        Controls = Finder.Controls(
            "Choose a reaction that stays on the spot.",
            "Keep the lane free, 80 cm to either side of a fall; tape it on the floor in rehearsal.",
            "Whoever is sent looks before they go; the hero guides and does not throw."),
    };

    private static Hazard Crash(Finder find, IReadOnlyList<string> who) => new()
    {
        Title = "Two attackers meet",
        Who = [],
        Moves = [],
        How = "Heads or feet knock together.",
        Harm = Harm.Serious,
        Likelihood = find.ForSkill(Likelihood.Possible, who),
        Controls = Finder.Controls(
            "Let the second one step aside instead.",
            "Arms up between the two; they meet at half pace, shoulder to chest.",
            "Both say \"ready\" before it is run."),
    };
}
