namespace Generator.Benchmarks.Stored;

/// <summary>How much room a stored brief leaves.</summary>
internal enum Kind
{
    /// <summary>The first briefs of all, drawn at random: some ask for much, some for little. They are kept as they are, for comparison with older results.</summary>
    Mixed,

    /// <summary>Few counts, a small floor with obstacles, limits, wide margins, little patience, hero moments, cameras, an arc and an order of ending.</summary>
    Tight,

    /// <summary>Plenty of everything.</summary>
    Loose,
}
