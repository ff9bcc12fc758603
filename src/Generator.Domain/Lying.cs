namespace Generator.Domain;

/// <summary>How a body lies on the floor, as seen from the mark.</summary>
public enum Lying
{
    /// <summary>The feet are at the place where the reaction ends, the head farther out.</summary>
    FeetNear,

    /// <summary>Square to the bearing, the middle of the body at the place.</summary>
    Across,
}
