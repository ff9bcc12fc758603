using Generator.Solver.Constructing;

namespace Generator.Solver.Completing;

/// <summary>A fight that fills the first moves of a sketch.</summary>
/// <param name="Node">What is true after its last move.</param>
/// <param name="Gave">What gave so far.</param>
/// <param name="Price">Sum of their prices.</param>
/// <param name="Rows">For each filled move of the sketch the row of the routine; −1 where it was left out.</param>
internal sealed record Beginning(Node Node, IReadOnlyList<Departure> Gave, long Price, IReadOnlyList<int> Rows)
{
    /// <summary>The attack of the next move has been thrown and has taken hold; what the hero does about it comes now.</summary>
    public bool HasOpened { get; init; }

    /// <summary>What the search sorts by among those of one price: the less the better.</summary>
    public double Value { get; init; }

    /// <summary>The same after one more thing has given.</summary>
    public Beginning After(Departure departure) => this with { Gave = [.. Gave, departure], Price = Price + departure.Price };
}
