namespace Generator.Paperwork.Floor;

/// <summary>A plan of the floor for one phrase, ready to be drawn: to scale, seen from above, 12 o'clock at the top.</summary>
public sealed record FloorPicture
{
    public required PlanWindow Window { get; init; }

    /// <summary>Height with the labels that found no room on the floor.</summary>
    public required double Height { get; init; }

    public required IReadOnlyList<Thing> Things { get; init; }

    /// <summary>Mats, which lie under everything else.</summary>
    public IReadOnlyList<Thing> Mats { get; init; } = [];

    public required IReadOnlyList<Door> Doors { get; init; }

    /// <summary>On a picture of the whole floor the part that the plans show; null on plans.</summary>
    public Box? Cut { get; init; }

    /// <summary>Props that lie on the floor.</summary>
    public IReadOnlyList<LyingProp> Props { get; init; } = [];

    public required IReadOnlyList<Lens> Lenses { get; init; }

    public required IReadOnlyList<Way> Ways { get; init; }

    /// <summary>Who lies, and where falls land.</summary>
    public required IReadOnlyList<Outline> Bodies { get; init; }

    public required IReadOnlyList<Marker> Markers { get; init; }

    public required IReadOnlyList<Label> Labels { get; init; }

    /// <summary>What letters on it stand for; nothing where names are written.</summary>
    public IReadOnlyList<string> Key { get; init; } = [];

    public double Width => Window.Width;
}
