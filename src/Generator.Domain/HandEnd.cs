namespace Generator.Domain;

/// <summary>The state in which a technique leaves one of the hero's hands.</summary>
public enum HandEnd
{
    /// <summary>As it was; a hand that was out is back in guard by then.</summary>
    Unchanged,
    Guard,
    Out,

    /// <summary>Holding the target.</summary>
    Holding,

    /// <summary>Held by the target.</summary>
    Held,
}
