using System.Collections.Concurrent;
using Generator.Domain;
using Generator.Rules;

namespace Generator.Solver.Rules;

/// <summary>
/// What the rules of space forbid to two who stand, as few steps in tens of centimetres. Going farther round the clock only ever frees more room, so each step holds for all smaller
/// angles as well, and a step that a wider angle already says is left out. The steps depend on nothing but a clearance: worked out once.
/// </summary>
internal static class FloorSteps
{
    /// <summary>Tens of centimetres from the mark that the tables reach; whoever is farther counts as this far.</summary>
    public const int Reach = 80;

    private const int Angles = (Bearing.Circle / 2) + 1;
    private const int Free = 10_000;

    private static readonly ConcurrentDictionary<int, IReadOnlyList<FloorStep>> Insides = new();
    private static readonly ConcurrentDictionary<int, IReadOnlyList<FloorStep>> Outsides = new();

    /// <summary>How far out somebody may stand at most who stands on the near side of another.</summary>
    public static IReadOnlyList<FloorStep> Inside(int spacing) => Insides.GetOrAdd(spacing, static s => FromAbove(Table((delta, other) => Close(delta, other, s) is { Count: > 0 } close ? close[0] : Free)));

    /// <summary>How far out somebody must stand at least who stands on the far side of another.</summary>
    public static IReadOnlyList<FloorStep> Outside(int spacing) => Outsides.GetOrAdd(spacing, static s => FromBelow(Table((delta, other) => Close(delta, other, s) is { Count: > 0 } close ? close[^1] : -Free)));

    private static int[,] Table(Func<int, int, int> entry)
    {
        var table = new int[Angles, Reach + 1];
        for (var delta = 0; delta < Angles; delta++)
        {
            for (var other = 0; other <= Reach; other++)
            {
                table[delta, other] = entry(delta, other);
            }
        }

        return table;
    }

    /// <summary>The first place must stay below the entry.</summary>
    private static List<FloorStep> FromAbove(int[,] table) =>
        [.. FromBelow(Table((delta, other) => -table[delta, other])).Select(s => s with { Limit = -s.Limit })];

    /// <summary>The first place must lie beyond the entry. Entries fall as the angle grows.</summary>
    private static List<FloorStep> FromBelow(int[,] table)
    {
        var steps = new List<FloorStep>();
        for (var delta = 0; delta < Angles; delta++)
        {
            var row = Enumerable.Range(0, Reach + 1).Select(other => table[delta, other]).ToArray();
            var wider = Enumerable.Range(0, Reach + 1).Select(other => delta + 1 < Angles ? table[delta + 1, other] : -Free).ToArray();
            if (row.Zip(wider).Any(p => p.First < p.Second))
            {
                throw new InvalidOperationException($"Room does not grow beyond {delta} half hours.");
            }

            foreach (var level in row.Distinct().Where(e => e > -Free))
            {
                foreach (var (from, to) in Runs(row, level))
                {
                    // Stretches in which a higher level says more, or the wider angle the same, need no step.
                    if (row[from..(to + 1)].Min() == level && wider[from..(to + 1)].Any(e => e < level))
                    {
                        steps.Add(new FloorStep(delta, from, to == Reach ? int.MaxValue : to, level + 1));
                    }
                }
            }
        }

        return steps;
    }

    /// <summary>The longest stretches on which every entry reaches the level.</summary>
    private static IEnumerable<(int From, int To)> Runs(int[] row, int level)
    {
        for (var from = 0; from < row.Length; from++)
        {
            if (row[from] < level)
            {
                continue;
            }

            var to = from;
            while (to + 1 < row.Length && row[to + 1] >= level)
            {
                to++;
            }

            yield return (from, to);
            from = to;
        }
    }

    /// <summary>
    /// Tens in which everybody stands too close to everybody in the other tens: places too close to one another are a convex set at every angle, so the corners tell. What lies at its rim is left to
    /// the whole centimetres, which are looked at in answers. Beyond the reach nothing is forbidden.
    /// </summary>
    private static List<int> Close(int delta, int other, int spacing) =>
        other == Reach ? [] : [.. Enumerable.Range(0, Reach + (spacing / 10) + 1).Where(t => Corners(t).All(first => Corners(other).All(second => FloorGeometry.Apart(delta, first, second) < spacing)))];

    private static int[] Corners(int tens) => [Math.Max(0, (10 * tens) - 5), (10 * tens) + 4];
}
