using Generator.Domain;

namespace Generator.Rules.Replaying;

/// <summary>What becomes of a hand between the end of a move and the start of the next technique.</summary>
public static class HandStates
{
    /// <summary>A committed hand is back in guard once the gap is long enough.</summary>
    public static Hand Settled(Hand hand, bool longEnough) => hand.Kind == HandKind.Out && longEnough ? Hand.Guard : hand;

    /// <summary>The hand after a grab has closed (null for one that leaves the hand alone): one that holds or is held cannot be seized.</summary>
    public static Hand Seized(Hand hand, HandEnd? grips, int attacker) =>
        grips == HandEnd.Held && hand.Kind is (HandKind.Guard or HandKind.Out) ? new Hand(HandKind.Held, attacker) : hand;
}
