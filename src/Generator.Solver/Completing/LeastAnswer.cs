namespace Generator.Solver.Completing;

/// <summary>What is known of routines that give up less of a sketch than one that is there.</summary>
/// <param name="IsLeast">There is none.</param>
/// <param name="Less">One of them; null where none was come upon.</param>
internal sealed record LeastAnswer(bool IsLeast, LeastFound? Less)
{
    public static readonly LeastAnswer Least = new(true, null);

    public static readonly LeastAnswer Unknown = new(false, null);
}
