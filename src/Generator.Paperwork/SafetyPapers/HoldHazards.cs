using Generator.Domain;
using Generator.Rules.Replaying;

namespace Generator.Paperwork.SafetyPapers;

/// <summary>Holds: at neck and throat, and on joints. The records of the library say which parts they endanger.</summary>
internal static class HoldHazards
{
    private static readonly string[] NeckWords = ["neck", "throat", "scalp", "spine", "hero's back"];

    private static readonly string[] JointWords = ["elbow", "shoulder", "wrist", "knee", "thumb", "joint", "fingers"];

    public static IEnumerable<Hazard> Of(Finder find) =>
    [
        .. Finder.At([.. Held(find, NeckWords)], (who, times) => new Hazard
        {
            Title = "Holds at neck, throat or hair",
            Who = [],
            Moves = [],
            How = "Pressure on the windpipe or a turn of the neck.",
            Harm = Harm.Grave,
            Likelihood = find.Often(times / 2, who),
            Controls = Finder.Controls(
                "Take hold of arm, cloth or body instead.",
                "No pressure on the neck: the arm or hands lie on chest, shoulders or collarbones, and the held one carries the grip.",
                "The held one can breathe and speak; a tap or the agreed word ends it at once."),
        }),
        .. Finder.At([.. Held(find, JointWords)], (who, times) => new Hazard
        {
            Title = "Grips, locks and throws on joints",
            Who = [],
            Moves = [],
            How = "A joint pulled or turned past its end.",
            Harm = Harm.Serious,
            Likelihood = find.Often(times / 2, who),
            Controls = Finder.Controls(
                "Hold the limb, not the joint, or choose another move.",
                "The joint is held and never loaded; the receiver goes ahead of it and acts the pain.",
                "A tap or the agreed word ends it at once."),
        }),
    ];

    /// <summary>Both partners of every partnered technique, and of every grab, whose record names one of the parts.</summary>
    private static IEnumerable<(Step Step, string Who)> Held(Finder find, string[] words) =>
        find.Source.Steps.Where(s => s.HasTarget && (Names(s.Technique is { Kind: ContactKind.Partnered } t ? t.Hazard : string.Empty, words) || Names(s.Attack is { IsGrab: true } a ? a.Hazard : string.Empty, words)))
            .SelectMany(s => new[] { (s, Finder.At(s, -1)), (s, find.Name(s.Row.Attacker)) });

    private static bool Names(string hazard, string[] words) => words.Any(w => hazard.Contains(w, StringComparison.OrdinalIgnoreCase));
}
