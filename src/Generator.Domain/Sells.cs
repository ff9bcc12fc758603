namespace Generator.Domain;

/// <summary>From where a miss reads as a hit.</summary>
public enum Sells
{
    Any,

    /// <summary>Straight: seen along the line through both performers.</summary>
    Along,

    /// <summary>Swung: seen where the blow crosses between the lens and the face.</summary>
    Across,
}
