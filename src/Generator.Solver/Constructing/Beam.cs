using System.Numerics;
using Generator.Domain;
using Generator.Rules;
using Generator.Rules.Judging;
using Generator.Rules.Replaying;
using Generator.Solver.Reworking;

namespace Generator.Solver.Constructing;

/// <summary>
/// Beam search in layers of equal time (or equal number of moves): of every layer the most promising nodes are expanded by one move,
/// and each child goes to the layer in which it ends. One for each run.
/// </summary>
internal sealed class Beam
{
    /// <summary>Children of one node that may stay in one layer.</summary>
    private const int SiblingsKept = 4;

    /// <summary>Nodes that wait in a layer for each that will be kept of it: with all of them a wide beam would need hundreds of megabytes.</summary>
    private const int Waiting = 16;

    private static readonly Comparison<Node> ByValue = static (x, y) => x.Value.CompareTo(y.Value);

    private readonly Scene scene;
    private readonly Aims aims;
    private readonly Dice dice;
    private readonly int width;
    private readonly double noise;
    private readonly Expander expander;
    private readonly Outlook outlook;
    private readonly Lingering lingering;
    private readonly List<Node>?[] layers;
    private readonly List<Node> children = [];
    private readonly HashSet<ulong> twins = [];
    private readonly Dictionary<Node, int> siblings = [];
    private readonly Guide? guide;
    private readonly Wishes? wishes;
    private readonly Tail? tail;
    private readonly int least;
    private readonly int mostPoints;
    private readonly SecondLook? look;
    private int bound;
    private int at;

    /// <param name="ground">What every run shares.</param>
    /// <param name="dice">Its own chance.</param>
    /// <param name="width">Nodes kept in a layer.</param>
    /// <param name="noise">Most that chance adds to the value of a node, in points.</param>
    /// <param name="bound">Only routines with a smaller toll are wanted.</param>
    /// <param name="guide">An older routine to stay close to; null for none.</param>
    /// <param name="wishes">What the run would like to show; null for nothing in particular.</param>
    /// <param name="tail">How the routine must go on; null for anyhow.</param>
    /// <param name="mostPoints">Most points that a beginning may have.</param>
    /// <param name="fetching">How attackers are brought into sight for hero moments; null for not at all.</param>
    public Beam(Ground ground, Dice dice, int width, double noise, int bound, Guide? guide = null, Wishes? wishes = null, Tail? tail = null, int mostPoints = int.MaxValue, Fetching? fetching = null)
    {
        (this.guide, this.wishes, this.tail) = (guide, wishes, tail);
        (scene, aims, this.dice, this.width, this.noise, this.bound) = (ground.Scene, ground.Aims, dice, width, noise, bound);
        (least, this.mostPoints) = (ground.Least, mostPoints);
        expander = new Expander(ground, dice, guide, fetching: fetching);
        outlook = new Outlook(aims, fetching);
        lingering = new Lingering(scene);
        layers = new List<Node>?[(tail?.LastLayer ?? (aims.LastLayer == int.MaxValue ? 0 : aims.LastLayer)) + 1];
        look = bound == int.MaxValue ? new SecondLook(layers.Length) : null;
    }

    /// <summary>Draws how noisy a beam is, in points.</summary>
    public static double Noise(Dice dice) => 0.4 + (1.6 * dice.Unit());

    /// <summary>The best routine so far; null while there is none.</summary>
    public Finish? Best { get; private set; }

    /// <summary>Runs from the roots to the end. The best routine found, or null.</summary>
    /// <param name="roots">Where to begin.</param>
    /// <param name="found">Told of every better routine.</param>
    /// <param name="stop">Ends the run early; the best so far is returned.</param>
    public Finish? Run(IEnumerable<Node> roots, Action<Finish> found, CancellationToken stop)
    {
        Begin(roots);
        GoOn(Effort.Unlimited, found, stop);
        return Best;
    }

    /// <summary>Puts the roots into their layers.</summary>
    public void Begin(IEnumerable<Node> roots)
    {
        foreach (var root in roots)
        {
            Put(root);
        }
    }

    /// <summary>From now on only routines with a smaller toll are wanted.</summary>
    public void Want(int toll)
    {
        bound = Math.Min(bound, toll);
    }

    /// <summary>Goes on where it stopped; true when it has come to its end.</summary>
    /// <param name="effort">After so much it stops, at the end of a layer.</param>
    /// <param name="found">Told of every better routine.</param>
    /// <param name="stop">Stops it early.</param>
    public bool GoOn(Effort effort, Action<Finish> found, CancellationToken stop)
    {
        expander.Effort = effort;
        while (true)
        {
            for (; at < layers.Length; at++)
            {
                if (effort.IsSpent || stop.IsCancellationRequested)
                {
                    return false;
                }

                if (layers[at] is { } layer && Layer(layer, found, stop))
                {
                    return true;
                }
            }

            if (bound < int.MaxValue || look?.Again(layers) != true)
            {
                return true;
            }

            at = look.From;
        }
    }

    /// <summary>Expands the best of the layer in hand; true when no better routine than the one found can be.</summary>
    private bool Layer(List<Node> layer, Action<Finish> found, CancellationToken stop)
    {
        layers[at] = null;
        var kept = Kept(layer, look?.Width(width) ?? width);
        look?.Keep(at, kept);
        foreach (var node in kept)
        {
            if (stop.IsCancellationRequested)
            {
                return false;
            }

            if (tail is null && Ended(node) is { } finish && Better(finish, found))
            {
                return true;
            }

            if (Grow(node) is { } joined && Better(joined, found))
            {
                return true;
            }
        }

        return false;
    }

    /// <summary>Takes a better routine; true when none can be better still.</summary>
    private bool Better(Finish finish, Action<Finish> found)
    {
        Best = finish;
        bound = finish.Toll;
        found(finish);
        return bound <= least;
    }

    /// <summary>Puts the children of a node into their layers; the best routine that one of them makes with the tail, or null.</summary>
    private Finish? Grow(Node node)
    {
        Finish? joined = null;
        children.Clear();
        expander.Expand(node, children);
        foreach (var child in children)
        {
            if (tail is not null && Toll(child) < bound && Rejoined(child, tail) is { } finish)
            {
                joined = finish;
                bound = finish.Toll;
            }

            child.Wished = wishes?.After(node.Wished, child.Row.Technique) ?? 0;
            Value(child);
            Put(child);
        }

        return joined;
    }

    /// <summary>The routine that the tail makes of a beginning; null when it cannot or costs too much. A beginning that it has followed for some moves may go on otherwise from there.</summary>
    private Finish? Rejoined(Node node, Tail rest)
    {
        var last = rest.Joined(expander, node, n => Toll(n) < bound, out var stuck);
        if (stuck is not null)
        {
            Value(stuck);
            Put(stuck);
        }

        return last is null ? null : Ended(last);
    }

    private void Value(Node node)
    {
        node.Value = outlook.Of(node, lingering) + (noise * dice.Unit()) + (guide?.Value(node) ?? 0) - Wishes.Value(node.Wished) + (tail?.Apart(node) ?? 0);
    }

    private void Put(Node node)
    {
        var layer = aims.LayerOf(node.State);
        if (layer < layers.Length && Toll(node) < bound && node.Points <= mostPoints && tail?.IsPast(node) != true)
        {
            var waiting = layers[layer] ??= [];
            node.Twin = TwinKey(node);
            node.Forget(expander.Maker);
            waiting.Add(node);
            if (waiting.Count == 2 * Waiting * width)
            {
                waiting.Sort(ByValue);
                waiting.RemoveRange(Waiting * width, Waiting * width);
            }
        }
    }

    /// <summary>The best of a layer, without twins and without too many children of one node.</summary>
    private List<Node> Kept(List<Node> layer, int most)
    {
        layer.Sort(ByValue);
        twins.Clear();
        siblings.Clear();
        var kept = new List<Node>(most);
        foreach (var node in layer)
        {
            if (kept.Count == most)
            {
                break;
            }

            if (Toll(node) >= bound || !twins.Add(node.Twin))
            {
                continue;
            }

            if (node.Parent is { } parent)
            {
                var count = siblings.GetValueOrDefault(parent);
                if (count == SiblingsKept)
                {
                    continue;
                }

                siblings[parent] = count + 1;
            }

            kept.Add(node);
        }

        return kept;
    }

    /// <summary>The routine that ends here; null when it cannot or costs too much.</summary>
    private Finish? Ended(Node node) => aims.MayEnd(node) && !node.IsOpening ? End(node) : null;

    private Finish? End(Node node)
    {
        if (guide is not null && guide.EndAsWritten(scene, node) is { } asWritten && asWritten.Toll < bound)
        {
            return asWritten;
        }

        var end = lingering.ForEnd(node, out var returns);
        var score = node.Score.Close(scene, end);
        var toll = guide?.Toll(node, score.Points) ?? score.Points;
        return score.Forbidden == 0 && toll < bound ? new Finish(node, returns, score.Points, toll) : null;
    }

    private int Toll(Node node) => guide?.TollSoFar(node) ?? node.Points;

    /// <summary>Much the same situation. Mixed by hand, for the framework's hash codes differ from process to process.</summary>
    private ulong TwinKey(Node node)
    {
        var state = node.State;
        var key = Mixed(Mixed(17, (int)state.Stance), state.Facing);
        key = Mixed(Mixed(key, Code(state.Left)), Code(state.Right));
        key = Mixed(Mixed(key, (int)state.Bound), state.LastTarget);
        key = Mixed(key, node.IsOpening ? node.First : node.Row.Reaction);
        key = Mixed(Mixed(key, node.MomentsDone.GetHashCode()), node.Setbacks);
        key = state.Mark == 0 ? key : Mixed(key, state.Mark);
        var threats = 0;
        for (var a = 0; a < scene.Cast; a++)
        {
            threats += node.Threats[a] == int.MaxValue ? 7 * (a + 1) : node.Threats[a];
            key = Mixed(key, (int)state.Attackers[a].Posture);
        }

        return Mixed(key, threats);
    }

    private static int Code(Hand hand) => (100 * (int)hand.Kind) + hand.Who;

    private static ulong Mixed(ulong key, int value) => unchecked(BitOperations.RotateLeft((key ^ (uint)value) * 0x9E3779B97F4A7C15UL, 29));
}
