using Generator.Domain;
using Generator.Rules.Replaying;

namespace Generator.Rules.Shapes;

/// <summary>A time when the hero loses ground, and what it costs.</summary>
/// <param name="Move">Number of the move, from 1.</param>
/// <param name="Time">Contact of the attack, in half counts; the start where there is no attack.</param>
/// <param name="Cost">Half counts from there to the start of the next move with which the hero scores, 0 or more; to the end where none comes.</param>
/// <param name="Otherwise">The hero next scores with another family of technique than last before (a kick after a strike, a throw after a kick), or had not scored before.</param>
/// <param name="Beaten">The same attack (either side) comes again later and does not hit: number of that move, from 1; null where it does not.</param>
public readonly record struct Setback(int Move, int Time, int Cost, bool Otherwise, int? Beaten)
{
    /// <summary>Half counts that a setback has to cost to be felt: two counts. Common practice, no source.</summary>
    public const int Felt = 4;

    /// <param name="steps">The moves.</param>
    /// <param name="end">End of the fight in half counts.</param>
    public static IReadOnlyList<Setback> Of(IReadOnlyList<Step> steps, int end) =>
        [.. steps.Where(s => s.Technique is { Family: Family.Setback }).Select(s => Of(s, steps, end))];

    /// <summary>When a setback hits: contact of its attack, its start where there is none.</summary>
    internal static int TimeOf(Step step) => step.Attack is null ? step.Start : step.Contact;

    private static Setback Of(Step step, IReadOnlyList<Step> steps, int end)
    {
        var time = TimeOf(step);
        var next = steps.Skip(step.Index + 1).FirstOrDefault(UpperSpan.Scores);
        var last = steps.Take(step.Index).LastOrDefault(UpperSpan.Scores);
        var beaten = step.Attack is not { } attack
            ? null
            : steps.Skip(step.Index + 1).FirstOrDefault(s => s.Attack?.BaseId == attack.BaseId && s.Technique is { Family: not Family.Setback });
        return new Setback(
            step.Index + 1,
            time,
            Math.Max(0, (next?.Start ?? end) - time),
            next?.Technique!.Family is { } family && family != last?.Technique!.Family,
            beaten is null ? null : beaten.Index + 1);
    }
}
