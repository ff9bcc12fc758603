namespace Generator.Solver.Completing;

/// <summary>What it costs that something gives: the fillings of one sketch are ordered by the sum of it.</summary>
internal interface IPrices
{
    /// <summary>The price of what gives of one move together, 0 or more; the more parts, the more.</summary>
    /// <param name="parts">The parts, one bit each (<see cref="Giving"/>).</param>
    long Of(int parts);
}
