using Generator.Solver.Constructing;

namespace Generator.Solver.Completing;

/// <summary>A fight that fills the first moves of a sketch.</summary>
/// <param name="Before">The one that it goes on from; null at the opening.</param>
/// <param name="Node">What is true after its last move.</param>
/// <param name="Price">What gave so far, as the sum of prices.</param>
internal sealed record Beginning(Beginning? Before, Node Node, long Price)
{
    /// <summary>Moves of the sketch that are done with.</summary>
    public int Next { get; init; }

    /// <summary>The last row fills the last of them; else that was left out, was a gap, or the row was put in.</summary>
    public bool Fills { get; init; }

    /// <summary>The last row was put in where nobody left a place for it.</summary>
    public bool IsPutIn { get; init; }

    /// <summary>The attack of the next move has been thrown and has taken hold; what the hero does about it comes now.</summary>
    public bool HasOpened { get; init; }

    /// <summary>Something that the sketch says has come.</summary>
    public bool HasSaid => Fills || HasOpened || Before?.HasSaid == true;

    /// <summary>Half counts by which everything has come later than said since something did, without a further price.</summary>
    public int Shift { get; init; }

    /// <summary>What the search sorts by among those of one price: the less the better.</summary>
    public double Value { get; init; }

    /// <summary>From the opening to this one.</summary>
    public List<Beginning> Path()
    {
        var path = new List<Beginning>();
        for (var at = this; at is not null; at = at.Before)
        {
            path.Add(at);
        }

        path.Reverse();
        return path;
    }
}
