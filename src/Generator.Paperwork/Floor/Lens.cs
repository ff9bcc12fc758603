namespace Generator.Paperwork.Floor;

/// <summary>A camera or an audience side at the edge of a plan.</summary>
/// <param name="At">Where it is drawn.</param>
/// <param name="Heading">Degrees clockwise from up in which it looks.</param>
/// <param name="Reads">Ends of the lines along which it reads hits.</param>
public sealed record Lens(Point At, double Heading, IReadOnlyList<Point> Reads);
