using Generator.Domain;

namespace Generator.Rules.Replaying;

/// <summary>Whether a hand is in a state that a technique accepts.</summary>
public static class HandFit
{
    /// <summary>True when the hand fits the need, for a technique on this target (−1 for none).</summary>
    public static bool Accepts(HandNeed need, Hand hand, int target) => need switch
    {
        HandNeed.Any => true,
        HandNeed.Unused => hand.Kind != HandKind.Held,
        HandNeed.Guard => hand.Kind == HandKind.Guard,
        HandNeed.GuardOrOut => hand.Kind is HandKind.Guard or HandKind.Out,
        HandNeed.Out => hand.Kind == HandKind.Out,
        HandNeed.TakeHold => hand.Kind is HandKind.Guard or HandKind.Out || hand.Holds(target),
        HandNeed.Holding => target >= 0 && hand.Holds(target),
        HandNeed.Held => target >= 0 && hand.HeldBy(target),
        HandNeed.HoldingOther => hand.Kind == HandKind.Holding && hand.Who != target,
        HandNeed.HeldByOther => hand.Kind == HandKind.Held && hand.Who != target,
        _ => false,
    };
}
