namespace Generator.Solver.Completing;

/// <summary>One thing that was said and had to give.</summary>
/// <param name="Move">Position of the move in the sketch, from 0; for a move that was put in the one before which it stands.</param>
/// <param name="Part">What gave.</param>
/// <param name="Row">Position of the move of the routine, from 0; −1 where the move was left out.</param>
public sealed record Departure(int Move, SketchPart Part, int Row)
{
    /// <summary>Things of one kind that count before the next kind does.</summary>
    private const int Step = 6;

    /// <summary>Its price: the sum of prices orders routines by how much gave, dearest kind first, for fewer than 64 of a kind.</summary>
    public long Price => 1L << (Step * (int)Part);
}
