namespace Generator.Domain;

/// <summary>What can be said of a posture without the library.</summary>
public static class PostureExtensions
{
    /// <summary>The hero holds this attacker.</summary>
    public static bool IsControlled(this Posture posture) => posture is >= Posture.HeldArm and <= Posture.Pinned;

    /// <summary>The hero holds this attacker, or is held by them.</summary>
    public static bool IsTied(this Posture posture) => posture.IsControlled() || posture == Posture.Gripping;

    /// <summary>Stretched out on the floor.</summary>
    public static bool IsLying(this Posture posture) => posture is Posture.FaceDown or Posture.OnBack or Posture.Pinned;

    /// <summary>Behind "is": "off balance", "held by the arm". The one wording of findings and papers.</summary>
    public static string InWords(this Posture posture) => posture switch
    {
        Posture.Ready => "ready",
        Posture.Folded => "folded",
        Posture.HeadBack => "with the head back",
        Posture.Turned => "turned",
        Posture.OffBalance => "off balance",
        Posture.Kneeling => "kneeling",
        Posture.FaceDown => "face down",
        Posture.OnBack => "on the back",
        Posture.Gripping => "gripping",
        Posture.HeldArm => "held by the arm",
        Posture.HeldLeg => "held by the leg",
        Posture.HeldBody => "held by the body",
        Posture.Pinned => "pinned",
        Posture.Knelt => "ready on the knee",
        _ => "out",
    };

    /// <summary>On a knee, brought there or opening so.</summary>
    public static bool IsKneeling(this Posture posture) => posture is Posture.Kneeling or Posture.Knelt;

    /// <summary>Lying or kneeling: not on their feet.</summary>
    public static bool IsDown(this Posture posture) => posture.IsKneeling() || posture.IsLying();
}
