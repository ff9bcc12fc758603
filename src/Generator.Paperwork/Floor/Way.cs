namespace Generator.Paperwork.Floor;

/// <summary>The path of a performer in a phrase, with the arrow head at its end.</summary>
/// <param name="Performer">Number in the brief, from 0.</param>
/// <param name="Points">From beginning to end.</param>
/// <param name="Tip">End of the path.</param>
/// <param name="Heading">Degrees clockwise from up in which it ends.</param>
public sealed record Way(int Performer, IReadOnlyList<Point> Points, Point Tip, double Heading);
