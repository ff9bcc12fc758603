namespace Generator.Solver.Completing;

/// <summary>One thing that was said and had to give.</summary>
/// <param name="Move">Position of the move in the sketch, from 0; for a move that was put in the one before which it stands.</param>
/// <param name="Part">What gave.</param>
/// <param name="Row">Position of the move of the routine, from 0; −1 where the move was left out.</param>
public sealed record Departure(int Move, SketchPart Part, int Row)
{
    /// <summary>Its price; see <see cref="SketchPrices.Price"/>.</summary>
    public long Price => Part.Price();
}
