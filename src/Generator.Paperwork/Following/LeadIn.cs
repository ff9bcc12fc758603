using Generator.Domain;
using Generator.Paperwork.HandOffs;
using Generator.Paperwork.Text;
using Generator.Rules;
using Generator.Rules.Replaying;

namespace Generator.Paperwork.Following;

/// <summary>What is under way before count 1: who sets off for the first blow on a click of the count-in.</summary>
/// <param name="Who">Whose blow comes first.</param>
/// <param name="SetsOff">In half counts from count 1, below 0.</param>
internal sealed record LeadIn(string Who, int SetsOff)
{
    /// <summary>Null when nobody stirs before count 1.</summary>
    public static LeadIn? Of(Scene scene, IReadOnlyList<Step> steps) =>
        steps.Count > 0 && steps[0] is { HasTarget: true, Attack: not null } first && first.Before.Attackers[first.Row.Attacker].ReadyAt is < 0 and var setsOff
            ? new LeadIn(StepDetails.Name(scene, first.Row.Attacker), setsOff)
            : null;

    /// <summary>"2 counts before count 1, on click 3".</summary>
    public string Short => $"{Words.Span(new HalfCounts(-SetsOff))} before count 1, on {Words.Count(SetsOff)}";

    /// <summary>One sentence.</summary>
    public string Sentence => $"Lead-in: {Who} sets off {Short} of the {Words.Number(ShowClock.CountIn)} that count in.";
}
