using Generator.Domain;

namespace Generator.Rules.Shapes;

/// <summary>The figures of the eight rough rules, in their order.</summary>
public static class Figures
{
    /// <summary>Moves from which a fight is long enough for acts, flurries and thinning out.</summary>
    public const int LongFrom = 16;

    /// <summary>There is something for this rule to judge: the fight is long enough, or its brief asks for it.</summary>
    internal static bool IsJudged(FightShape shape, FightRule rule) => shape.Steps.Count >= LongFrom || (shape.Steps.Count > 0 && shape.Scene.Judges(rule));

    public static IReadOnlyList<Figure> Of(FightShape shape) =>
    [
        .. RhythmFigures.Of(shape), .. StoryFigures.Of(shape), .. ClimaxFigures.Of(shape), .. ThinningFigures.Of(shape),
        .. MannerFigures.Of(shape), .. MomentumFigures.Of(shape), .. EchoFigures.Of(shape), .. PurposeFigures.Of(shape),
    ];

    /// <summary>"move 7 (count 12&amp;)".</summary>
    internal static string Move(FightShape shape, int number) => $"move {number.ToString(System.Globalization.CultureInfo.InvariantCulture)} ({At(shape.Steps[number - 1].Start)})";

    /// <summary>"moves 7 (count 12&amp;), 9 (count 15) and 21 (count 40)", at most four of them.</summary>
    internal static string Moves(FightShape shape, IReadOnlyList<int> numbers)
    {
        var told = numbers.Take(4).Select(n => $"{n.ToString(System.Globalization.CultureInfo.InvariantCulture)} ({At(shape.Steps[n - 1].Start)})").ToList();
        return (numbers.Count == 1 ? "move " : "moves ") + (numbers.Count > 4 ? string.Join(", ", told) + FormattableString.Invariant($" and {numbers.Count - 4} more") : Words.Join(told, "and"));
    }

    /// <summary>"count 12&amp;".</summary>
    internal static string At(int moment) => "count " + new HalfCounts(Math.Max(0, moment)).ToCountText();

    internal static string Name(FightShape shape, int attacker) => Words.Name(shape.Scene, attacker);
}
