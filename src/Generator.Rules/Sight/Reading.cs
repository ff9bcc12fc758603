namespace Generator.Rules.Sight;

/// <summary>How a hit looks from a camera, the best first.</summary>
public enum Reading
{
    /// <summary>Reads: fist or foot is seen over the target.</summary>
    Clean,

    /// <summary>Reads, just: the outlines touch.</summary>
    Close,

    /// <summary>The lens is so near that what is in front looks more than a twentieth too big.</summary>
    TooNear,

    /// <summary>Somebody or something stands in the way.</summary>
    Hidden,

    /// <summary>The gap shows.</summary>
    Open,
}
