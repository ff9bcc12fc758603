namespace Generator.Solver.Constructing;

/// <summary>Work that may be done before something else gets its turn, counted in moves tried: the same on every machine, which a clock is not.</summary>
/// <param name="most">Moves that may be tried.</param>
internal sealed class Effort(long most)
{
    private long spent;

    /// <summary>As much as it takes.</summary>
    public static Effort Unlimited => new(long.MaxValue);

    public long Spent => spent;

    public bool IsSpent => spent >= most;

    /// <summary>Counts moves tried.</summary>
    public void Add(long moves)
    {
        spent += moves;
    }
}
