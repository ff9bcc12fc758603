using System.Numerics;

namespace Generator.Solver.Cameras;

/// <summary>What one choice covers, and how much it is disliked among choices of the same number.</summary>
/// <param name="Covers">One bit for each thing to cover.</param>
/// <param name="Dislike">0 and more.</param>
public readonly record struct Coverage(BigInteger Covers, int Dislike);
