using Generator.Domain;
using Generator.Rules;
using Generator.Rules.Replaying;

namespace Generator.Paperwork.Text;

/// <summary>Who plays a hurt part of the body, and from when until when.</summary>
internal static class HurtLines
{
    /// <summary>Whatever one move hurts; mostly nothing.</summary>
    public static IEnumerable<HurtLimb> Of(Step step) => step.After.Hurts.Where(h => h.Move == step.Index);

    /// <summary>Whatever is hurt in a fight, of one performer (−1 for the hero, the number after the last attacker for the ally), in the order in which it comes about.</summary>
    public static IEnumerable<HurtLimb> Of(IReadOnlyList<Step> steps, int who) => steps.SelectMany(s => Of(s).Where(h => (h.Who < 0 && s.IsByAlly ? s.Scene.Cast : h.Who) == who));

    /// <summary>"plays a hurt left knee from count 12 until count 24".</summary>
    public static string Plays(HurtLimb hurt) => $"plays a hurt {Spell(hurt)}";

    /// <summary>"left knee from count 12 until count 24".</summary>
    public static string Spell(HurtLimb hurt) => $"{hurt.What.PartInWords} from {Words.AtCount(hurt.From)} until {Words.AtCount(hurt.What.Until.Value)}";

    /// <summary>Of everybody: "Ines plays a hurt left knee …".</summary>
    public static IEnumerable<string> Everybody(IReadOnlyList<Step> steps) => steps.SelectMany(s => Of(s).Select(h => $"{StepDetails.Name(s.Scene, h.Who)} {Plays(h)}"));
}
