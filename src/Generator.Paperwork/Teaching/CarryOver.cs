using Generator.Domain;
using Generator.Rules.Replaying;

namespace Generator.Paperwork.Teaching;

/// <summary>
/// How much is still under way when a phrase stops after a move: everything that performers would have to remember and set up again before
/// they go on. 0 is a stable moment. The weights are common practice, no source.
/// </summary>
public static class CarryOver
{
    /// <summary>The exchange goes on in the next move.</summary>
    public const int ExchangeGoesOn = 3;

    /// <summary>The hero is bound, or a hand holds or is held.</summary>
    public const int Grip = 3;

    /// <summary>The hero is not on both feet.</summary>
    public const int NotStanding = 2;

    /// <summary>A hand is out, an attacker is open or still recovering, or the next move follows without a gap.</summary>
    public const int Small = 1;

    /// <summary>The carry-over of stopping after each move, one figure a step; stopping after the last carries nothing over.</summary>
    public static IReadOnlyList<int> Of(IReadOnlyList<Step> steps) =>
        [.. Enumerable.Range(0, steps.Count).Select(i => i + 1 < steps.Count ? Of(steps[i], steps[i + 1]) : 0)];

    /// <summary>The carry-over of stopping between two moves.</summary>
    public static int Of(Step stop, Step next)
    {
        var state = stop.After;
        var sum = next.Opens || !next.HasTarget ? 0 : ExchangeGoesOn;
        sum += state.Bound == Bound.Free ? 0 : Grip;
        sum += Of(state.Left) + Of(state.Right);
        sum += state.Stance is Stance.LeftLead or Stance.RightLead or Stance.Square ? 0 : NotStanding;
        sum += next.Gap <= 0 ? Small : 0;
        return sum + state.Attackers.Count(a => a.IsActive && a.Entrance <= next.Start && a.PostureAt(next.Start) is not Posture.Ready);
    }

    private static int Of(Hand hand) => hand.Kind switch
    {
        HandKind.Guard => 0,
        HandKind.Out => Small,
        _ => Grip,
    };
}
