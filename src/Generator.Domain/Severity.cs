namespace Generator.Domain;

/// <summary>How grave a finding is; the order is from least to gravest.</summary>
public enum Severity
{
    /// <summary>Worth knowing; costs nothing.</summary>
    Note,

    /// <summary>Costs points.</summary>
    Rough,

    /// <summary>Does not work as written; never in a draft.</summary>
    Broken,

    /// <summary>May hurt somebody; never in a draft.</summary>
    Unsafe,
}
