namespace Generator.Domain;

/// <summary>
/// What state an attacker is in. The four held postures say what the hero holds; a gripping attacker's grip also has a line
/// (<see cref="AttackLine"/>). Each reaction leaves one of these.
/// </summary>
public enum Posture
{
    Ready,
    Folded,
    HeadBack,
    Turned,
    OffBalance,
    Kneeling,
    FaceDown,
    OnBack,
    Gripping,
    HeldArm,
    HeldLeg,
    HeldBody,
    Pinned,

    /// <summary>On the knee on which they opened, ready to attack from there. No reaction leaves anybody so: who has once been met gets up.</summary>
    Knelt,
    Out,
}
