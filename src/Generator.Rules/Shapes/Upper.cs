namespace Generator.Rules.Shapes;

/// <summary>Who is on top.</summary>
public enum Upper
{
    /// <summary>Nobody has scored yet, or the hero has just got free.</summary>
    Even,

    /// <summary>The hero scored last.</summary>
    Hero,

    /// <summary>An attacker did.</summary>
    Attackers,
}
