namespace Generator.Domain;

/// <summary>Where people come onto the floor and leave it: a door, a wing, round the truck. X and Y as on the floor; it may lie a little off it.</summary>
/// <param name="Name">What the crew calls it.</param>
/// <param name="X">From the corner between 6 and 9 towards 3 o'clock, −3 m to 3 m beyond the floor.</param>
/// <param name="Y">From that corner towards 12, likewise.</param>
public sealed record WayIn(string Name, Centimetres X, Centimetres Y);
