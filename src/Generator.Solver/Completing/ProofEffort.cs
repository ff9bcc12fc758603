namespace Generator.Solver.Completing;

/// <summary>What questions to the solver may take together, the same on every machine.</summary>
/// <param name="most">In the solver's own unit.</param>
internal sealed class ProofEffort(double most)
{
    public double Left { get; private set; } = most;

    public bool IsSpent => Left <= 0;

    /// <summary>So much was taken.</summary>
    public void Add(double work) => Left -= work;
}
