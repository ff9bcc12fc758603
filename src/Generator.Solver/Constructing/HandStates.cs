using Generator.Domain;
using Generator.Rules.Replaying;

namespace Generator.Solver.Constructing;

/// <summary>What becomes of a hand before a technique starts, for sifting; Replay has the last word.</summary>
internal static class HandStates
{
    /// <summary>A committed hand is back in guard once the gap is long enough.</summary>
    public static Hand Settled(Hand hand, int gap, int handBack) => hand.Kind == HandKind.Out && gap >= handBack ? Hand.Guard : hand;

    /// <summary>The hand after a grab has closed: one that holds or is held cannot be seized.</summary>
    public static Hand Seized(Hand hand, HandEnd? end, int attacker) =>
        end == HandEnd.Held && hand.Kind is (HandKind.Guard or HandKind.Out) ? new Hand(HandKind.Held, attacker) : hand;
}
