namespace Generator.Domain;

/// <summary>How two bodies meet in a technique.</summary>
public enum ContactKind
{
    /// <summary>A planned miss that reads as a hit, or an evasion.</summary>
    NonContact,

    /// <summary>Light contact on muscle, at most a quarter of full force.</summary>
    Contact,

    /// <summary>Done together; the receiver drives.</summary>
    Partnered,
}
