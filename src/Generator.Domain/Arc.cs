namespace Generator.Domain;

/// <summary>The shape asked of the weights of the moves.</summary>
public enum Arc
{
    /// <summary>As it comes.</summary>
    Free,
    Rising,
    Even,
    TwoPeaks,
}
