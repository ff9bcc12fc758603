using Generator.Domain;
using Generator.Rules.Replaying;
using Generator.Solver.Constructing;
using Generator.Solver.Repertoires;

namespace Generator.Solver.Completing;

/// <summary>
/// Where the moves of a sketch may lead the hero. A travel move that is written leads where it says; a row that leaves the technique open leads on to the next mark of the brief where a mark
/// written later could not be reached in the order of the brief else, and, where none is written any more, once the fight has come so far.
/// </summary>
/// <param name="aims">When a mark is due.</param>
/// <param name="steps">The moves of the sketch.</param>
internal sealed class SketchMarks(Aims aims, SketchStep[] steps)
{
    /// <summary>Points for each half hour by which whoever leads the hero on stands too far round, and what it counts the less for each move before.</summary>
    private const double TooFarRound = 0.5, LessBefore = 0.3;

    /// <summary>From how many moves before it is looked where they stand.</summary>
    private const int Near = 4;

    /// <summary>Points for each mark of the brief that would be passed over.</summary>
    private const double Skip = 6;

    private readonly int count = aims.Scene.Marks.Count;

    /// <summary>For each move that says a travel move, and each mark and attacker, how far each bearing is from one from which they lead the hero on, in half hours; null where nobody need.</summary>
    private readonly Dictionary<(int Move, int Mark, int Attacker), int[]?> away = [];

    /// <summary>For each move, and behind the last, the first from there on that says to which mark it leads; −1 for none.</summary>
    private readonly int[] named = Named(steps);

    /// <summary>For each move how many before it say a travel move.</summary>
    private readonly int[] said = Said(steps);

    /// <summary>The marks to which a move may lead from where the hero stands.</summary>
    /// <param name="state">How it stands before the move.</param>
    /// <param name="index">The move.</param>
    /// <param name="giving">What of it may give.</param>
    public IEnumerable<int> From(FightState state, int index, int giving)
    {
        if (count == 1)
        {
            return [];
        }

        var (step, mark) = (steps[index], state.Mark);
        var isOpen = step.Move.To is null ? step.MayTravel || Giving.Has(giving, SketchPart.Technique) : Giving.Has(giving, SketchPart.Place) || Giving.Has(giving, SketchPart.Technique);
        return step.Move.To is { } to ? [.. to == mark ? [] : (int[])[to], .. isOpen && mark + 1 != to && mark + 1 < count && (named[index + 1] < 0 || IsNeeded(mark, index + 1)) ? (int[])[mark + 1] : []]
            : step.SaysTravel ? mark + 1 < count ? [mark + 1] : Enumerable.Range(0, mark)
            : isOpen && GoesOn(state, index + 1) ? [mark + 1] : [];
    }

    /// <summary>The mark to which something that is put in before a move may lead; none where nothing needs it.</summary>
    public IEnumerable<int> Before(FightState state, int next) => count > 1 && IsNeeded(state.Mark, next) ? [state.Mark + 1] : [];

    /// <summary>A row that nobody wrote anything of may stand before a move: it leads nowhere, or on.</summary>
    public bool MayStand(FightState before, in Row row, int next) => row.To < 0 || GoesOn(before, next);

    /// <summary>Where the next move says a travel move, the hero does not stand on its mark, and somebody is there who leads them on, or they go by themselves.</summary>
    public bool MayGoOn(Node node, int next)
    {
        if (count == 1 || next == steps.Length || !steps[next].SaysTravel || node.IsOpening)
        {
            return true;
        }

        var state = node.State;
        foreach (var menu in From(state, next, Giving.Nothing).Select(to => steps[next].Travels(state.Mark, to, Giving.Nothing)))
        {
            if (menu.ByWill.Length > 0 || Enumerable.Range(0, state.Attackers.Count).Any(a => state.Attackers[a].IsActive && (menu.Answers[a].Length > 0 || Stalks(state, next, menu, a))))
            {
                return true;
            }
        }

        return false;
    }

    /// <summary>They come after the hero the right way, and are ready in time; of who has not come in yet nobody knows from where they will.</summary>
    private bool Stalks(FightState state, int move, TravelMenu menu, int a) =>
        state.Attackers[a].ReadyAt <= (steps[move].Move.Count?.Last.Value ?? (state.Time + Pace.DeadAirBreaks.Value))
        && Array.Exists(menu.Stalks[a], c => state.Attackers[a].HasNotActed || Constructing.Travelling.Leads(aims.Scene, state, c, state.Attackers[a].Bearing, menu.Heading));

    /// <summary>Some move from one on up to another, which is not counted, says that the hero travels: who can come when is another matter then.</summary>
    public bool TravelsBetween(int from, int to) => said[to] > said[from];

    /// <summary>How far the hero is from the mark before the one that is written next, and whoever leads them on in the next travel move from where they do, in points.</summary>
    public double Apart(FightState state, int next) => Skipped(state, next) + Round(state, next);

    private double Skipped(FightState state, int next) => named[next] < 0 ? 0 : Skip * Math.Max(0, steps[named[next]].Move.To!.Value - state.Mark - 1);

    private double Round(FightState state, int next)
    {
        if (count == 1 || Array.FindIndex(steps, next, Math.Min(Near, steps.Length - next), s => s is { SaysTravel: true, Move.Attacker: not null }) is not (>= 0 and var move))
        {
            return 0;
        }

        var a = steps[move].Move.Attacker!.Value;
        return Away(move, state.Mark, a) is { } round ? TooFarRound * round[state.Attackers[a].Bearing] / (1 + (LessBefore * (move - next))) : 0;
    }

    private int[]? Away(int move, int mark, int attacker)
    {
        if (!away.TryGetValue((move, mark, attacker), out var round))
        {
            away[(move, mark, attacker)] = round = (steps[move].Move.To ?? mark + 1) is var to && to < count && to != mark ? Away(steps[move].Travels(mark, to, Giving.Nothing), attacker) : null;
        }

        return round;
    }

    private int[]? Away(TravelMenu menu, int attacker)
    {
        var heading = new Bearing(menu.Heading);
        int[] leads = [.. menu.Answers[attacker].Concat(menu.Stalks[attacker]).Select(c => aims.Scene.Book.Techniques[c.Technique]).Distinct()
            .SelectMany(t => Enumerable.Range(0, Bearing.Circle).Where(f => t.Travel!.Heads.Contains(new Bearing(f).To(heading))).SelectMany(f => Enumerable.Range(0, Bearing.Circle).Where(b => t.Window.Contains(new Bearing(f).To(new Bearing(b))))))
            .Distinct()];
        return menu.ByWill.Length > 0 || leads.Length is 0 or Bearing.Circle ? null : [.. Enumerable.Range(0, Bearing.Circle).Select(b => leads.Min(l => new Bearing(b).Apart(new Bearing(l))))];
    }

    private bool GoesOn(FightState state, int next) => state.Mark + 1 < count
        && (named[next] < 0 ? aims.Progress(state) >= aims.TravelsFrom(state.Mark + 1) : IsNeeded(state.Mark, next));

    /// <summary>The mark written next is one farther on than the next one, or the one on which the hero stands.</summary>
    private bool IsNeeded(int mark, int next) => mark + 1 < count && named[next] >= 0 && steps[named[next]].Move.To!.Value is var to && (to > mark + 1 || to == mark);

    private static int[] Named(SketchStep[] steps)
    {
        int[] first = [.. Enumerable.Repeat(-1, steps.Length + 1)];
        for (var i = steps.Length - 1; i >= 0; i--)
        {
            first[i] = steps[i].Move.To is null ? first[i + 1] : i;
        }

        return first;
    }

    private static int[] Said(SketchStep[] steps)
    {
        var before = new int[steps.Length + 1];
        for (var i = 0; i < steps.Length; i++)
        {
            before[i + 1] = before[i] + (steps[i].SaysTravel ? 1 : 0);
        }

        return before;
    }
}
