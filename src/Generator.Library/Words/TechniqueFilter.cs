using Generator.Domain;

namespace Generator.Library.Words;

/// <summary>Which techniques a list shows; what is null asks nothing.</summary>
public sealed record TechniqueFilter
{
    public int? Weight { get; init; }

    /// <summary>The most that hero and attacker are trained for.</summary>
    public Skill? Skill { get; init; }

    /// <summary>A word of the hazard.</summary>
    public string? Hazard { get; init; }

    /// <summary><c>hand</c>, <c>leg</c>, or one of <see cref="Demand.All"/>.</summary>
    public string? Limb { get; init; }

    /// <summary>A posture in which the target may be.</summary>
    public Posture? Needs { get; init; }

    /// <summary>A posture in which it may leave the target.</summary>
    public Posture? Leaves { get; init; }

    /// <summary>Words for <see cref="Limb"/>.</summary>
    public static IReadOnlyList<string> Limbs { get; } = ["hand", "leg", .. Demand.All];

    /// <summary>Something is asked.</summary>
    public bool Asks => this != new TechniqueFilter();

    public bool Takes(Technique technique, Book book) =>
        (Weight is null || technique.Weight == Weight)
        && (Skill is null || (technique.HeroSkill <= Skill && technique.AttackerSkill <= Skill))
        && (Hazard is null || technique.Hazard.Contains(Hazard, StringComparison.OrdinalIgnoreCase))
        && (Limb is null || technique.Demands.Any(d => string.Equals(d, Limb, StringComparison.Ordinal) || d.EndsWith("-" + Limb, StringComparison.Ordinal)))
        && (Needs is null || technique.Needs.Contains(Needs.Value))
        && (Leaves is null || technique.Reactions.Any(r => book.Reaction(r).Posture == Leaves));
}
