using Generator.Domain;
using Generator.Paperwork.Text;
using Generator.Rules.Replaying;
using Generator.Rules.Rules;

namespace Generator.Paperwork.SafetyPapers;

/// <summary>What is swung, what breaks, and what lies about.</summary>
internal static class PropHazards
{
    public static IEnumerable<Hazard> Of(Finder find)
    {
        for (var p = 0; p < find.Brief.Props.Count; p++)
        {
            var prop = p;
            var used = find.Source.Steps.Where(s => Prop.Used(find.Scene, s).Any(u => u.Prop == prop && u.Need.Use != PropUse.Carry)).ToList();
            if (used.Count > 0)
            {
                yield return InUse(find, prop, used);
            }

            var broken = find.Source.Steps.Where(s => s.After.Props[prop].Broken && !s.Before.Props[prop].Broken).ToList();
            if (broken.Count > 0)
            {
                yield return Breaks(find, prop, broken);
            }

            var lies = find.Source.Steps.Where(s => s.After.Props[prop].Lies).ToList();
            if (lies.Count > 0)
            {
                yield return OnTheFloor(find, prop, lies);
            }
        }
    }

    private static Hazard InUse(Finder find, int prop, List<Step> used)
    {
        var kind = find.Scene.Book.Props.Find(find.Brief.Props[prop].Kind);
        IReadOnlyList<string> who = [find.Hero, .. used.Where(s => s.HasTarget).Select(s => find.Name(s.Row.Attacker)).Distinct(StringComparer.Ordinal)];
        return new Hazard
        {
            Title = "Prop: " + PropLines.NameOf(find.Scene, prop),
            Who = who,
            Moves = used,
            How = "A hit with it on head, hands or joints; it slips from the hand towards somebody.",
            Harm = kind is { Rigid: false } ? Harm.Moderate : Harm.Serious,
            Likelihood = find.Often(used.Count, who),
            Controls = Finder.Controls(
                "Choose moves with empty hands.",
                $"{kind?.Safety} {kind?.Check}".Trim(),
                $"{Capital(kind?.CheckedBy ?? "the fight captain")} checks it before every call and signs for it; cuts pass out of line and short, nothing goes at a face; rehearsed with the real one."),
        };
    }

    private static Hazard Breaks(Finder find, int prop, List<Step> broken)
    {
        IReadOnlyList<string> who = find.Everybody;
        return new Hazard
        {
            Title = "Splinters: " + PropLines.NameOf(find.Scene, prop),
            Who = who,
            Moves = broken,
            How = "Splinters in eyes, or under hands and knees of whoever goes to the floor after it.",
            Harm = Harm.Moderate,
            Likelihood = find.Often(broken.Count, who),
            Controls = Finder.Controls(
                "Let it stay whole: cut before it breaks.",
                "It breaks on a padded shoulder or back alone; the floor is swept, and nobody kneels or falls there before.",
                "Eyes shut and faces turned away on the count; a new one for every run, of a lot that was tried out."),
        };
    }

    private static Hazard OnTheFloor(Finder find, int prop, List<Step> lies) => new()
    {
        Title = "On the floor: " + PropLines.NameOf(find.Scene, prop),
        Who = find.Everybody,
        Moves = lies,
        How = $"Somebody treads on it or falls on it: from {Words.Tag(lies[0])} on it lies {PropLines.Where(find.Scene, lies[0].After, lies[0].After.Props[prop])["on the floor ".Length..]}.",
        Harm = Harm.Moderate,
        Likelihood = Likelihood.Possible,
        Controls = Finder.Controls(
            "Let whoever holds it keep it, or let it leave the floor.",
            "It is let fall low and to the outside, onto a spot that is marked; one person is named who clears it away.",
            "Everybody knows from which count it lies where; nobody runs there."),
    };

    private static string Capital(string text) => char.ToUpperInvariant(text[0]) + text[1..];
}
