namespace Generator.Domain;

/// <summary>
/// The fighting floor. x grows towards 3 o'clock, y towards 12; the origin is the corner between 6 and 9. Default 8 by 8 m, mark in the middle, matted.
/// </summary>
public sealed record FloorPlan
{
    public Centimetres Width { get; init; } = new(800);

    public Centimetres Depth { get; init; } = new(800);

    /// <summary>The hero's mark; where there are several, the first.</summary>
    public Centimetres MarkX { get; init; } = new(400);

    public Centimetres MarkY { get; init; } = new(400);

    public Surface Surface { get; init; } = Surface.Matted;

    public IReadOnlyList<Obstacle> Obstacles { get; init; } = [];

    /// <summary>Where falls may land on a hard floor.</summary>
    public IReadOnlyList<Mat> Mats { get; init; } = [];

    /// <summary>Where people come in; with none, anywhere over the floor's edge.</summary>
    public IReadOnlyList<WayIn> WaysIn { get; init; } = [];
}
