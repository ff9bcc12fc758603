using Generator.Domain;
using Generator.Paperwork.Text;
using Generator.Rules.Replaying;
using Generator.Rules.Rules;

namespace Generator.Paperwork.SafetyPapers;

/// <summary>Blows: at head height, from outside the sight, with contact, and moves that leave the floor or turn.</summary>
internal static class BlowHazards
{
    private static readonly string[] Acrobatic = ["jump", "spin", "high-kick"];

    public static IEnumerable<Hazard> Of(Finder find) =>
    [
        .. Finder.At([.. HeadHeight(find, kicks: true)], (who, times) => AtHead(find, who, times, kick: true)),
        .. Finder.At([.. HeadHeight(find, kicks: false)], (who, times) => AtHead(find, who, times, kick: false)),
        .. Blind(find),
        .. Finder.At([.. find.Done.Where(s => s.HasTarget && s.Technique!.Kind == ContactKind.Contact).SelectMany(s => new[] { (s, Finder.At(s, -1)), (s, find.Name(s.Row.Attacker)) })], (who, times) => Contact(find, who, times / 2)),
        .. Finder.At([.. find.Done.Where(s => s.Technique!.Demands.Any(d => Acrobatic.Contains(d, StringComparer.Ordinal))).Select(s => (s, Finder.At(s, -1)))], (who, times) => Acrobatics(find, who, times)),
    ];

    /// <summary>Those at whose heads a blow goes: the attacker by a technique, the hero by an attack.</summary>
    private static IEnumerable<(Step Step, string Who)> HeadHeight(Finder find, bool kicks)
    {
        foreach (var step in find.Source.Steps.Where(s => s.HasTarget))
        {
            if (step.Technique is { IsHeadHit: true } technique && (technique.Family == Family.Kick || technique.BaseId.Contains("kick", StringComparison.Ordinal)) == kicks)
            {
                yield return (step, find.Name(step.Row.Attacker));
            }

            if (step.Attack is { Line.IsAtHead: true } attack && (attack.Line.Kind == LineKind.KickHighRound) == kicks)
            {
                yield return (step, Finder.At(step, -1));
            }
        }
    }

    private static Hazard AtHead(Finder find, IReadOnlyList<string> who, int times, bool kick)
    {
        var runs = find.Brief.Safety.Runs;
        var hits = find.Done.Sum(s => Enumerable.Range(0, find.Scene.Cast).Count(a => Exposure.HitsHead(s, a))) + find.Done.Count(s => Exposure.HitsHeroHead(s.Technique!, s.Attack));
        return new Hazard
        {
            Title = kick ? "Kicks at head height" : "Blows at head height",
            Who = [],
            Moves = [],
            How = $"A knock to head, face or teeth; the neck from selling it. {Words.Many(hits, "head-height hit")} sold in a run, {Words.Number(hits * runs)} in {Words.Many(runs, "run")}.",
            Harm = kick ? Harm.Grave : Harm.Serious,
            Likelihood = find.Often(times, who),
            Controls = Finder.Controls(
                "Bring it down to chest or belly, or show only the reaction.",
                kick ? "Two arm lengths apart, and a step back with the kicking foot; at least 15 cm between foot and face." : "At least 15 cm between fist and face, aimed past the head, set by the longer arm of the two.",
                "Eye contact, then the blow, then the sound, then the reaction: the one who is hit moves last.",
                "After any knock to the head: stop, assess, and do not go on that day (Russell and Daniell 2018: two in three theatre workers had had one, and 70 % of those had symptoms and went on working)."),
        };
    }

    private static IEnumerable<Hazard> Blind(Finder find)
    {
        var places = find.Source.Steps.Where(s => s.Attack is not null && s.HasTarget && Math.Abs(s.SeenFrom) > find.Scene.Settle.SightHalfAngle).ToList();
        var uncued = places.Where(s => s.Row.Cue is not (Cue.Voice or Cue.Sound)).Select(s => s.Index + 1).ToList();
        return Finder.At([.. places.Select(s => (s, Finder.At(s, -1)))], (who, times) => new Hazard
        {
            Title = "Attacks from outside the hero's sight",
            Who = [],
            Moves = [],
            How = uncued.Count == 0
                ? "An attack that the hero does not see comes early, late or not at all."
                : $"An attack that the hero neither sees nor hears: no spoken or sounded cue at move {string.Join(", ", uncued.Select(Words.Number))}.",
            Harm = Harm.Serious,
            Likelihood = uncued.Count == 0 ? find.Often(times, who) : Likelihood.Likely,
            Controls = Finder.Controls(
                "Turn the hero first, or bring the attack from where it is seen.",
                uncued.Count == 0 ? "The spoken or sounded cue comes as the attack starts, a reaction time before contact; no cue, no attack." : "Give each a spoken or sounded cue a reaction time before contact; no cue, no attack.",
                "Run the cues alone at every fight call."),
        });
    }

    private static Hazard Contact(Finder find, IReadOnlyList<string> who, int times) => new()
    {
        Title = "Moves with contact",
        Who = [],
        Moves = [],
        How = "Bruises and strains to " + string.Join("; ", find.Done.Where(s => s.HasTarget && s.Technique!.Kind == ContactKind.Contact).Select(s => s.Technique!.Hazard).Where(h => h.Length > 0).Distinct(StringComparer.Ordinal).DefaultIfEmpty("the body")) + ".",
        Harm = Harm.Moderate,
        Likelihood = find.Often(times, who),
        Controls = Finder.Controls(
            "Choose a move without contact.",
            "Large muscles only, at most a quarter of full force (Lecure 1996); pads under the clothes.",
            "The one who is touched sets the force, anew each day."),
    };

    private static Hazard Acrobatics(Finder find, IReadOnlyList<string> who, int times) => new()
    {
        Title = "Jumps, spins and high kicks",
        Who = [],
        Moves = [],
        How = "Ankle, knee or back on landing or turning; a foot that flies wider than planned.",
        Harm = Harm.Serious,
        Likelihood = find.Brief.Floor.Surface is Surface.Wet or Surface.Uneven ? Likelihood.Likely : find.Often(times, who),
        Controls = Finder.Controls(
            "Choose a move with a foot on the floor.",
            "The whole circle clear, 2 m; firm, non-slip shoes; a dry floor.",
            "Look first, then kick; warm up before every run."),
    };
}
