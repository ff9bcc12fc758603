using Generator.Domain;

namespace Generator.Figures.Poses;

/// <summary>Which records a shape fits when none names them; an empty list means any.</summary>
public sealed record ShapeWhen
{
    public IReadOnlyList<Family> Families { get; init; } = [];

    public IReadOnlyList<Height> Heights { get; init; } = [];

    public IReadOnlyList<ContactKind> Kinds { get; init; } = [];

    public IReadOnlyList<LineKind> Lines { get; init; } = [];

    public IReadOnlyList<FallClass> Falls { get; init; } = [];

    public IReadOnlyList<Posture> Postures { get; init; } = [];

    /// <summary>What a technique is done with, in the hero's hand.</summary>
    public IReadOnlyList<PropUse> Props { get; init; } = [];

    public Limb? Limb { get; init; }

    public bool Fits(Technique technique) =>
        Any(Families, technique.Family) && Any(Heights, technique.Height) && Any(Kinds, technique.Kind) && (Props.Count == 0 || (technique.Prop is { Holder: PropHolder.Hero } prop && Props.Contains(prop.Use))) && (Limb is null || Limb == technique.Band.Limb);

    public bool Fits(Attack attack) => Any(Lines, attack.Line.Kind) && (Limb is null || Limb == attack.Contact.Limb);

    public bool Fits(Reaction reaction) =>
        Any(Falls, reaction.Fall) && (Postures.Count == 0 || (reaction.Posture is { } posture && Postures.Contains(posture)));

    private static bool Any<T>(IReadOnlyList<T> list, T value) => list.Count == 0 || list.Contains(value);
}
