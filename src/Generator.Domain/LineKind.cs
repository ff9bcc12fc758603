namespace Generator.Domain;

/// <summary>The way an attack comes, as the hero sees it; the side is told by <see cref="AttackLine"/>.</summary>
public enum LineKind
{
    HighStraight,
    HighRound,
    HighOver,
    HighRising,
    MiddleStraight,
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
}
