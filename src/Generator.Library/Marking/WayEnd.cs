using Generator.Domain;

namespace Generator.Library.Marking;

/// <summary>Where a way begins or ends: at a way in, at a thing, or at a place of its own.</summary>
/// <param name="Text">As it is said in a sentence: "the door".</param>
/// <param name="X">Of a way in or a place, in centimetres as on the floor.</param>
/// <param name="Y">Likewise.</param>
/// <param name="Thing">The thing; null for a way in or a place.</param>
/// <param name="IsExact">The mark lies at this very place.</param>
internal sealed record WayEnd(string Text, int X, int Y, Obstacle? Thing, bool IsExact)
{
    /// <summary>How far from a door or a thing its mark is, in centimetres: near, and out of the way of those who come in. Common practice, no source.</summary>
    private const int Usual = 100;

    /// <summary>The farthest. Common practice, no source.</summary>
    private const int Farthest = 200;

    /// <summary>The mark of such an end may be there.</summary>
    public bool IsAt(Spot spot) => IsExact ? spot == new Spot(X, Y) : Away(spot) <= Farthest;

    /// <summary>How badly a spot lies for it; 0 is best.</summary>
    public double Cost(Spot spot) => IsExact ? 0 : Math.Abs(Away(spot) - Usual) / Usual;

    /// <summary>Centimetres from a spot to it, or to the nearest of the thing.</summary>
    public double Away(Spot spot) => Thing?.To(spot.X, spot.Y) ?? spot.To(X, Y);
}
