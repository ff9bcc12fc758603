using Generator.Domain;
using Generator.Rules;
using Generator.Rules.Replaying;
using Generator.Solver.Constructing;
using Generator.Solver.Repertoires;

namespace Generator.Solver.Completing;

/// <summary>
/// Looks from the beginning of a filling at what the sketch still says: whether all of it can still come, and how far the situation is from what comes next.
/// Where something may give nothing is ruled out.
/// </summary>
internal sealed class SketchAhead
{
    /// <summary>Half counts that a move takes on average, the pause before it included, and the fewest and most that are no sign of trouble.</summary>
    private const double Usual = 4.4, Few = 3, Many = 8;

    /// <summary>Points for a beginning in which somebody whom nothing concerns could come before whoever is to.</summary>
    private const double Forestalled = 10;

    private readonly Scene scene;
    private readonly Aims aims;
    private readonly SketchStep[] steps;
    private readonly SketchMarks marks;
    private readonly Lingering lingering;
    private readonly int longestGap = Pace.DeadAirBreaks.Value;
    private readonly SketchForms? forms;
    private readonly SketchNeeds[] needs;
    private readonly int[] latest;
    private readonly (int Move, double Time)[] anchors;

    /// <summary>For each move and attacker the first move from there on that says something of them; −1 for none.</summary>
    private readonly int[][] firstOf;

    /// <summary>For each move the first from there on that says who attacks.</summary>
    private readonly int[] opener;

    /// <summary>For each move how many before it may be about anybody, or about somebody beside the one who is said.</summary>
    private readonly int[] open;

    /// <param name="ground">What every run shares.</param>
    /// <param name="steps">The moves of the sketch.</param>
    /// <param name="marks">Where the hero may be led.</param>
    /// <param name="lingering">Who can be put off.</param>
    /// <param name="forms">Which stances, hands and grips it takes; null not to look at them.</param>
    public SketchAhead(Ground ground, SketchStep[] steps, SketchMarks marks, Lingering lingering, SketchForms? forms)
    {
        (this.forms, this.marks) = (forms, marks);
        (scene, aims, this.steps, this.lingering) = (ground.Scene, ground.Aims, steps, lingering);
        needs = new SketchNeeds[steps.Length + 1];
        latest = new int[steps.Length + 1];
        anchors = new (int, double)[steps.Length + 1];
        firstOf = new int[steps.Length + 1][];
        firstOf[^1] = [.. Enumerable.Repeat(-1, scene.Cast)];
        opener = [.. Enumerable.Repeat(steps.Length, steps.Length + 1)];
        open = new int[steps.Length + 1];
        for (var i = 0; i < steps.Length; i++)
        {
            open[i + 1] = open[i] + (steps[i].Move.IsGap ? steps[i].Move.Open : steps[i].MayMeetTwo ? 1 : 0);
        }

        needs[^1] = SketchNeeds.None(scene.Cast);
        latest[^1] = aims.HighTime;
        anchors[^1] = (steps.Length, aims.ByTime ? aims.Total : double.NaN);
        for (var i = steps.Length - 1; i >= 0; i--)
        {
            var move = steps[i].Move;
            needs[i] = move.IsGap ? needs[i + 1].WithGap(move.Open) : needs[i + 1].With(scene, steps[i]);
            latest[i] = move.Count is { } count ? Math.Min(count.Last.Value, latest[i + 1] - 1) : latest[i + 1] == int.MaxValue ? int.MaxValue : latest[i + 1] - (move.IsGap ? 0 : 1);
            firstOf[i] = move.Attacker is { } a ? [.. firstOf[i + 1].Select((f, b) => b == a ? i : f)] : firstOf[i + 1];
            opener[i] = move is { Attacker: not null, Attack: not null } ? i : opener[i + 1];
            anchors[i] = move.Count is { } said ? (i, (said.First.Value + said.Last.Value) / 2.0) : anchors[i + 1];
        }
    }

    /// <summary>Everything that is said from a move on can still come after this beginning, as far as can be told at a glance.</summary>
    public bool MayGoOn(Node node, int next, int shift)
    {
        var (state, need) = (node.State, needs[next]);
        if (state.Time - Math.Max(0, shift) > latest[next] || forms?.MayGoOn(state, next) == false || !marks.MayGoOn(node, next))
        {
            return false;
        }

        if (scene.Brief.Setbacks is { } setbacks && (node.Setbacks + need.FewestSetbacks > setbacks || node.Setbacks + need.MostSetbacks < setbacks))
        {
            return false;
        }

        if (scene.Brief.Pauses is { } pauses && (node.Beats + need.FewestBeats > pauses || node.Beats + need.MostBeats < pauses))
        {
            return false;
        }

        for (var a = 0; a < scene.Cast; a++)
        {
            var attacker = state.Attackers[a];
            if (attacker.Posture == Posture.Out ? need.Wanted[a] : attacker.Falls + need.Falls[a] > aims.FallCaps[a] || (aims.MustOut[a] && need.Finishes[a] == 0))
            {
                return false;
            }
        }

        return Comes(node, next, shift) && FirstToCome(node, next) && FindsNext(node, next);
    }

    /// <summary>How far the beginning is from what is said next, in points.</summary>
    public double Apart(Node node, int next, int shift) => Pacing(node, next, shift) + Opener(node, next) + marks.Apart(node.State, next);

    /// <summary>Nobody of whom an attack is said comes too late for it.</summary>
    private bool Comes(Node node, int next, int shift)
    {
        for (var a = 0; a < scene.Cast; a++)
        {
            var move = firstOf[next][a];
            if (move >= 0 && steps[move].Move.Attack is not null && !marks.TravelsBetween(next, move) && node.Threats[a] is var threat && threat != int.MaxValue
                && threat - scene.Settle.ContactAfter.Value - Math.Max(0, shift) > LatestStart(move))
            {
                return false;
            }
        }

        return true;
    }

    private int LatestStart(int move) => Math.Min(steps[move].Move.Count?.Last.Value ?? int.MaxValue, latest[move + 1] == int.MaxValue ? int.MaxValue : latest[move + 1] - 1);

    /// <summary>Whoever attacks next by the sketch is not kept from it by somebody who could come sooner and whom nothing before then can concern.</summary>
    private bool FirstToCome(Node node, int next) => open[opener[next]] > open[next] || marks.TravelsBetween(next, opener[next]) || !IsForestalled(node, next);

    /// <summary>Somebody could come sooner than whoever attacks next by the sketch, and nothing said before then is of them.</summary>
    private bool IsForestalled(Node node, int next)
    {
        var move = opener[next];
        if (move == steps.Length || steps[move].Move.Attacker is not { } who || firstOf[next][who] != move || node.Threats[who] == int.MaxValue)
        {
            return false;
        }

        for (var b = 0; b < scene.Cast; b++)
        {
            if (b != who && node.Threats[b] != int.MaxValue && !(firstOf[next][b] >= 0 && firstOf[next][b] < move)
                && node.Threats[b] + lingering.Room(node, b) + HalfCounts.PerCount < node.Threats[who])
            {
                return true;
            }
        }

        return false;
    }

    private bool FindsNext(Node node, int next) =>
        next == steps.Length || steps[next].MustGive != Giving.Nothing || steps[next].Move is not { IsGap: false, FollowsUp: true, Attacker: { } who } || node.IsOpening || Finds(node, steps[next], who);

    /// <summary>A follow-up finds its attacker in a posture for which something that is said is made.</summary>
    private bool Finds(Node node, SketchStep step, int who)
    {
        var (attacker, time) = (node.State.Attackers[who], node.State.Time);
        var menu = step.Menu(who, Giving.Nothing);
        var start = Math.Max(time, step.Move.Count?.First.Value ?? 0);
        return (attacker.PostureAt(start) is { } posture && Holds(menu, posture))
            || (attacker is { Posture: Posture.Gripping, Grip: { } grip } && menu.Escapes[grip.Index].Length > 0)
            || (attacker.IsActive && attacker.ReadyAt <= (step.Move.Count?.Last.Value ?? time + longestGap) && (step.SaysTravel || Holds(menu, Posture.Ready)));
    }

    private static bool Holds(Menu menu, Posture posture) => menu.FollowUps[(int)posture].Length > 0 || menu.Beats[(int)posture].Length > 0;

    /// <summary>The moves up to the next count that is said must come out in time, neither hurried nor drawn out.</summary>
    private double Pacing(Node node, int next, int shift)
    {
        var (move, time) = anchors[next];
        if (double.IsNaN(time))
        {
            return 0;
        }

        var left = time + shift - node.State.Time;
        var each = move == steps.Length ? left / Math.Max(1, move - next) : (left + Few) / (move - next + 1);
        var off = each < Few ? Few - each : Math.Max(0, each - Many);
        return off * Math.Max(1, move - next) * 0.5;
    }

    /// <summary>Whoever attacks next according to the sketch is to be the first who can.</summary>
    private double Opener(Node node, int next)
    {
        var move = opener[next];
        if (move == steps.Length || steps[move].Move.Attacker is not { } who || firstOf[next][who] != move || marks.TravelsBetween(next, move))
        {
            return 0;
        }

        var (threat, away) = (node.Threats[who], move - next);
        if (threat == int.MaxValue)
        {
            return 2.0 / (1 + away);
        }

        // Only somebody met on the way could still make room.
        var forestalled = IsForestalled(node, next) ? Forestalled : 0;
        var late = Math.Max(0, threat - lingering.Latest(node, who));
        var by = steps[move].Move.Count is { } count ? Math.Max(0, threat - count.Last.Value - scene.Settle.ContactAfter.Value)
            : Math.Max(0, threat - node.State.Time - longestGap - (Usual * away));
        return forestalled + (((0.5 * late) + by) / (1 + (0.5 * away)));
    }
}
