namespace Generator.Domain;

/// <summary>What is the same for every hand.</summary>
public static class PropHands
{
    /// <summary>The hand in a mirror.</summary>
    public static PropHand Mirrored(this PropHand hand) => hand switch { PropHand.Left => PropHand.Right, PropHand.Right => PropHand.Left, _ => hand };

    /// <summary>The hand of this side is in it.</summary>
    public static bool Has(this PropHand hand, Side side) => hand == PropHand.Both || hand == (side == Side.Left ? PropHand.Left : PropHand.Right);

    /// <summary>Two have a hand in common.</summary>
    public static bool Meets(this PropHand hand, PropHand other) => hand == PropHand.Both || other == PropHand.Both || hand == other;
}
