namespace Generator.Domain;

/// <summary>A thing on the floor: an upright rectangle whose corner nearest the origin is at X, Y.</summary>
public sealed record Obstacle(string Name, Centimetres X, Centimetres Y, Centimetres Width, Centimetres Depth)
{
    /// <summary>Id of its kind in the library; null for something that is only in the way.</summary>
    public string? Kind { get; init; }

    /// <summary>How high it is, 5 to 500 cm; null: as is usual for its kind.</summary>
    public Centimetres? Height { get; init; }

    /// <summary>Rated for the weight of those who come onto it, and fixed or weighted.</summary>
    public bool Rated { get; init; }

    /// <summary>The name in a sentence: "the rail".</summary>
    public string InWords => InSentence.Of(Name);

    /// <summary>Padded where somebody meets it.</summary>
    public bool Padded { get; init; }
}
