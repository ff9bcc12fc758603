using Generator.Rules.Replaying;

namespace Generator.Rules.Shapes;

/// <summary>Somebody goes out.</summary>
/// <param name="Attacker">Number in the brief, from 0.</param>
/// <param name="Move">Number of the move, from 1.</param>
/// <param name="Time">End of the move, in half counts.</param>
/// <param name="Weight">Of the technique that does it, 1 to 5.</param>
/// <param name="RunsOff">By the agreed exit.</param>
public readonly record struct Out(int Attacker, int Move, int Time, int Weight, bool RunsOff)
{
    /// <summary>Attackers who may run off. Common practice, no source.</summary>
    public const int MostRunOffs = 1;

    /// <summary>In the order of the moves.</summary>
    public static IReadOnlyList<Out> Of(IReadOnlyList<Step> steps) =>
        [.. steps.SelectMany(s => Enumerable.Range(0, s.After.Attackers.Count)
            .Where(a => s.After.Attackers[a].OutAt >= 0 && s.Before.Attackers[a].OutAt < 0)
            .Select(a => new Out(a, s.Index + 1, s.End, s.Technique?.Weight ?? 1, s.After.Attackers[a].Gone)))];

    /// <summary>Half counts between one out and the next.</summary>
    public static IReadOnlyList<int> Spacing(IReadOnlyList<Out> outs) => [.. outs.Zip(outs.Skip(1), (a, b) => b.Time - a.Time)];
}
