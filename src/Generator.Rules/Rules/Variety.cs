using Generator.Domain;
using Generator.Rules.Memories;
using Generator.Rules.Replaying;

namespace Generator.Rules.Rules;

/// <summary>
/// No technique comes twice in a row (3 points) or a third time within eight moves (1 point); no four hits in a row at one height or on
/// one side (1 point each). Left and right of a technique count as the same technique.
/// </summary>
public sealed class Variety : Rule
{
    /// <summary>Points for the same technique twice in a row.</summary>
    public const int TwiceInARow = 3;

    /// <summary>A run of so many alike is too long.</summary>
    public const int Run = 4;

    public override string Id => "variety";

    public override string Title => "No technique twice in a row, none more than its share; heights and sides alternate.";

    public override Severity Worst => Severity.Rough;

    public override object? Begin(Scene scene, FightState open, Tally tally) => VarietyMemory.Empty;

    public override object? Observe(Scene scene, object? memory, Step step, Tally tally)
    {
        var was = (VarietyMemory)memory!;
        if (step.Technique is not { } technique)
        {
            return was;
        }

        var last = was.Last;
        if (last.Count > 0 && Same(last[^1], technique) && tally.Count(Severity.Rough, TwiceInARow))
        {
            tally.Tell(Told(scene, step, TwiceInARow, $"{Words.Cap(technique.Name)} follows {Words.Low(last[^1].Name)}: the same technique twice in a row."));
        }

        if (Times(last, technique) >= 2 && tally.Count(Severity.Rough, 1))
        {
            tally.Tell(Told(scene, step, 1, $"{Words.Cap(technique.Name)} comes for the third time within {VarietyMemory.Length + 1} moves."));
        }

        if (RunOf(last, technique, static (a, b) => a.IsHit && b.IsHit && a.Height == b.Height) && tally.Count(Severity.Rough, 1))
        {
            tally.Tell(Told(scene, step, 1, $"{Words.Cap(technique.Name)} is the fourth hit in a row at one height."));
        }

        if (RunOf(last, technique, static (a, b) => a.IsHit && b.IsHit && a.Side is not null && a.Side == b.Side) && tally.Count(Severity.Rough, 1))
        {
            tally.Tell(Told(scene, step, 1, $"{Words.Cap(technique.Name)} is the fourth hit in a row on one side."));
        }

        return was.Then(technique);
    }

    private static bool Same(Technique one, Technique other) => string.Equals(one.BaseId, other.BaseId, StringComparison.Ordinal);

    private static int Times(FixedList<Technique> last, Technique technique)
    {
        var times = 0;
        for (var i = 0; i < last.Count; i++)
        {
            times += Same(last[i], technique) ? 1 : 0;
        }

        return times;
    }

    private static bool RunOf(FixedList<Technique> last, Technique technique, Func<Technique, Technique, bool> alike)
    {
        if (last.Count < Run - 1)
        {
            return false;
        }

        for (var back = 1; back < Run; back++)
        {
            if (!alike(technique, last[^back]))
            {
                return false;
            }
        }

        return true;
    }

    private Finding Told(Scene scene, Step step, int points, string message) => At(scene, step, Severity.Rough, message) with
    {
        Points = points,
        Advice = "Choose another technique here, or change one of those before it.",
    };
}
