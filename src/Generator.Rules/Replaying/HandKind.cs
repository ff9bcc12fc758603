namespace Generator.Rules.Replaying;

/// <summary>What one of the hero's hands is doing.</summary>
public enum HandKind
{
    Guard,

    /// <summary>Committed and not yet back.</summary>
    Out,

    /// <summary>Holding an attacker.</summary>
    Holding,

    /// <summary>Held by an attacker.</summary>
    Held,
}
