namespace Generator.Domain;

/// <summary>A second hero, who fights beside the first on a mark of their own and does not leave it.</summary>
/// <param name="Part">Who they are.</param>
/// <param name="Bearing">Where their mark lies, seen from the hero's.</param>
/// <param name="Distance">How far from the hero's mark, 0.5 to 20 m.</param>
/// <param name="Faces">Where they face at the start, seen from above like all bearings.</param>
public sealed record Ally(HeroPart Part, Bearing Bearing, Centimetres Distance, Bearing Faces)
{
    /// <summary>What stands for the ally in a file, whatever their name.</summary>
    public const string Word = "ally";

    /// <summary>From mark to mark where nobody says: back to back, with room for two pairs of elbows. Common practice, no source.</summary>
    public static Centimetres UsualDistance => new(150);

    /// <summary>The bearing of the mark where nobody says: behind the hero.</summary>
    public static Bearing Behind => new(Bearing.Circle / 2);

    /// <summary>The ally's mark in whole centimetres from the hero's: towards 3 o'clock and towards 12.</summary>
    public (int X, int Y) Mark
    {
        get
        {
            var (x, y) = Bearing.Direction;
            return ((int)Math.Round(Distance.Value * x), (int)Math.Round(Distance.Value * y));
        }
    }
}
