namespace Generator.Domain;

/// <summary>A performer who comes at the hero.</summary>
public sealed record AttackerPart : Performer
{
    /// <summary>Opening bearing; null leaves it to the draft.</summary>
    public Bearing? Bearing { get; init; }

    /// <summary>Opening distance from the mark, 1 to 20 m; null leaves it to the draft.</summary>
    public Centimetres? Distance { get; init; }

    /// <summary>Speed on the way in, in centimetres a second, 50 to 700 (a walk is about 140, a jog 200, a rush 300 and more); default 200.</summary>
    public int Speed { get; init; } = 200;

    /// <summary>Share of the exchanges asked for, 0 to 100 percent; null lets the time in play decide.</summary>
    public int? SharePercent { get; init; }

    /// <summary>
    /// Knee on which they open; null on both feet. Whoever opens so is within <see cref="FarthestKneeling"/> of the mark from the start, and attacks from there the first time.
    /// </summary>
    public Side? Kneels { get; init; }

    /// <summary>The farthest from the mark at which somebody opens on a knee: on the knees nobody goes far (common practice, no source).</summary>
    public static Centimetres FarthestKneeling => new(130);

    /// <summary>The nearest to the mark at which anybody opens, and where those do who open on a knee unless something else is said.</summary>
    public static Centimetres NearestOpening => new(100);

    /// <summary>Count before which the attacker is not yet in play; null leaves it to the draft (a routine without one: from the start).</summary>
    public HalfCounts? Entrance { get; init; }
}
