using Generator.Paperwork.Floor;

namespace Generator.Paperwork.Cameras;

/// <summary>What a camera must have in the picture to show every hit that sells to it.</summary>
/// <param name="Place">Number of the set-up, from 0.</param>
/// <param name="Corners">On the drawing: the lens, then the two far ends.</param>
/// <param name="Degrees">How wide it is.</param>
public sealed record CameraCone(int Place, IReadOnlyList<Point> Corners, int Degrees);
