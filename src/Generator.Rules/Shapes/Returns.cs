using Generator.Domain;
using Generator.Rules.Replaying;

namespace Generator.Rules.Shapes;

/// <summary>What comes again. A technique of either side counts as the same.</summary>
/// <param name="Techniques">Different techniques.</param>
/// <param name="Uses">Moves with a technique.</param>
/// <param name="Most">How often the commonest comes.</param>
/// <param name="MostId">Which that is, without side; empty where there is none.</param>
/// <param name="Otherwise">Heavy techniques (weight 3 and more, no setbacks or pauses) that return with another reaction than before: the move, from 1.</param>
/// <param name="Runs">Two techniques in a row that come in the same order again later.</param>
public sealed record Returns(int Techniques, int Uses, int Most, string MostId, IReadOnlyList<int> Otherwise, int Runs)
{
    /// <summary>Weight from which an audience remembers a technique. Common practice, no source.</summary>
    public const int Remembered = 3;

    public static Returns Of(IReadOnlyList<Step> steps)
    {
        var used = steps.Where(s => s.Technique is not null).ToList();
        var commonest = used.GroupBy(s => s.Technique!.BaseId).MaxBy(g => g.Count());
        var seen = new Dictionary<string, HashSet<string>>(StringComparer.Ordinal);
        var otherwise = new List<int>();
        foreach (var step in used.Where(s => s.Reaction is not null && s.Technique is { Weight: >= Remembered, Family: not (Family.Setback or Family.Pause) }))
        {
            var known = seen.TryGetValue(step.Technique!.BaseId, out var endings);
            endings ??= seen[step.Technique.BaseId] = new HashSet<string>(StringComparer.Ordinal);
            if (endings.Add(step.Reaction!.Id) && known)
            {
                otherwise.Add(step.Index + 1);
            }
        }

        var pairs = used.Zip(used.Skip(1), (a, b) => (a.Technique!.BaseId, b.Technique!.BaseId)).ToList();
        return new Returns(used.DistinctBy(s => s.Technique!.BaseId).Count(), used.Count, commonest?.Count() ?? 0, commonest?.Key ?? string.Empty, otherwise, pairs.Count - pairs.Distinct().Count());
    }
}
