namespace Generator.Solver;

/// <summary>How a part of the engine came to its end.</summary>
public sealed record SourceEnd
{
    /// <summary>Stopped, or out of ideas: it says nothing more.</summary>
    public static readonly SourceEnd Nothing = new();

    /// <summary>It ended by itself, so that the same seed gives the same routine again.</summary>
    public bool ByItself { get; init; }

    /// <summary>No routine can satisfy the brief.</summary>
    public bool Impossible { get; init; }

    /// <summary>No routine can have fewer points.</summary>
    public int Bound { get; init; }
}
