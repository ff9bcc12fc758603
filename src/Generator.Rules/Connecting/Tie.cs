using Generator.Domain;

namespace Generator.Rules.Connecting;

/// <summary>An attacker whom the hero holds, or who grips the hero.</summary>
/// <param name="Posture">A held posture, or gripping.</param>
/// <param name="Grip">Line of the grip while gripping.</param>
public readonly record struct Tie(Posture Posture, AttackLine? Grip)
{
    /// <summary>Nobody.</summary>
    public static readonly Tie None = new(Posture.Ready, null);

    public bool IsThere => Posture.IsTied();
}
