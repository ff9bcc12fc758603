using Generator.Domain;
using Generator.Rules.Replaying;

namespace Generator.Rules;

/// <summary>Whether a hand is in a state that a technique accepts.</summary>
public static class HandFit
{
    /// <summary>True when the hand may be as it is.</summary>
    /// <param name="hand">The hand when the technique starts.</param>
    /// <param name="need">What the technique accepts.</param>
    /// <param name="target">The target of the technique, −1 for none.</param>
    public static bool Accepts(Hand hand, HandNeed need, int target) => need switch
    {
        HandNeed.Any => true,
        HandNeed.Unused => hand.Kind != HandKind.Held,
        HandNeed.Guard => hand.Kind == HandKind.Guard,
        HandNeed.GuardOrOut => hand.Kind is HandKind.Guard or HandKind.Out,
        HandNeed.Out => hand.Kind == HandKind.Out,
        HandNeed.TakeHold => hand.Kind is HandKind.Guard or HandKind.Out || hand.Holds(target),
        HandNeed.Holding => hand.Holds(target),
        HandNeed.Held => hand.HeldBy(target),
        HandNeed.HoldingOther => hand.Kind == HandKind.Holding && hand.Who != target,
        HandNeed.HeldByOther => hand.Kind == HandKind.Held && hand.Who != target,
        HandNeed.NotHolding => hand.Kind != HandKind.Holding,
        _ => false,
    };
}
