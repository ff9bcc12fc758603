namespace Generator.Domain;

/// <summary>A camera, or a side of the audience.</summary>
/// <param name="Name">What the crew calls it.</param>
/// <param name="Bearing">Where it stands, seen from the mark.</param>
/// <param name="Distance">From the mark, 0.5 to 200 m.</param>
/// <param name="Height">Of the lens, 0 to 20 m.</param>
public sealed record Camera(string Name, Bearing Bearing, Centimetres Distance, Centimetres Height);
