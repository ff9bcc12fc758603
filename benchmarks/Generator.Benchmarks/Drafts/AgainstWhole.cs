namespace Generator.Benchmarks.Drafts;

/// <summary>CP-SAT alone against the whole search, brief by brief: how many times as long, and how many times the memory.</summary>
internal static class AgainstWhole
{
    /// <summary>
    /// Time to the first valid routine, as a multiple of the whole search's. A run that ended without a routine counts with all of its time,
    /// so with any such run the figures are lower bounds and are marked "≥".
    /// </summary>
    public static string Time(IReadOnlyList<DraftFigures> alone, IReadOnlyList<DraftFigures> whole)
    {
        var pairs = Pairs(alone, whole).Where(p => p.Whole.First > 0 && (p.Alone.First is not null || OutOfTime(p.Alone))).ToList();
        var text = Spread.Of(pairs.Select(p => (p.Alone.First ?? p.Alone.Elapsed) / p.Whole.First!.Value))?.ToText("0.#");
        return text is null ? "–" : (pairs.Exists(p => p.Alone.First is null) ? "≥ " : string.Empty) + text;
    }

    /// <summary>Peak memory, as a multiple of the whole search's.</summary>
    public static string Memory(IReadOnlyList<DraftFigures> alone, IReadOnlyList<DraftFigures> whole) =>
        Spread.Of(Pairs(alone, whole).Where(p => p.Alone.Memory > 0 && p.Whole.Memory > 0).Select(p => p.Alone.Memory / p.Whole.Memory))?.ToText("0.#") ?? "–";

    private static bool OutOfTime(DraftFigures figures) => string.Equals(figures.Status, "OutOfTime", StringComparison.Ordinal);

    private static IEnumerable<(DraftFigures Alone, DraftFigures Whole)> Pairs(IReadOnlyList<DraftFigures> alone, IReadOnlyList<DraftFigures> whole) =>
        alone.Join(whole, a => a.Brief, w => w.Brief, (a, w) => (a, w), StringComparer.Ordinal);
}
