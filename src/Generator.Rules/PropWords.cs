using Generator.Domain;

namespace Generator.Rules;

/// <summary>How people speak of props and of what is done with them.</summary>
public static class PropWords
{
    /// <summary>Something that may be used so.</summary>
    public static string Of(PropUse use) => use switch
    {
        PropUse.Swing => "something to swing",
        PropUse.Thrust => "something to thrust with",
        PropUse.Slash => "a blade to cut with",
        PropUse.Cover => "something to cover with",
        PropUse.Hook => "something to hook with",
        PropUse.Press => "something to keep off with",
        PropUse.Throw => "something to throw",
        PropUse.Break => "a break-away",
        PropUse.Wrap => "a cloth",
        _ => "something in the hand",
    };

    /// <summary>The hand in which it is: " in the right hand"; nothing for any.</summary>
    public static string HeldIn(PropHand? hand) => hand switch
    {
        PropHand.Left => " in the left hand",
        PropHand.Right => " in the right hand",
        PropHand.Both => " in both hands",
        _ => string.Empty,
    };
}
