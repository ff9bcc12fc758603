using Generator.Domain;
using Generator.Domain.Sketches;
using Generator.Rules;
using Generator.Rules.Replaying;
using Generator.Solver.Constructing;
using Generator.Solver.Repertoires;

namespace Generator.Solver.Completing;

/// <summary>Fills one move of a sketch behind a beginning: what may stand in it, at the soonest counts at which it is possible and at those that are said.</summary>
internal sealed partial class MoveFilling(Scene scene, Repertoire repertoire, SketchStep[] steps, SketchMarks marks, Expander expander, Func<Beginning, double?> worth, Dice dice, Effort effort)
{
    /// <summary>Half counts tried after the soonest one.</summary>
    private const int Later = 4;

    /// <summary>How few choices there must be for every reaction of each to be tried; else so many.</summary>
    private const int Few = 10, SomeReactions = 2;

    /// <summary>Half hours that somebody may walk round when nothing works from where they are.</summary>
    private const int MostRound = 8;

    /// <summary>In how many of a hundred tries somebody is walked round where something else may give instead.</summary>
    private const int RoundWhereGiving = 10;

    private readonly int longestGap = Pace.DeadAirBreaks.Value;

    private readonly Gathering gathering = new(scene, dice);

    private readonly SketchStep any = new(scene, repertoire, new SketchMove { Line = 0 });

    /// <summary>What is filled is no move of the sketch: the attack takes hold before its answer, or something leads up to the next move, at a price.</summary>
    private bool opens, leads;

    private long leadPrice;

    private bool goesRound;

    /// <summary>How many times as much is tried.</summary>
    public int Wider { get; init; } = 1;

    /// <summary>The search is at its end: nothing further is tried.</summary>
    public Func<bool> IsOver { get; init; } = () => false;

    /// <summary>Which stances, hands and grips are wanted before a move; null where that does not matter.</summary>
    public Func<int, SketchForms?> Forms { get; init; } = _ => null;

    /// <summary>Adds the beginnings that are longer by the next move of the sketch.</summary>
    /// <param name="begun">The beginning.</param>
    /// <param name="giving">What of the move may give.</param>
    /// <param name="filled">Where they go.</param>
    public void Fill(Beginning begun, int giving, List<Beginning> filled)
    {
        var (step, node) = (steps[begun.Next], begun.Node);
        var wanted = Forms(begun.Next + 1) is { } forms && forms.IsTight(begun.Next + 1) ? forms : null;
        if (step.IsOpen && step.Move is { Count: null, Hurts: null } && !begun.HasOpened && wanted is null)
        {
            var children = new List<Node>();
            expander.Expand(node, children);
            children.FindAll(c => marks.MayStand(node.State, c.Row, begun.Next)).ForEach(c => Add(begun, step, c, filled));
            gathering.Begin(null, begun.Next + 1);
            Travels(begun, step, marks.Before(node.State, begun.Next + 1), giving);
            TryAll(begun, step, giving, filled);
            return;
        }

        gathering.Begin(wanted, begun.Next + 1);
        foreach (var a in Present(node).Where(a => step.Concerns(a, giving)))
        {
            gathering.Add(node.State, a, begun.HasOpened ? Afterwards(step, a) : step.Menu(a, giving), step.Move.Count?.First.Value ?? 0);
        }

        if (!begun.HasOpened && MayBeAlone(node))
        {
            gathering.AddAlone(node.State, step.NoTargets(giving));
        }

        if (!begun.HasOpened)
        {
            Travels(begun, step, marks.From(node.State, begun.Next, giving), giving);
        }

        TryAll(begun, step, giving, filled);
        if ((giving & Giving.LeftOut) != 0 && step.MayGo && !begun.HasOpened)
        {
            Keep(new Beginning(begun, node, begun.Price + step.WhenLeftOut.Price()) { Next = begun.Next + 1, Shift = begun.Shift }, filled);
        }
    }

    /// <summary>The attack takes hold, and what the hero does about it is still to come.</summary>
    public void Open(Beginning begun, List<Beginning> filled)
    {
        var step = steps[begun.Next];
        if (!step.TakesHoldFirst || begun.HasOpened)
        {
            return;
        }

        opens = true;
        gathering.Begin(null, begun.Next + 1);
        foreach (var a in Present(begun.Node).Where(a => step.Concerns(a, Giving.Nothing) && begun.Node.State.Attackers[a].IsActive))
        {
            gathering.Add(begun.Node.State, a, [.. step.Holds(a)]);
        }

        TryAll(begun, step, Giving.Nothing, filled);
        opens = false;
    }

    private static Menu Afterwards(SketchStep step, int attacker) => step.Menu(attacker, Giving.Everything).Only(step.Afterwards);

    /// <summary>Who may be in the next move.</summary>
    private IEnumerable<int> Present(Node node) => Enumerable.Range(0, scene.Cast).Where(a => (!node.IsOpening || node.First == a) && node.State.Attackers[a].Posture != Posture.Out);

    private static bool MayBeAlone(Node node) => !node.IsOpening || node.First < 0;

    /// <summary>Everything from where people are; where nothing comes of it, from elsewhere too.</summary>
    private void TryAll(Beginning begun, SketchStep step, int giving, List<Beginning> filled)
    {
        var before = filled.Count;
        goesRound = gathering.Count <= Few;
        TryEach();
        if (filled.Count == before && !goesRound)
        {
            goesRound = true;
            TryEach();
        }

        void TryEach() => gathering.Try(Giving.IsNarrow(giving), Wider, (choice, attacker) => Try(begun, step, giving, choice, attacker, filled), IsOver);
    }

    private bool Try(Beginning begun, SketchStep step, int giving, Choice choice, int attacker, List<Beginning> filled)
    {
        var node = begun.Node;
        var row = new Row(0, attacker, choice.Attack < 0 ? -1 : step.Move.From?.HalfHours ?? -1, Cue.None, choice.Attack, choice.Technique, -1, 0)
        {
            To = choice.To,
            Hurt = opens || leads ? null : step.HurtBy(choice.Technique),
        };
        if (row.Hurt is { } hurt && hurt.By(row, scene.Book) is null)
        {
            return false;
        }

        var before = filled.Count;
        Timed(begun, step, giving, choice, row, filled);
        if (row.From >= 0 && Giving.Has(giving, SketchPart.Place))
        {
            Timed(begun, step, giving, choice, row with { From = -1 }, filled);
        }

        if (row.Attack >= 0 && row.From < 0 && !node.IsOpening && node.State.Attackers[attacker].IsActive)
        {
            Round(begun, step, giving, choice, row, filled, goesRound && filled.Count == before && (giving == Giving.Nothing || dice.Percent(RoundWhereGiving)));
        }

        return filled.Count > before;
    }

    /// <summary>From other bearings: from the nearest one that works where nothing else does; now and then from any, for what comes later may need it.</summary>
    private void Round(Beginning begun, SketchStep step, int giving, Choice choice, Row row, List<Beginning> filled, bool must)
    {
        var bearing = new Bearing(begun.Node.State.Attackers[row.Attacker].Bearing);
        var before = filled.Count;
        if (!must)
        {
            if (gathering.Count <= Few ? dice.Percent(50) : dice.Percent(10))
            {
                Timed(begun, step, giving, choice, row with { From = (bearing + new Turn(dice.Next((2 * MostRound) + 1) - MostRound)).HalfHours }, filled);
            }

            return;
        }

        for (var round = 1; round <= MostRound && filled.Count == before && !IsOver(); round++)
        {
            foreach (var turn in (ReadOnlySpan<int>)[round, -round])
            {
                Timed(begun, step, giving, choice, row with { From = (bearing + new Turn(turn)).HalfHours }, filled);
            }
        }
    }

    private void Timed(Beginning begun, SketchStep step, int giving, Choice choice, Row row, List<Beginning> filled)
    {
        var node = begun.Node;
        effort.Add(1);
        if (row is { Attack: < 0, Attacker: >= 0, To: < 0 } && !expander.Reaches(node.State, row.Technique, row.Attacker))
        {
            return;
        }

        var soonest = expander.Soonest(node, row, out var cue);
        if (soonest < 0)
        {
            return;
        }

        row = row with { Cue = cue };
        var some = giving == Giving.Nothing ? SomeReactions : 1;
        var all = gathering.Count <= Few * Wider || choice.Reactions.Length <= some || giving == Giving.Only(SketchPart.Reaction);
        for (var i = 0; i < Math.Max(1, all ? choice.Reactions.Length : some * Wider); i++)
        {
            var reaction = choice.Reactions.Length == 0 ? -1 : choice.Reactions[all ? i : dice.Next(choice.Reactions.Length)];
            Starting(begun, step, giving, row with { Reaction = reaction }, soonest, filled);
        }
    }

    /// <summary>At the counts that are said; where none is, as soon as it can be and a little later; where it may give, also then.</summary>
    private void Starting(Beginning begun, SketchStep step, int giving, Row row, int soonest, List<Beginning> filled)
    {
        var node = begun.Node;
        if (node is { IsOpening: true, First: >= 0 })
        {
            Start(begun, step, row with { Start = node.FirstStart }, giving, filled);
            return;
        }

        if (step.Move.Count is { } count && !begun.HasOpened)
        {
            var last = soonest - 1;
            for (var start = Math.Max(soonest, count.First.Value); start <= Math.Min(count.Last.Value, count.First.Value + Later + Later); start++)
            {
                Start(begun, step, row with { Start = start }, giving, filled);
                last = start;
            }

            for (var start = Math.Max(last + 1, count.First.Value + begun.Shift); begun.Shift != 0 && start >= soonest && start <= Math.Min(count.Last.Value, count.First.Value + Later) + begun.Shift; start++)
            {
                Start(begun, step, row with { Start = start }, giving, filled);
            }

            if (!Giving.Has(giving, SketchPart.Count))
            {
                return;
            }
        }

        var round = row.From < 0 ? 0 : new Bearing(node.State.Attackers[row.Attacker].Bearing).Apart(new Bearing(row.From)) * scene.Settle.WalkRoundPerHalfHour.Value;

        // Where something gives there is much to try: once, and as soon as can be; at every count where hardly more than that gives.
        var always = Giving.IsNarrow(giving) && Giving.Has(giving, SketchPart.Count);
        var (enough, latest) = (always ? int.MaxValue : giving == Giving.Nothing ? 2 : 1, soonest + round + (always ? longestGap : Later));
        for (var (start, found) = (soonest, 0); start <= latest && found < enough; start++)
        {
            found += Start(begun, step, row with { Start = start }, giving, filled) ? 1 : 0;
        }

        if (giving == Giving.Nothing && dice.Percent(50))
        {
            var late = Math.Min(node.State.Time + longestGap, soonest + 2 + dice.Next(8));
            Start(begun, step, row with { Start = late }, giving, filled);
        }
    }

    /// <summary>With the others put off as patience wants it; where what is said then cannot come, as little as can be.</summary>
    private bool Start(Beginning begun, SketchStep step, in Row row, int giving, List<Beginning> filled) =>
        (row.Hurt is not { } hurt || hurt.By(row, scene.Book) is not null)
        && expander.Fitted(begun.Node, row) is { } child
        && (Add(begun, step, child, filled, giving)
            || (child.LaterReturns.Length > 0 && expander.Fitted(begun.Node, row, isHasty: true) is { } hasty && Add(begun, step, hasty, filled, giving)));

    private bool Add(Beginning begun, SketchStep step, Node child, List<Beginning> filled, int giving = Giving.Nothing)
    {
        if (leads)
        {
            return Keep(PutIn(begun, child), filled);
        }

        var (late, shift) = step.Late(begun, child.Row.Start);
        if (shift != begun.Shift && !Giving.Has(giving, SketchPart.Count))
        {
            return false;
        }

        var price = late + (opens ? 0 : step.Price(begun.Node, child.Row, begun.HasOpened));
        return (price == 0 || giving != Giving.Nothing)
            && Keep(new Beginning(begun, child, begun.Price + price) { Next = begun.Next + (opens ? 0 : 1), Fills = !opens, HasOpened = opens, Shift = shift }, filled);
    }

    private bool Keep(Beginning next, List<Beginning> filled)
    {
        if (worth(next) is not { } value)
        {
            return false;
        }

        filled.Add(next with { Value = value });
        return true;
    }
}
