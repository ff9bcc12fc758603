using Generator.Paperwork.Following;

namespace Generator.Paperwork.Floor;

/// <summary>A performer on a plan.</summary>
/// <param name="Performer">Number in the brief, from 0; −1 for the hero.</param>
/// <param name="At">Where the marker is drawn.</param>
/// <param name="Stands">Where they are; another place than <paramref name="At"/> only when another marker is drawn there.</param>
/// <param name="Facing">Degrees clockwise from the top of the drawing.</param>
/// <param name="Figure">Standing, kneeling or lying.</param>
/// <param name="Style">here, end or out.</param>
public sealed record Marker(int Performer, Point At, Point Stands, double Facing, Figure Figure, string Style);
