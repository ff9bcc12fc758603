using Generator.Rules;
using Generator.Solver.Constructing;

namespace Generator.Solver.Completing;

/// <summary>
/// One attempt at filling a sketch: a beam with one layer for each of its moves, which goes back where it sticks and goes on with what it had left aside
/// (Zhou and Hansen 2005, beam-stack search), farther back each time. What gives is tried only at the moves at which it may.
/// </summary>
internal sealed class SketchSearch
{
    /// <summary>Moves put in one after another where nobody left a place for them.</summary>
    private const int MostPutIn = 3;

    /// <summary>How often it lets more give at one move before it ends without a filling.</summary>
    private const int MostLevels = 8;

    /// <summary>How many times as many beginnings are taken where a move leaves little choice.</summary>
    private const int Broad = 8;

    /// <summary>Points for a beginning after which something that is said cannot come: where something may give it is put behind the others, and something gives when its turn comes.</summary>
    private const double Doubt = 20;

    private readonly Scene scene;
    private readonly SketchStep[] steps;
    private readonly SketchAhead ahead;
    private readonly MoveFilling filling;
    private readonly Lingering lingering;
    private readonly Outlook outlook;
    private readonly SketchForms? forms;
    private readonly Dice dice;
    private readonly int width;
    private readonly Effort effort;
    private readonly CancellationToken stop;
    private readonly int[] giving;
    private readonly SketchLayer?[] layers;
    private int lastGiving = -1;
    private int inherited = -1;
    private int mostPutIn = MostPutIn;
    private long below;
    private bool gives;

    /// <param name="ground">What every search shares.</param>
    /// <param name="steps">The moves of the sketch.</param>
    /// <param name="forms">Which stances, hands and grips what is said takes; null not to look at them.</param>
    /// <param name="dice">Its own chance.</param>
    /// <param name="width">Beginnings of the lowest price taken from a layer at once.</param>
    /// <param name="effort">Moves that may be tried.</param>
    /// <param name="stop">Ends it.</param>
    public SketchSearch(Ground ground, SketchStep[] steps, SketchForms? forms, Dice dice, int width, Effort effort, CancellationToken stop)
    {
        (scene, this.steps, this.dice, this.width, this.stop) = (ground.Scene, steps, dice, width, stop);
        (this.effort, this.forms) = (effort, forms);
        lingering = new Lingering(scene);
        var marks = new SketchMarks(ground.Aims, steps);
        ahead = new SketchAhead(ground, steps, marks, lingering, forms);
        outlook = new Outlook(ground.Aims, null);
        filling = new MoveFilling(scene, ground.Repertoire, steps, marks, new Expander(ground, dice) { Effort = effort }, Worth, dice, effort) { Wider = Math.Max(1, width / 24), Forms = next => next > lastGiving ? forms : null, IsOver = () => IsOver };
        giving = [.. steps.Select(s => s.MustGive), Giving.Nothing];
        layers = new SketchLayer?[steps.Length + 1];
    }

    /// <summary>How often it looks for something cheap that may give before anything may: the more the slower, and the less gives.</summary>
    public int Patience { get; init; }

    /// <summary>A beginning after which something that is said cannot come is put behind the others and not left out: whatever that is gives when its turn comes.</summary>
    public bool Doubts { get; init; }

    /// <summary>How many moves were filled at most.</summary>
    public int Deepest { get; private set; }

    /// <summary>What may give at each move of the sketch, and behind the last.</summary>
    public int[] MayGive => giving;

    /// <summary>Begins with all that another search found up to before a move, and goes on from there: back into that, too, where it sticks.</summary>
    public void Inherit(SketchSearch other, int upTo)
    {
        for (var i = 0; i <= upTo; i++)
        {
            layers[i] = other.layers[i] is { } layer ? new SketchLayer(layer) : null;
        }

        inherited = upTo;
    }

    /// <summary>Fills the sketch; the cheapest ending first, then the one with the fewest points. Null when no beginning reached the end.</summary>
    /// <param name="roots">Beginnings that fill equally many moves.</param>
    /// <param name="below">Only what costs less is wanted.</param>
    /// <param name="backs">How often it goes back from where it sticks.</param>
    /// <param name="gives">Where that does not help, something near there may give, more of it and farther round each time.</param>
    public (Beginning Whole, Finish Finish)? Run(IReadOnlyList<Beginning> roots, long below, int backs, bool gives)
    {
        if (roots.Count == 0)
        {
            return null;
        }

        (this.below, this.gives) = (below, gives);
        var first = roots[0].Next;
        layers[first] ??= new SketchLayer(roots);
        lastGiving = LastGiving();
        Deepest = Math.Max(first, inherited);
        var (at, stuck, level) = (Deepest, 0, 0);
        while (!IsOver)
        {
            if (at == steps.Length)
            {
                if (Ended(layers[at]!.Take(width)) is { } whole)
                {
                    return whole;
                }
            }
            else if (Step(layers[at]!.Take(at == first ? int.MaxValue : WidthAt(at)), at) is { Count: > 0 } next)
            {
                layers[++at] = new SketchLayer(next);
                (Deepest, stuck, level) = at > Deepest ? (at, 0, 0) : (Deepest, stuck, level);
                continue;
            }

            // What was left aside here, one move before, here, two before, here, four before …
            var back = stuck % 2 == 0 ? 0 : 1 << Math.Min(10, stuck / 2);
            if (stuck++ < backs && Waiting(Math.Max(first, at - back), at) is >= 0 and var waiting)
            {
                at = waiting;
                continue;
            }

            if (!gives || level == MostLevels)
            {
                return null;
            }

            at = Give(first, Deepest, level++);
            stuck = 0;
            for (var i = first; i <= at; i++)
            {
                layers[i]?.Again();
            }
        }

        return null;
    }

    /// <summary>The last layer up to one in which something was left aside; where there is none, the next one up to another; −1 for none.</summary>
    private int Waiting(int at, int last)
    {
        for (var i = at; i >= 0; i--)
        {
            if (layers[i] is { IsEmpty: false })
            {
                return i;
            }
        }

        for (var i = at + 1; i <= last; i++)
        {
            if (layers[i] is { IsEmpty: false })
            {
                return i;
            }
        }

        return -1;
    }

    /// <summary>Lets something give before and at a move; returns the move from which to go on.</summary>
    private int Give(int first, int stuck, int level)
    {
        var from = Math.Max(first, stuck - (2 * level));
        for (var i = from; i <= stuck; i++)
        {
            giving[i] |= level < Patience || i < stuck - (level - Patience) ? Giving.Little : Giving.Everything;
        }

        mostPutIn = Math.Min(MostPutIn, 1 + level);

        lastGiving = LastGiving();
        return from;
    }

    /// <summary>The last move of which more gives than must: up to there it is not known what comes.</summary>
    private int LastGiving()
    {
        var last = steps.Length;
        while (last >= 0 && giving[last] == (last == steps.Length ? Giving.Nothing : steps[last].MustGive))
        {
            last--;
        }

        return last;
    }

    /// <summary>Where a move leaves little choice, each beginning costs little: more of them are looked at.</summary>
    private int WidthAt(int move) => giving[move] == Giving.Nothing && steps[move].IsNarrow ? Broad * width : width;

    private bool IsOver => effort.IsSpent || stop.IsCancellationRequested;

    private double? Worth(Beginning begun)
    {
        if (begun.Price >= below)
        {
            return null;
        }

        var doubtful = begun.Next > lastGiving && !begun.HasOpened && !ahead.MayGoOn(begun.Node, begun.Next, begun.Shift);
        if (doubtful && !gives && !Doubts)
        {
            return null;
        }

        return (doubtful ? Doubt : 0) + outlook.Of(begun.Node, lingering) + ahead.Apart(begun.Node, begun.Next, begun.Shift) + (0.5 * dice.Unit());
    }

    private List<Beginning> Step(List<Beginning> layer, int index)
    {
        var move = steps[index].Move;
        if (move.IsGap)
        {
            return Gap(layer, move.Open);
        }

        var filled = new List<Beginning>();
        var (before, may) = (layer, giving[index]);
        var putIns = Giving.Has(giving[index], SketchPart.Added) ? mostPutIn : 0;
        for (var putIn = 0; putIn <= putIns && before.Count > 0 && !IsOver; putIn++)
        {
            var opened = new List<Beginning>();
            foreach (var begun in before.TakeWhile(_ => !IsOver))
            {
                filling.Fill(begun, may, filled);
                filling.Open(begun, opened);
            }

            foreach (var begun in new SketchLayer(opened).Take(width))
            {
                filling.Fill(begun, may, filled);
            }

            // Something put in is there so that the move can stand, but for what cannot stand anyway.
            may &= Giving.Little | steps[index].MustGive;

            before = putIn < putIns ? PutIn(before, isFree: false) : [];
        }

        return filled;
    }

    private List<Beginning> PutIn(List<Beginning> before, bool isFree)
    {
        var more = new List<Beginning>();
        foreach (var begun in before.TakeWhile(_ => !IsOver))
        {
            filling.PutIn(begun, isFree, forms, more);
        }

        return new SketchLayer(more).Take(width);
    }

    /// <summary>Any number of moves up to the most, none included.</summary>
    private List<Beginning> Gap(List<Beginning> layer, int most)
    {
        var all = new List<Beginning>(layer);
        var before = layer;
        for (var i = 0; i < most && before.Count > 0; i++)
        {
            before = PutIn(before, isFree: true);
            all.AddRange(before);
        }

        return [.. all.Select(b => b with { Before = b, Next = b.Next + 1, Fills = false, IsPutIn = false })];
    }

    private (Beginning, Finish)? Ended(List<Beginning> layer)
    {
        (Beginning Whole, Finish Finish)? best = null;
        var before = layer;
        var putIns = Giving.Has(giving[^1], SketchPart.Added) ? mostPutIn : 0;
        for (var putIn = 0; putIn <= putIns && before.Count > 0; putIn++)
        {
            foreach (var whole in before.Where(b => b.Price < below && !b.Node.IsOpening))
            {
                var end = lingering.ForEnd(whole.Node, out var returns);
                var score = whole.Node.Score.Close(scene, end);
                if (score.Forbidden == 0 && (best is null || (whole.Price, score.Points).CompareTo((best.Value.Whole.Price, best.Value.Finish.Points)) < 0))
                {
                    best = (whole, new Finish(whole.Node, returns, score.Points, score.Points));
                }
            }

            before = best is null && putIn < putIns ? PutIn(before, isFree: false) : [];
        }

        return best;
    }
}
