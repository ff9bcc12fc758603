namespace Generator.Domain;

/// <summary>A thing on the floor: an upright rectangle whose corner nearest the origin is at X, Y.</summary>
public sealed record Obstacle(string Name, Centimetres X, Centimetres Y, Centimetres Width, Centimetres Depth);
