namespace Generator.Domain;

/// <summary>What hero and attackers have in common.</summary>
public abstract record Performer
{
    /// <summary>Mean stature of men in the 2012 US Army survey (ANSUR II), 1.756 m.</summary>
    public static readonly Centimetres DefaultHeight = new(176);

    public required string Name { get; init; }

    /// <summary>Stature, 1.40 to 2.10 m.</summary>
    public Centimetres Height { get; init; } = DefaultHeight;

    /// <summary>Measured arm, shoulder to fist; null takes it from stature.</summary>
    public Centimetres? Arm { get; init; }

    /// <summary>Measured leg, hip to ankle; null takes it from stature.</summary>
    public Centimetres? Leg { get; init; }

    public Skill Skill { get; init; } = Skill.Trained;

    /// <summary>What the performer must not be asked: <c>no-back-fall</c>, <c>no-jump</c>, <c>no-left-hand</c> …</summary>
    public IReadOnlyList<string> Limits { get; init; } = [];

    /// <summary>Wardrobe that limits movement: <c>heels</c>, <c>tight-skirt</c> …</summary>
    public IReadOnlyList<string> Wardrobe { get; init; } = [];

    /// <summary>Id of a manner of the library: how they fight; null for none.</summary>
    public string? Manner { get; init; }

    /// <summary>Most falls in one run, 0 to 20; null takes the cap of the day divided by the runs.</summary>
    public int? FallsPerRun { get; init; }
}
