using Generator.Domain;
using Generator.Rules;
using Generator.Rules.Connecting;
using Generator.Rules.Judging;
using Generator.Rules.Memories;
using Generator.Rules.Replaying;
using Generator.Solver.Repertoires;
using Exposure = Generator.Rules.Rules.Exposure;

namespace Generator.Solver.Constructing;

/// <summary>What the brief asks of the whole routine, in the form in which the search looks at it.</summary>
internal sealed class Aims
{
    /// <summary>Half counts that a move takes on average, where the brief counts moves only.</summary>
    public const double Pace = 4.4;

    /// <summary>Half counts wanted between one attacker's going out and the next.</summary>
    private const double OutSpacing = 18;

    /// <summary>With more attackers than this the floor is too full for all of them at once: some go out early, others come in late.</summary>
    private const int Crowd = 5;

    /// <summary>Where there are acts: the part of the fight after which the first should go out, and how the others follow up to the end: the lower, the closer to one another at the end.</summary>
    private const double FirstOut = 0.4;

    private const double Thinning = 0.6;

    private static readonly int StoryAt = RuleBook.IndexOf("story");
    private static readonly int ClimaxAt = RuleBook.IndexOf("climax");

    private readonly int[] within;
    private readonly int mostSetbacks;
    private readonly int mostBeats;

    /// <param name="scene">The brief.</param>
    /// <param name="repertoire">What can be done.</param>
    /// <param name="mayOut">Who may go out without having to; null for nobody.</param>
    public Aims(Scene scene, Repertoire repertoire, bool[]? mayOut = null)
    {
        Scene = scene;
        var brief = scene.Brief;
        var length = brief.Length ?? new Length(null, 8 * scene.Cast, 8 * scene.Cast);
        ByTime = length.Counts is not null;
        WantedMoves = length.Moves;
        (LowTime, HighTime) = length.Counts is { } counts
            ? (2 * (counts - length.Tolerance), 2 * (counts + length.Tolerance))
            : (0, int.MaxValue);
        var slack = ByTime ? 1 : length.Tolerance;
        (LowMoves, HighMoves) = length.Moves is { } moves ? (moves - slack, moves + slack) : (0, int.MaxValue);
        Total = length.Counts is { } c ? 2 * c : length.Moves.GetValueOrDefault() * Pace;
        MustOut = [.. brief.Attackers.Select(a => brief.Ending is null || brief.Ending.Out.Contains(a.Name))];
        Outs = MustOut.Count(o => o);
        MayOut = [.. MustOut.Select((must, a) => must || mayOut?[a] == true || IsFinishedInMoment(a))];
        Last = brief.Ending?.Last is { } last ? brief.Attackers.Select(a => a.Name).ToList().IndexOf(last) : -1;
        var spacing = Outs > Crowd ? 0.75 * Total / Outs : Math.Min(OutSpacing, 0.8 * Total / Math.Max(1, Outs));
        AsksForHurts = Plan?.Acts.Any(a => a.Hurts is not null) == true;
        OutTimes = [.. Enumerable.Range(0, Outs).Select(k => Plan is not null && Outs > 1
            ? Total * (FirstOut + ((1 - FirstOut) * Math.Pow((double)k / (Outs - 1), Thinning)))
            : Total - ((Outs - 1 - k) * spacing))];
        FallCaps = [.. brief.Attackers.Select(a => Exposure.FallCap(brief, a))];
        Arc = ArcShape.Of(brief);
        Runs = [.. scene.Book.Techniques.Select(t => t.Reactions.Any(r => scene.Book.ReactionIndex(r) is >= 0 and var i && scene.Book.Reactions[i].RunsOff))];
        within = NestedMoments.Of(brief, scene.Book);
        var reading = new MomentReading(this, repertoire, within);
        Moments = [.. brief.Moments.Select(reading.Of)];
        FromSight = [.. brief.Attackers.Select((_, a) => Moments.Where(m => m.Steps[0].Attacker == a).Select(m => m.OutOfSight).OfType<int[]>().Aggregate((int[]?)null, Added))];

        // One move may fulfil several moments; where it must, nothing is kept back for each of them.
        mostSetbacks = brief.Setbacks is { } setbacks && Moments.Where((_, i) => within[i] < 0).Sum(m => m.Setbacks) <= setbacks ? setbacks : int.MaxValue;
        mostBeats = brief.Pauses is { } pauses && Moments.Where((_, i) => within[i] < 0).Sum(m => m.Beats) <= pauses ? pauses : int.MaxValue;
    }

    public Scene Scene { get; }

    /// <summary>The brief counts the routine in counts; else in moves.</summary>
    public bool ByTime { get; }

    public int LowTime { get; }

    public int HighTime { get; }

    public int? WantedMoves { get; }

    public int LowMoves { get; }

    public int HighMoves { get; }

    /// <summary>Length aimed at, in half counts (estimated where the brief counts moves).</summary>
    public double Total { get; }

    /// <summary>Who must be out at the end.</summary>
    public bool[] MustOut { get; }

    /// <summary>Who may go out: those who must, and whom a hero moment finishes although the brief does not list them.</summary>
    public bool[] MayOut { get; }

    /// <summary>How many must.</summary>
    public int Outs { get; }

    /// <summary>Who goes out last; −1 when it does not matter.</summary>
    public int Last { get; }

    /// <summary>When the first, second … should go out.</summary>
    public double[] OutTimes { get; }

    public MomentAim[] Moments { get; }

    /// <summary>For each attacker how far each bearing is from where cameras see their hero moments, in half hours, all moments added up; null where any bearing is right.</summary>
    public int[]?[] FromSight { get; }

    /// <summary>Techniques after which somebody runs off, one flag for each.</summary>
    private bool[] Runs { get; }

    /// <summary>Most falls of each attacker.</summary>
    public int[] FallCaps { get; }

    /// <summary>The arc asked for; null when it is free.</summary>
    public ArcShape? Arc { get; }

    /// <summary>The acts asked for; null for none.</summary>
    public ActPlan? Plan => Scene.Plan;

    /// <summary>Some act asks for a setback that hurts.</summary>
    public bool AsksForHurts { get; }

    /// <summary>Where an act begins on the scale of <see cref="Total"/>; after the last, where the fight ends.</summary>
    public double ActBegins(int act) => act == Plan!.Acts.Count ? Total : Plan.Begins(act) * (ByTime ? 1 : Pace);

    /// <summary>When the hero should come to a mark, on the scale of <see cref="Total"/>: the fight is shared evenly among the marks.</summary>
    public double TravelDue(int mark) => Total * (mark - 0.2) / Scene.Marks.Count;

    /// <summary>Sooner than this nobody goes there.</summary>
    public double TravelsFrom(int mark) => Total * (mark - 0.4) / Scene.Marks.Count;

    /// <summary>The act in which a move that starts then would stand bears another setback.</summary>
    public bool BearsSetback(Node node, int start) =>
        Plan is null || (Plan.ActOf(start, node.State.Moves) is var act && Setbacks(node)[act] < Plan.Acts[act].MostSetbacks);

    /// <summary>Setbacks of each act so far, where there are acts.</summary>
    public static IReadOnlyList<int> Setbacks(Node node) => ((StoryMemory)node.Score.MemoryOf(StoryAt)!).Setbacks;

    /// <summary>Where there are acts: a finish that is too light for an end, or one more attacker who runs off.</summary>
    public bool IsPoorFinish(Node node, int technique)
    {
        if (Plan is null)
        {
            return false;
        }

        var (so, finish) = ((ClimaxMemory)node.Score.MemoryOf(ClimaxAt)!, Scene.Book.Techniques[technique]);
        return (OutsIn(node.State) == Outs - 1 && finish.Weight < so.Heaviest) || (so.RunsOff > 0 && Runs[technique]);
    }

    /// <summary>How far the routine has come on the scale of <see cref="Total"/>.</summary>
    public double Progress(FightState state) => ByTime ? state.Time : state.Moves * Pace;

    /// <summary>How many moves more than the time would want there have been, where the brief asks for both counts and moves; else 0.</summary>
    public double MovesAhead(FightState state) => ByTime && WantedMoves is { } moves ? state.Moves - (state.Time * moves / Total) : 0;

    /// <summary>The layer of the beam in which a state is compared with others: its time or its number of moves.</summary>
    public int LayerOf(FightState state) => ByTime ? state.Time : state.Moves;

    /// <summary>Nodes to keep in a layer, from those of a layer of time: a layer of moves holds more that differ.</summary>
    public int Width(int nodes) => ByTime ? nodes : 4 * nodes;

    public int LastLayer => ByTime ? HighTime : HighMoves;

    /// <summary>How many of those who must be out are.</summary>
    public int OutsIn(FightState state)
    {
        var outs = 0;
        for (var a = 0; a < MustOut.Length; a++)
        {
            outs += MustOut[a] && state.Attackers[a].Posture == Posture.Out ? 1 : 0;
        }

        return outs;
    }

    /// <summary>Setbacks that may still come.</summary>
    public int SetbacksLeft(Node node) => (Scene.Brief.Setbacks ?? int.MaxValue) - node.Setbacks;

    /// <summary>A routine that begins like this can still become what the brief asks.</summary>
    public bool MayGoOn(Node node)
    {
        var state = node.State;
        if (state.Time > HighTime || state.Moves > HighMoves || node.Setbacks > (Scene.Brief.Setbacks ?? int.MaxValue) || node.Beats > (Scene.Brief.Pauses ?? int.MaxValue))
        {
            return false;
        }

        return OutsKeepOrder(state) && MomentsStillPossible(node) && KeepsForMoments(node);
    }

    /// <summary>The moment comes about with another that holds it and is still to come.</summary>
    public bool IsWaiting(Node node, int moment) => within[moment] is >= 0 and var holder && !node.HasDone(holder);

    /// <summary>Setbacks and beats that hero moments still need have not been spent on others.</summary>
    private bool KeepsForMoments(Node node)
    {
        var (setbacks, beats) = (node.Setbacks, node.Beats);
        for (var m = 0; m < Moments.Length; m++)
        {
            if (!node.HasDone(m) && node.Moment != m && !IsWaiting(node, m))
            {
                setbacks += Moments[m].Setbacks;
                beats += Moments[m].Beats;
            }
        }

        return setbacks <= mostSetbacks && beats <= mostBeats;
    }

    /// <summary>A routine may end here, as far as can be told without the rules.</summary>
    public bool MayEnd(Node node)
    {
        var state = node.State;
        return state.Time >= LowTime && state.Moves >= LowMoves
            && state.Mark == Scene.Marks.Count - 1
            && OutsIn(state) == Outs
            && node.Setbacks == (Scene.Brief.Setbacks ?? node.Setbacks) && node.Beats == (Scene.Brief.Pauses ?? node.Beats)
            && node.MomentsDone == (1L << Moments.Length) - 1
            && state.Bound == Bound.Free && IsFree(state.Left) && IsFree(state.Right);
    }

    private static int[] Added(int[]? sum, int[] away) => sum is null ? away : [.. sum.Zip(away, static (x, y) => x + y)];

    private bool IsFinishedInMoment(int attacker) => Scene.Brief.Moments.SelectMany(m => m.Moves).Any(m =>
        (m.Attacker is { } name ? string.Equals(name, Scene.Brief.Attackers[attacker].Name, StringComparison.Ordinal) : Outs == 0)
        && Scene.Book.Techniques.Any(t => t.Family == Family.Finish && t.GoesBy(m.Technique)));

    /// <summary>How far each bearing is from one at which an attacker should be for the sake of a moment that is coming, in half hours; null where any is right.</summary>
    public int[]? OutOfSight(Node node, int attacker)
    {
        for (var m = 0; m < Moments.Length; m++)
        {
            if (!node.HasDone(m) && Moments[m].OutOfSightFor(attacker, node.State.Time) is { } away)
            {
                return away;
            }
        }

        return null;
    }

    /// <summary>How far each bearing is from one at which an attacker should be for the sake of a thing at which a moment that is coming is done, in half hours; null where any is right.</summary>
    public int[]? OffThing(Node node, int attacker)
    {
        for (var m = 0; m < Moments.Length; m++)
        {
            if (Moments[m].Place is { } place && !node.HasDone(m) && !IsWaiting(node, m) && place.HalfHoursOff(node.State, attacker, Moments[m].Due) is { } away)
            {
                return away;
            }
        }

        return null;
    }

    private static bool IsFree(Hand hand) => hand.Kind is HandKind.Guard or HandKind.Out;

    /// <summary>Nobody else goes out who should not, the last one goes last, and somebody is left until the end.</summary>
    private bool OutsKeepOrder(FightState state)
    {
        var (left, lastOutAt, otherOutAt) = (0, -1, -1);
        for (var a = 0; a < MustOut.Length; a++)
        {
            if (state.Attackers[a].OutAt < 0)
            {
                left++;
                if (a != Last && MustOut[a] && Last >= 0 && state.Attackers[Last].OutAt >= 0)
                {
                    return false;
                }
            }
            else if (!MayOut[a])
            {
                return false;
            }
            else if (a == Last)
            {
                lastOutAt = state.Attackers[a].OutAt;
            }
            else
            {
                otherOutAt = Math.Max(otherOutAt, state.Attackers[a].OutAt);
            }
        }

        return (lastOutAt < 0 || otherOutAt < lastOutAt) && (left > 0 || (state.Time >= LowTime && state.Moves >= LowMoves));
    }

    private bool MomentsStillPossible(Node node)
    {
        for (var m = 0; m < Moments.Length; m++)
        {
            var started = node.Moment == m;
            if (node.HasDone(m) || IsWaiting(node, m))
            {
                continue;
            }

            if (!started && (node.State.Time > Moments[m].Latest || node.State.Mark > Moments[m].Marks.Last || Moments[m].Prop?.IsLost(node.State) == true || Moments[m].MovesBefore(node.State, SetbacksLeft(node)) == FormRoutes.Never))
            {
                return false;
            }

            for (var s = started ? node.MomentMoves : 0; s < Moments[m].Steps.Length; s++)
            {
                if (Moments[m].Steps[s].Attacker is >= 0 and var a && node.State.Attackers[a].OutAt >= 0)
                {
                    return false;
                }
            }
        }

        return true;
    }
}
