namespace Generator.Domain;

/// <summary>A mat on the floor, of one piece or joined so that nothing gapes: an upright rectangle whose corner nearest the origin is at X, Y. Where the floor itself is hard, falls land on one.</summary>
/// <param name="Name">What the crew calls it.</param>
/// <param name="X">From the corner between 6 and 9 towards 3 o'clock.</param>
/// <param name="Y">From that corner towards 12.</param>
/// <param name="Width">Towards 3 o'clock, 5 cm to 100 m.</param>
/// <param name="Depth">Towards 12, likewise.</param>
public sealed record Mat(string Name, Centimetres X, Centimetres Y, Centimetres Width, Centimetres Depth)
{
    /// <summary>Most mats of one floor.</summary>
    public const int Most = 20;

    /// <summary>The name in a sentence: "the blue mat".</summary>
    public string InWords => InSentence.Of(Name);
}
