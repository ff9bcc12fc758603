using Generator.Domain;
using Generator.Rules.Replaying;

namespace Generator.Rules.Combining;

/// <summary>A combination in a routine.</summary>
/// <param name="Combination">Which one.</param>
/// <param name="Attacker">Who throws it, from 0.</param>
/// <param name="First">Number of the move with its first attack, from 1.</param>
public sealed record ThrownCombination(Combination Combination, int Attacker, int First)
{
    /// <summary>Every combination of a routine in order; of two that share moves the one that ends later.</summary>
    public static IReadOnlyList<ThrownCombination> Of(Scene scene, IReadOnlyList<Step> steps)
    {
        var (run, thrown) = (AttackRun.None, new List<ThrownCombination>());
        foreach (var step in steps)
        {
            if (run.EndedBy(scene.Combinations, step) is { } form)
            {
                var first = step.Index + 2 - form.Attacks.Count;
                if (thrown.Count > 0 && thrown[^1].First + thrown[^1].Combination.Attacks.Count > first)
                {
                    thrown.RemoveAt(thrown.Count - 1);
                }

                thrown.Add(new ThrownCombination(scene.Book.Combinations[form.Number], step.Row.Attacker, first));
            }

            run = run.After(step);
        }

        return thrown;
    }
}
