namespace Generator.Figures.Posing;

/// <summary>A thing of the room beside two bodies, of which a picture shows the outline from the side.</summary>
/// <param name="From">Metres ahead of the hero at which it begins; below 0 behind the hero.</param>
/// <param name="To">Where it ends, more than <paramref name="From"/>.</param>
/// <param name="High">Metres; what is higher than the picture goes on above it.</param>
public readonly record struct DrawnThing(double From, double To, double High);
