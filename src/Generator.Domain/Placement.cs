namespace Generator.Domain;

/// <summary>Where and when one attacker opens.</summary>
/// <param name="Bearing">Opening bearing.</param>
/// <param name="Distance">Opening distance from the mark.</param>
/// <param name="Entrance">Moment before which the attacker is not yet in play.</param>
public sealed record Placement(Bearing Bearing, Centimetres Distance, HalfCounts Entrance)
{
    /// <summary>"2:30, 3.00 m from the mark, in play from count 5" or "in play from the start".</summary>
    public string ToText() => $"{Bearing.InWords}, {Distance} from the mark, in play from {(Entrance > HalfCounts.Zero ? "count " + Entrance.ToCountText() : "the start")}";
}
