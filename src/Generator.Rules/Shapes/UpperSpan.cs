using Generator.Domain;
using Generator.Rules.Replaying;

namespace Generator.Rules.Shapes;

/// <summary>A stretch of time in which the same side is on top.</summary>
/// <param name="Who">The side.</param>
/// <param name="From">In half counts.</param>
/// <param name="To">Where the next begins, or the fight ends.</param>
public readonly record struct UpperSpan(Upper Who, int From, int To)
{
    /// <summary>The hero scores with a hit, a throw, a lock or a finish; holding on to somebody already held is a lock, too.</summary>
    public static bool Scores(Step step) =>
        step is { HasTarget: true, IsAnswered: false, Technique: { } technique } && (technique.IsHit || technique.Family is Family.Throw or Family.Lock or Family.Finish);

    /// <summary>From count 1 to the end, one after another, no two neighbours of the same side.</summary>
    /// <param name="steps">The moves.</param>
    /// <param name="end">End of the fight in half counts.</param>
    public static IReadOnlyList<UpperSpan> Of(IReadOnlyList<Step> steps, int end)
    {
        var spans = new List<UpperSpan> { new(Upper.Even, 0, end) };
        foreach (var step in steps)
        {
            if (Turns(step) is var (who, at) && who != spans[^1].Who && !(who == Upper.Even && spans[^1].Who == Upper.Hero))
            {
                spans[^1] = spans[^1] with { To = at };
                spans.Add(new UpperSpan(who, at, end));
            }
        }

        return [.. spans.Where(s => s.To > s.From)];
    }

    private static (Upper Who, int At)? Turns(Step step) => step switch
    {
        { Technique: null, Attack.IsWalkIn: false } or { Technique.Family: Family.Setback } => (Upper.Attackers, step.Contact),
        { Technique.Family: Family.Escape } => (Upper.Even, step.End),
        _ when Scores(step) => (Upper.Hero, step.End),
        _ => null,
    };
}
