namespace Generator.Domain;

/// <summary>A camera, or a side of the audience.</summary>
/// <param name="Name">What the crew calls it.</param>
/// <param name="Bearing">Where it stands, seen from the mark.</param>
/// <param name="Distance">From the mark, 0.5 to 200 m.</param>
/// <param name="Height">Of the lens, 0 to 20 m.</param>
public sealed record Camera(string Name, Bearing Bearing, Centimetres Distance, Centimetres Height)
{
    /// <summary>Half the width of the floor that a camera and its operator take up. Common practice, no source.</summary>
    public static Centimetres Around { get; } = new(50);

    /// <summary>A lens higher than this hangs or is on a crane, and nobody stands under it. Common practice, no source.</summary>
    public static Centimetres Highest { get; } = new(250);

    /// <summary>A side of the audience: a whole row of eyes rather than one lens.</summary>
    public bool IsAudience => Name.StartsWith("audience ", StringComparison.Ordinal);

    /// <summary>As it is named in a sentence: "camera A"; a name that says what it is stays as it is.</summary>
    public string Text => IsAudience || Name.StartsWith("camera", StringComparison.OrdinalIgnoreCase) ? Name : "camera " + Name;

    /// <summary>A camera with its operator, who takes up a place that nobody else can have.</summary>
    public bool IsOnTheGround => !IsAudience && Height <= Highest;
}
