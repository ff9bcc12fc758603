using Generator.Domain.Sketches;
using Generator.Rules;
using Generator.Rules.Replaying;
using Generator.Solver.Constructing;

namespace Generator.Solver.Completing;

/// <summary>
/// One attempt at filling a sketch: a beam with one layer for each of its moves. What gives is tried only at the moves that are named, for at most
/// of them everything can stand.
/// </summary>
internal sealed class SketchSearch
{
    /// <summary>Moves put in one after another where nobody left a place for them.</summary>
    private const int MostPutIn = 3;

    /// <summary>How often an attempt goes back, and by how many moves the first time.</summary>
    private const int MostBacks = 24, Window = 2;

    /// <summary>Prices of which beginnings stay in a layer, and how many of a dear one at least.</summary>
    private const int MostPrices = 8, Fewest = 4;

    private readonly Scene scene;
    private readonly Ground ground;
    private readonly Sketch sketch;
    private readonly MoveChoices[] choices;
    private readonly MoveFilling filling;
    private readonly Lingering lingering;
    private readonly int width;
    private readonly CancellationToken stop;

    public SketchSearch(Ground ground, Sketch sketch, MoveChoices[] choices, Dice dice, int width, CancellationToken stop)
    {
        (this.ground, this.sketch, this.choices, this.width, this.stop) = (ground, sketch, choices, width, stop);
        scene = ground.Scene;
        lingering = new Lingering(scene);
        filling = new MoveFilling(scene, new Expander(ground, dice), lingering, new Outlook(ground.Aims, null), dice);
    }

    /// <summary>Fills the sketch; the cheapest ending first, then the one with the fewest points. Null when no beginning reached the end.</summary>
    /// <param name="roots">Openings.</param>
    /// <param name="mayGive">For each move of the sketch, and behind the last, whether something may give there.</param>
    /// <param name="mayGoBack">Where nothing can stand as said, lets something give a few moves before and goes on from there.</param>
    /// <param name="below">Only what costs less is wanted.</param>
    public (Beginning Whole, Finish Finish)? Run(IEnumerable<Node> roots, bool[] mayGive, bool mayGoBack, long below)
    {
        var layers = new List<Beginning>[sketch.Moves.Count + 1];
        layers[0] = [.. roots.Select(r => new Beginning(r, [], 0, []))];
        for (var (i, backs) = (0, 0); !stop.IsCancellationRequested;)
        {
            if (i == sketch.Moves.Count && Ended(layers[i], mayGive[i], below) is { } whole)
            {
                return whole;
            }

            if (i < sketch.Moves.Count && Kept(Step(layers[i], i, mayGive[i]).Where(b => b.Price < below)) is { Count: > 0 } next)
            {
                layers[++i] = next;
            }
            else if (backs == MostBacks || !mayGoBack)
            {
                return null;
            }
            else
            {
                // Here it sticks: back a few moves, farther each time, and something may give from there on.
                var back = Math.Max(0, i - Window - (backs++ / 2));
                Array.Fill(mayGive, true, back, i - back + 1);
                i = back;
            }
        }

        return null;
    }

    private List<Beginning> Step(List<Beginning> layer, int index, bool mayGive)
    {
        var move = sketch.Moves[index];
        if (move.IsGap)
        {
            return Gap(layer, index, move);
        }

        var filled = new List<Beginning>();
        var before = layer;
        for (var putIn = 0; putIn <= (mayGive ? MostPutIn : 0) && before.Count > 0 && !stop.IsCancellationRequested; putIn++)
        {
            var opened = new List<Beginning>();
            foreach (var begun in before)
            {
                filling.Fill(begun, index, move, choices[index], mayGive, filled);
                filling.Open(begun, index, move, choices[index], opened);
            }

            foreach (var begun in Kept(opened))
            {
                filling.Fill(begun, index, move, choices[index], mayGive, filled);
            }

            before = putIn < MostPutIn && mayGive ? PutIn(before, index, isFree: false) : [];
        }

        return filled;
    }

    private List<Beginning> PutIn(List<Beginning> before, int index, bool isFree)
    {
        var more = new List<Beginning>();
        foreach (var begun in before)
        {
            if (stop.IsCancellationRequested)
            {
                break;
            }

            filling.PutIn(begun, index, isFree, more);
        }

        return Kept(more);
    }

    /// <summary>Any number of moves up to the most, none included.</summary>
    private List<Beginning> Gap(List<Beginning> layer, int index, SketchMove move)
    {
        var all = new List<Beginning>(layer);
        var before = layer;
        for (var i = 0; i < move.Open && before.Count > 0; i++)
        {
            before = PutIn(before, index, isFree: true);
            all.AddRange(before);
        }

        return [.. all.Select(b => b with { Rows = [.. b.Rows, -1] })];
    }

    private (Beginning, Finish)? Ended(List<Beginning> layer, bool mayGive, long below)
    {
        (Beginning Whole, Finish Finish)? best = null;
        var before = layer;
        for (var putIn = 0; putIn <= (mayGive ? MostPutIn : 0) && before.Count > 0; putIn++)
        {
            foreach (var whole in before.Where(b => b.Price < below && !b.Node.IsOpening))
            {
                var end = lingering.ForEnd(whole.Node, out var patches);
                var score = whole.Node.Score.Close(scene, end);
                if (score.Forbidden == 0 && (best is null || (whole.Price, score.Points).CompareTo((best.Value.Whole.Price, best.Value.Finish.Points)) < 0))
                {
                    best = (whole, new Finish(whole.Node, patches, score.Points, score.Points));
                }
            }

            before = best is null && putIn < MostPutIn && mayGive ? PutIn(before, sketch.Moves.Count, isFree: false) : [];
        }

        return best;
    }

    /// <summary>The best of each price, the cheaper prices more of them; of situations that differ in kind the best of each before the second best of any.</summary>
    private List<Beginning> Kept(IEnumerable<Beginning> all)
    {
        var kept = new List<Beginning>();
        foreach (var (group, rank) in all.GroupBy(b => b.Price).OrderBy(g => g.Key).Take(MostPrices).Select((g, i) => (g, i)))
        {
            kept.AddRange(group.GroupBy(b => Kind(b.Node.State)).SelectMany(k => k.OrderBy(b => b.Value).Select((b, i) => (Beginning: b, Turn: i)))
                .OrderBy(b => b.Turn).ThenBy(b => b.Beginning.Value)
                .Take(Math.Max(Fewest, width / (rank + 1)))
                .Select(b => b.Beginning));
        }

        return kept;
    }

    /// <summary>What the next move depends on most: how the hero stands and holds, and what the last one taken on has become.</summary>
    private static (Domain.Stance Stance, Hand Left, Hand Right, Domain.Bound Bound, int Last, Domain.Posture? Posture) Kind(FightState state) =>
        (state.Stance, state.Left, state.Right, state.Bound, state.LastTarget, state.LastTarget < 0 ? null : state.Attackers[state.LastTarget].Posture);
}
