namespace Generator.Domain;

/// <summary>The state in which a technique accepts one of the hero's hands.</summary>
public enum HandNeed
{
    /// <summary>Any state at all, held too: the technique does not care.</summary>
    Any,

    /// <summary>Not used, and not held by anybody; it may hold somebody meanwhile.</summary>
    Unused,

    /// <summary>In guard.</summary>
    Guard,

    /// <summary>In guard, or out; so also of a hand that does nothing, where the technique cannot be done while somebody is held.</summary>
    GuardOrOut,

    /// <summary>Out: the technique works from the committed hand.</summary>
    Out,

    /// <summary>Takes hold: in guard, out, or already holding the target.</summary>
    TakeHold,

    /// <summary>Holding the target.</summary>
    Holding,

    /// <summary>Held by the target.</summary>
    Held,

    /// <summary>Holding somebody other than the target.</summary>
    HoldingOther,

    /// <summary>Held by somebody other than the target.</summary>
    HeldByOther,

    /// <summary>Holding nobody; held or not does not matter.</summary>
    NotHolding,
}
