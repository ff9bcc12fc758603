namespace Generator.Domain;

/// <summary>What can be said of a posture without the library.</summary>
public static class PostureExtensions
{
    /// <summary>The hero holds this attacker.</summary>
    public static bool IsControlled(this Posture posture) => posture is >= Posture.HeldArm and <= Posture.Pinned;

    /// <summary>Stretched out on the floor.</summary>
    public static bool IsLying(this Posture posture) => posture is Posture.FaceDown or Posture.OnBack or Posture.Pinned;

    /// <summary>Lying or kneeling: not on their feet.</summary>
    public static bool IsDown(this Posture posture) => posture == Posture.Kneeling || posture.IsLying();
}
