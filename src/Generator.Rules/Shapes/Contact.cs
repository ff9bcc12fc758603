using Generator.Domain;
using Generator.Rules.Replaying;

namespace Generator.Rules.Shapes;

/// <summary>What the audience counts: an attack that lands on the hero or is stopped short of it, a hit of the hero, a body thrown. Somebody who only walks in is none.</summary>
/// <param name="Time">In half counts from count 1: an attack at its contact, a hit or a throw at its end.</param>
/// <param name="Move">Number of the move, from 1.</param>
/// <param name="Attacker">Who throws it or takes it, from 0.</param>
/// <param name="ByHero">The hero's.</param>
/// <param name="Lands">It is taken, not blocked or slipped.</param>
/// <param name="Weight">Of the move's technique, 1 to 5; 1 where nothing answers.</param>
public readonly record struct Contact(int Time, int Move, int Attacker, bool ByHero, bool Lands, int Weight)
{
    /// <summary>In order of time; those of one moment in order of the moves, the attack before the answer.</summary>
    public static IReadOnlyList<Contact> Of(IReadOnlyList<Step> steps) => [.. steps.SelectMany(Of).OrderBy(c => c.Time)];

    /// <summary>An attack lands or is stopped, at <see cref="Step.Contact"/>.</summary>
    internal static bool OfAttack(Step step) => step is { Attack: { IsWalkIn: false }, Row.Attacker: >= 0 };

    /// <summary>A blow of the hero hits or is answered, or a body is thrown, at <see cref="Step.End"/>.</summary>
    internal static bool OfHero(Step step) => step is { HasTarget: true, Technique.IsHitOrThrow: true };

    private static IEnumerable<Contact> Of(Step step)
    {
        if (OfAttack(step))
        {
            yield return new Contact(step.Contact, step.Index + 1, step.Row.Attacker, false, step.Technique is null or { Family: Family.Setback }, step.Technique?.Weight ?? 1);
        }

        if (OfHero(step))
        {
            yield return new Contact(step.End, step.Index + 1, step.Row.Attacker, true, !step.IsAnswered, step.Technique!.Weight);
        }
    }
}
