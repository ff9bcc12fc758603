using Generator.Domain;
using Generator.Rules.Replaying;

namespace Generator.Rules.Sight;

/// <summary>A non-contact hit that has to read: the same that the sightline rule judges.</summary>
public sealed record Hit
{
    /// <summary>Number of the move, from 1.</summary>
    public required int Move { get; init; }

    /// <summary>Moment in half counts from count 1.</summary>
    public required int Start { get; init; }

    public required int Attacker { get; init; }

    public required Technique Technique { get; init; }

    /// <summary>Of the target, 0 to 23 half hours.</summary>
    public required int Bearing { get; init; }

    /// <summary>Of the target from the mark, in centimetres.</summary>
    public required int Distance { get; init; }

    /// <summary>At which it lands, in centimetres above the floor.</summary>
    public required int Height { get; init; }

    public IReadOnlyList<Bystander> Others { get; init; } = [];

    /// <summary>The non-contact hits of a routine, in order.</summary>
    public static IReadOnlyList<Hit> Of(Scene scene, IReadOnlyList<Step> steps) =>
        [.. steps.Where(s => s.HasTarget && s.Technique is { IsHit: true, Kind: ContactKind.NonContact }).Select(s => Of(scene, s))];

    private static Hit Of(Scene scene, Step step) => new()
    {
        Move = step.Index + 1,
        Start = step.Start,
        Attacker = step.Row.Attacker,
        Technique = step.Technique!,
        Bearing = step.TargetBearing,
        Distance = step.Distance,
        Height = LandsAt(scene.Brief.Attackers[step.Row.Attacker].Height.Value, step),
        Others = [.. Enumerable.Range(0, scene.Cast).Where(a => a != step.Row.Attacker && Stands(step.Before.Attackers[a], step.Start)).Select(a => new Bystander(a, step.Before.Attackers[a].Bearing, step.Before.Attackers[a].Distance, scene.Brief.Attackers[a].Height.Value))],
    };

    /// <summary>
    /// Face, belly or knee at 0.935, 0.66 and 0.285 of stature (Drillis and Contini 1966: chin 0.870, hip 0.530, shoulder 0.818, knee 0.285); a kneeling
    /// target is lower by the knee height, a lying one is 20 cm above the floor.
    /// </summary>
    private static int LandsAt(int stature, Step step)
    {
        if (step.TargetPosture is Posture.FaceDown or Posture.OnBack or Posture.Pinned)
        {
            return 20;
        }

        var thousandths = step.Technique!.Height switch
        {
            Domain.Height.Low => 285,
            Domain.Height.Middle => 660,
            _ => 935,
        };
        var kneels = step.TargetPosture == Posture.Kneeling ? Math.Min(285, thousandths - 100) : 0;
        return stature * (thousandths - kneels) / 1000;
    }

    private static bool Stands(AttackerState other, int moment) =>
        other.Posture != Posture.Out && other.Entrance <= moment && other.PostureAt(moment) is { } posture && !posture.IsDown();
}
