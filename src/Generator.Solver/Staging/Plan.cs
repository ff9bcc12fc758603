namespace Generator.Solver.Staging;

/// <summary>What staging suggests for the next exchanges.</summary>
/// <param name="Exchanges">In order.</param>
public sealed record Plan(IReadOnlyList<PlannedExchange> Exchanges)
{
    public static readonly Plan Nothing = new([]);

    /// <summary>The attacker suggested for each of the next rows; −1 beyond the plan.</summary>
    public IReadOnlyList<int> Rows(int count) =>
        [.. Exchanges.SelectMany(e => Enumerable.Repeat(e.Attacker, e.Moves)).Concat(Enumerable.Repeat(-1, count)).Take(count)];

    /// <summary>How many of the exchanges that fit into so many rows put their attacker out.</summary>
    public int OutsWithin(int rows)
    {
        var (outs, used) = (0, 0);
        foreach (var exchange in Exchanges)
        {
            used += exchange.Moves;
            outs += used <= rows && exchange.PutsOut ? 1 : 0;
        }

        return outs;
    }
}
