using Generator.Domain;

namespace Generator.Rules.Sight;

/// <summary>Which hits read from where.</summary>
/// <param name="Hits">Every non-contact hit, those that the hero takes among them, in order.</param>
/// <param name="Given">The cameras and audience sides of the brief.</param>
/// <param name="Added">The fewest further set-ups from which all other hits read that can read at all.</param>
public sealed record CameraPlan(IReadOnlyList<Hit> Hits, IReadOnlyList<Camera> Given, IReadOnlyList<SetUp> Added)
{
    /// <summary>Hits that read from none of these places.</summary>
    public IReadOnlyList<Hit> Unread => [.. Hits.Where(h => !Places.Any(p => Lens.Reads(Lens.Of(p, h))))];

    /// <summary>Given cameras first, then the added set-ups.</summary>
    public IReadOnlyList<SetUp> Places => [.. Given.Select(SetUp.Of), .. Added];
}
