namespace Generator.Domain;

/// <summary>The way an attack comes, as the hero sees it; the side is told by <see cref="AttackLine"/>.</summary>
public enum LineKind
{
    HighStraight,
    HighRound,
    HighOver,
    HighRising,
    MiddleStraight,
    /// <summary>Straight at the body, both on their knees.</summary>
    KneeStraight,

    /// <summary>Round at the head, both on their knees.</summary>
    KneeRound,
    KickMiddleStraight,
    KickLowRound,
    KickMiddleRound,
    KickHighRound,
    KickStomp,
    KickAtFallen,
    RushLow,
    RushUpright,
    RushRear,
    WalkIn,
    GrabWrist,
    GrabWristCross,
    GrabLapels,
    GrabCollar,
    GrabThroat,
    GrabBody,
    GrabHead,
    GrabArm,
    GrabThroatRear,
    GrabBodyRear,
    GrabHairRear,
    GrabAstride,

    /// <summary>Both wrists at once.</summary>
    GrabWrists,

    /// <summary>The sleeve, from the side.</summary>
    GrabSleeve,

    /// <summary>Both arms round the body, from the side.</summary>
    GrabBodySide,

    /// <summary>The shoulders or the collar, from behind.</summary>
    GrabShouldersRear,

    /// <summary>The hair, from the front.</summary>
    GrabHair,

    /// <summary>The belt, from the front.</summary>
    GrabBelt,

    /// <summary>The neck with both hands, from the side.</summary>
    GrabThroatSide,

    /// <summary>The body under the arms, from the front.</summary>
    GrabBodyUnder,

    /// <summary>The body under the arms, from behind.</summary>
    GrabBodyRearUnder,

    /// <summary>Both wrists, from behind.</summary>
    GrabWristsRear,

    /// <summary>A prop swung from above.</summary>
    PropOver,

    /// <summary>A prop swung round at head height: a planned miss.</summary>
    PropRoundHigh,

    /// <summary>A prop swung round at the arm or the flank.</summary>
    PropRound,

    /// <summary>A prop thrust or thrown, at the belly or lower and beside the line.</summary>
    PropStraight,

    /// <summary>A blade drawn past in front, out of line and short of the body.</summary>
    PropSlash,
}
