namespace Generator.Solver.Alternatives;

/// <summary>Moves of a routine that stay as they are while others are filled anew.</summary>
/// <param name="First">The first, from 0.</param>
/// <param name="Last">The last.</param>
/// <param name="Slip">Half counts by which each may come sooner (0 or less) and later (0 or more); null for freely.</param>
public sealed record LockedStretch(int First, int Last, (int Sooner, int Later)? Slip)
{
    public bool Has(int move) => move >= First && move <= Last;
}
