using Generator.Domain;
using Generator.Rules.Replaying;

namespace Generator.Solver.Completing;

/// <summary>
/// The beginnings that fill as many moves of a sketch, best first, of which more are taken each time the search comes back to them: those of the lowest price
/// most, those in which the fewest things gave, however dear, as well (many cheap things often lead nowhere, one dear one to the end), and of situations that differ in kind the best of each before the second best of any.
/// </summary>
internal sealed class SketchLayer
{
    /// <summary>Prices that are taken from at once, and how many of a dear one at least.</summary>
    private const int MostPrices = 8, Fewest = 3;

    /// <summary>Prices of few things that are taken from whatever they are.</summary>
    private const int FewThings = 10;

    /// <summary>Beginnings kept of one price for later.</summary>
    private const int MostWaiting = 1500;

    private readonly Beginning[][] groups;
    private readonly int[] next;
    private readonly int[] things;

    public SketchLayer(IEnumerable<Beginning> all)
    {
        var prices = all.GroupBy(b => b.Price).OrderBy(g => g.Key).ToList();
        groups = [.. prices.Where((_, i) => i < MostPrices).Union(prices.OrderBy(g => SketchPrices.Things(g.Key)).Take(FewThings)).OrderBy(g => g.Key).Select(g => Ordered(g).ToArray())];
        next = new int[groups.Length];
        things = [.. groups.Select(g => SketchPrices.Things(g[0].Price))];
    }

    /// <summary>The same beginnings, the best of them first again, for another search.</summary>
    public SketchLayer(SketchLayer other) => (groups, next, things) = (other.groups, new int[other.groups.Length], other.things);

    public bool IsEmpty => !groups.Where((g, i) => next[i] < g.Length).Any();

    /// <summary>Begins with the best once more.</summary>
    public void Again()
    {
        Array.Clear(next);
    }

    /// <summary>The next ones.</summary>
    /// <param name="width">How many of the lowest price that is left.</param>
    public List<Beginning> Take(int width)
    {
        var taken = new List<Beginning>();
        var (rank, few) = (1, things.DefaultIfEmpty().Min() + 1);
        for (var g = 0; g < groups.Length; g++)
        {
            var most = Math.Min(groups[g].Length, (int)Math.Min(int.MaxValue, (long)next[g] + Math.Max(things[g] <= few ? width : Fewest, width / rank)));
            rank += next[g] < most ? 1 : 0;
            taken.AddRange(groups[g].AsSpan(next[g]..most));
            next[g] = most;
        }

        return taken;
    }

    private static IEnumerable<Beginning> Ordered(IEnumerable<Beginning> group) => group
        .GroupBy(Kind).SelectMany(k => k.OrderBy(b => b.Value).Select((b, i) => (Beginning: b, Turn: i)))
        .OrderBy(b => b.Turn).ThenBy(b => b.Beginning.Value)
        .Take(MostWaiting)
        .Select(b => b.Beginning);

    /// <summary>What the next move depends on most: how the hero stands and holds, and what the last one taken on has become.</summary>
    private static (bool HasOpened, Stance Stance, Hand Left, Hand Right, Bound Bound, int Last, Posture? Posture) Kind(Beginning begun)
    {
        var state = begun.Node.State;
        return (begun.HasOpened, state.Stance, state.Left, state.Right, state.Bound, state.LastTarget, state.LastTarget < 0 ? null : state.Attackers[state.LastTarget].Posture);
    }
}
