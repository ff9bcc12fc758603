namespace Generator.Domain;

/// <summary>What somebody comes with, as an audience tells it apart.</summary>
public enum AttackKind
{
    /// <summary>A straight or rising punch.</summary>
    Punch,

    /// <summary>A blow swung from the side or from above.</summary>
    Swing,
    Kick,

    /// <summary>The whole body: a tackle, a charge.</summary>
    Rush,

    /// <summary>A grab from in front or from the side.</summary>
    Grab,

    /// <summary>A grab from behind.</summary>
    RearGrab,

    /// <summary>No blow.</summary>
    WalkIn,
}
