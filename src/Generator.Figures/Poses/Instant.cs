namespace Generator.Figures.Poses;

/// <summary>One instant of a shape: how both hold themselves, how they stand to each other, what is aimed where. Whatever is null follows from the record.</summary>
public sealed record Instant
{
    /// <summary>Of whoever does it.</summary>
    public string? Pose { get; init; }

    /// <summary>Of the other one.</summary>
    public string? Other { get; init; }

    /// <summary>Whoever does it, turned to the left from facing the other; degrees.</summary>
    public double? Turn { get; init; }

    /// <summary>The other one, turned to the left from facing whoever does it; degrees.</summary>
    public double? OtherTurn { get; init; }

    /// <summary>From mark to mark as a share of stature.</summary>
    public double? Distance { get; init; }

    /// <summary>To the left of the line, as a share of stature.</summary>
    public double Aside { get; init; }

    /// <summary>How high the lowest part of the other is, as a share of stature: 0 unless they are carried.</summary>
    public double OtherLift { get; init; }

    /// <summary>Where somebody else is whom the hero holds meanwhile, or who holds the hero: degrees from where the hero looks, to the side of that hand. Null for the usual place.</summary>
    public double? InHand { get; init; }

    public IReadOnlyList<Aim> Aims { get; init; } = [];

    public IReadOnlyList<Aim> OtherAims { get; init; } = [];

    /// <summary>What whoever does it aims at the second one, in a technique for two.</summary>
    public IReadOnlyList<Aim> SecondAims { get; init; } = [];

    /// <summary>The same seen in a mirror; poses are mirrored where they are looked up.</summary>
    public Instant Mirrored => this with
    {
        Turn = 0 - Turn,
        OtherTurn = 0 - OtherTurn,
        Aside = 0 - Aside,
        Aims = [.. Aims.Select(a => a.Mirrored)],
        OtherAims = [.. OtherAims.Select(a => a.Mirrored)],
        SecondAims = [.. SecondAims.Select(a => a.Mirrored)],
    };
}
