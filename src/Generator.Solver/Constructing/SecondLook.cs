namespace Generator.Solver.Constructing;

/// <summary>
/// Where a beam that has died begins again: not from the opening but some layers before the one in which it died, wider and with other chances;
/// further back each time that it dies in the same place.
/// </summary>
/// <param name="layers">How many layers the beam has.</param>
internal sealed class SecondLook(int layers)
{
    private const int MostLooks = 8;

    /// <summary>Layers to go back at first.</summary>
    private const int Back = 24;

    /// <summary>Layers that one move may skip: so many together hold a whole generation.</summary>
    private const int Reach = 12;

    private readonly List<Node>?[] kept = new List<Node>?[layers];
    private int looks;
    private int back = Back;
    private int died = -1;

    /// <summary>The layer to begin in.</summary>
    public int From { get; private set; }

    /// <summary>Nodes to keep in a layer.</summary>
    public int Width(int width) => looks == 0 ? width : width + (width / 2);

    /// <summary>Remembers what was kept of a layer.</summary>
    public void Keep(int layer, List<Node> nodes)
    {
        kept[layer] = nodes;
    }

    /// <summary>Puts the layers back from which to look again; false when that has been done often enough.</summary>
    public bool Again(List<Node>?[] open)
    {
        var last = Array.FindLastIndex(kept, k => k is not null);
        if (looks++ == MostLooks || last <= 0)
        {
            return false;
        }

        back = last > died + Back ? Back : 2 * back;
        died = Math.Max(died, last);
        var until = last - back;
        if (until <= 0)
        {
            return false;
        }

        From = Math.Max(0, until - Reach);
        Array.Clear(kept, until + 1, layers - until - 1);
        for (var l = From; l <= until; l++)
        {
            open[l] = kept[l];
        }

        return true;
    }
}
