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

    /// <summary>The name in a sentence: "the rail" of "rail", "the rail" and "The rail"; one that says whose it is, or begins with another article, has none before it.</summary>
    public string InWords
    {
        get
        {
            var first = Name.Split(' ', 2)[0];
            return string.Equals(first, "the", StringComparison.OrdinalIgnoreCase) ? "the" + Name[first.Length..]
                : Determiners.Contains(first, StringComparer.OrdinalIgnoreCase) || first.EndsWith("'s", StringComparison.Ordinal) || first.EndsWith("’s", StringComparison.Ordinal) ? Name
                : "the " + Name;
        }
    }

    private static readonly string[] Determiners = ["a", "an", "his", "her", "their", "its", "my", "our", "your", "this", "that"];

    /// <summary>Padded where somebody meets it.</summary>
    public bool Padded { get; init; }
}
