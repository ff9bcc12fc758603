using System.Globalization;

namespace Generator.Benchmarks.Stored;

/// <summary>Stored briefs of one size (moves × attackers) and kind.</summary>
internal sealed record Family(int Moves, int Attackers, Kind Kind)
{
    /// <summary>All of them, small ones first.</summary>
    public static readonly IReadOnlyList<Family> All =
    [
        .. new (int Moves, int Attackers)[] { (6, 2), (12, 2), (24, 3), (40, 4), (60, 5), (120, 8), (240, 8) }
            .SelectMany(s => Enum.GetValues<Kind>().Select(k => new Family(s.Moves, s.Attackers, k))).Where(f => f.Kind != Kind.Mixed || f.Moves is 12 or 24 or 40),
    ];

    /// <summary>"24x3".</summary>
    public string Size => string.Create(CultureInfo.InvariantCulture, $"{Moves}x{Attackers}");

    /// <summary>"tight-24x3"; of the first briefs, which have no kind in their names, "24x3".</summary>
    public string Name => Kind == Kind.Mixed ? Size : $"{KindText}-{Size}";

    public string KindText => Kind switch { Kind.Tight => "tight", Kind.Loose => "loose", _ => "mixed" };

    /// <summary>Files of its briefs, in order.</summary>
    public IReadOnlyList<string> Files => [.. Directory.EnumerateFiles(Places.Briefs, Name + "-*.brief.json").Order(StringComparer.Ordinal)];
}
