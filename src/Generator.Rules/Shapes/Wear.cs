using Generator.Domain;
using Generator.Rules.Bodies;
using Generator.Rules.Replaying;

namespace Generator.Rules.Shapes;

/// <summary>What the fight asks of one performer.</summary>
/// <param name="Performer">−1 for the hero, else the number in the brief, from 0.</param>
/// <param name="Moves">Moves that they are part of; of the hero's all.</param>
/// <param name="Attacks">Attacks that they throw; 0 for the hero.</param>
/// <param name="Blows">Blows that they take: strikes, kicks and finishes of the hero, or attacks other than grabs that the hero suffers.</param>
/// <param name="HeadBlows">Of these the hero's at head height.</param>
/// <param name="Falls">Falls, to the knee among them.</param>
/// <param name="Effort">Half counts of their moves, each from the first swing to its end.</param>
/// <param name="Way">Centimetres that they go or are sent; 0 for the hero, who works at the mark.</param>
public readonly record struct Wear(int Performer, int Moves, int Attacks, int Blows, int HeadBlows, int Falls, int Effort, int Way)
{
    /// <summary>The hero, then the attackers in the order of the brief.</summary>
    public static IReadOnlyList<Wear> Of(Scene scene, IReadOnlyList<Step> steps) => [.. Enumerable.Range(-1, scene.Cast + 1).Select(p => Of(p, steps))];

    private static Wear Of(int performer, IReadOnlyList<Step> steps)
    {
        var own = performer < 0 ? steps : [.. steps.Where(s => s.Concerns(performer) || s.Row.Attacker == performer)];
        var way = performer < 0 || steps.Count == 0 ? 0 : (int)Math.Round(steps[^1].After.Attackers[performer].Way.Chain().Where(Goes).Sum(l => l.Start.To(l.End)));
        return new Wear(
            performer,
            own.Count,
            own.Count(s => performer >= 0 && s.Attack is not null),
            own.Count(s => Hits(s, performer)),
            own.Count(s => performer >= 0 && Hits(s, performer) && s.Technique!.IsHeadHit),
            own.Sum(s => s.Falls.Count(f => f.Who == performer)),
            own.Sum(s => s.Over - Begins(s, performer)),
            way);
    }

    /// <summary>The move is a blow that the performer takes.</summary>
    internal static bool Hits(Step step, int performer) => performer < 0
        ? step.Attack is { IsGrab: false, IsWalkIn: false } && step.Technique is null or { Family: Family.Setback }
        : step.Hits && Takes(step, performer);

    /// <summary>The hero's technique is done to that attacker.</summary>
    internal static bool Takes(Step step, int attacker) => step.Technique is { } technique && (step.Row.Attacker == attacker || (step.Second == attacker && technique.TakesTwo));

    private static int Begins(Step step, int performer) =>
        performer >= 0 && step.Attack is { } attack ? Math.Min(step.Start, step.Contact - attack.Length.Value) : step.Start;

    private static bool Goes(Leg leg) => !leg.Lies && !double.IsInfinity(leg.From) && !double.IsInfinity(leg.To);
}
