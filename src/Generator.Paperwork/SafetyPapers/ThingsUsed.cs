using Generator.Domain;
using Generator.Paperwork.Text;
using Generator.Rules;
using Generator.Rules.Replaying;
using Generator.Rules.Rules;

namespace Generator.Paperwork.SafetyPapers;

/// <summary>The things of the floor that a routine uses, where and how.</summary>
internal static class ThingsUsed
{
    /// <summary>Every use of a thing, in the order of the moves.</summary>
    public static IEnumerable<(Step Step, ThingNeed Need, Obstacle Thing)> Of(PaperSource source) =>
        from step in source.Steps
        from used in Thing.Used(source.Scene, step)
        select (step, used.Need, used.Thing);

    /// <summary>How one thing is used, in words with the moves: "driven against (m2 c3), leant on (m9 c14)"; null where it is not.</summary>
    public static string? How(PaperSource source, Obstacle thing)
    {
        var uses = Of(source).Where(u => u.Thing == thing).GroupBy(u => u.Need.Use).Select(g => $"{Done(g.Key)} ({string.Join(", ", g.Select(u => Text.Words.Tag(u.Step)).Distinct(StringComparer.Ordinal))})").ToList();
        return uses.Count == 0 ? null : string.Join(", ", uses);
    }

    /// <summary>What is looked at before the call, one sentence a use.</summary>
    public static IReadOnlyList<string> Checks(PaperSource source, Obstacle thing) =>
        [.. Of(source).Where(u => u.Thing == thing).Select(u => source.Scene.Book.Things.Of(u.Need.Use)?.Check).OfType<string>().Distinct(StringComparer.Ordinal)];

    private static string Done(ThingUse use) => use switch
    {
        ThingUse.Lean => "leant on",
        ThingUse.Sit => "sat down on",
        ThingUse.PushOff => "pushed off from",
        ThingUse.Slam => "driven against",
        ThingUse.Bounce => "bounced off",
        ThingUse.BendOver => "bent over",
        ThingUse.Trip => "stumbled over",
        ThingUse.ThrownOnto => "thrown onto",
        ThingUse.Behind => "dodged behind",
        ThingUse.Corner => "cornered against",
        ThingUse.Block => "put in the way",
        ThingUse.Vault => "gone over",
        _ => "jumped down from",
    };
}
