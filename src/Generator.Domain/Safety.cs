namespace Generator.Domain;

/// <summary>Safety margins and caps. The caps are common practice, no source: set them with the performers.</summary>
/// <param name="Margin">Added to the time an attacker needs after a fall.</param>
/// <param name="Runs">Planned runs a day, 1 to 50.</param>
/// <param name="FallsPerDay">Most falls of one performer over all runs.</param>
/// <param name="HeadHitsPerDay">Most head-height hits sold by one performer over all runs.</param>
public sealed record Safety(HalfCounts Margin, int Runs, int FallsPerDay, int HeadHitsPerDay)
{
    /// <summary>Margin 1 count, 6 runs, 36 falls and 90 head-height hits a performer and day.</summary>
    public static readonly Safety Default = new(HalfCounts.FromCounts(1), 6, 36, 90);
}
