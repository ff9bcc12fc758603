using Generator.Domain;

namespace Generator.Benchmarks.Coverage;

/// <summary>One kind of thing that should occur in drafts.</summary>
/// <param name="Name">In the plural.</param>
/// <param name="Ids">All of them.</param>
/// <param name="Count">How often one occurred.</param>
/// <param name="Ways">Moves in which one occurs, to be asked for as a hero moment.</param>
/// <param name="Why">Why one cannot occur, as far as the library itself tells; null when nothing in it speaks against it.</param>
internal sealed record CoverageKind(
    string Name,
    IReadOnlyList<string> Ids,
    Func<CoverageTally, string, int> Count,
    Func<string, IEnumerable<MomentMove>> Ways,
    Func<string, string?> Why);
