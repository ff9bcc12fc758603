using Generator.Domain;
using Generator.Rules;
using Generator.Rules.Replaying;
using Generator.Solver.Repertoires;

namespace Generator.Solver.Constructing;

/// <summary>From a move that fits to the children that it makes.</summary>
internal sealed partial class Expander
{
    /// <summary>Moves tried besides of each kind with a prop, where the brief has some: they are few of all that could be done, and whoever brings a stick means it.</summary>
    private const int PropTries = 4;

    /// <summary>What is tried first of somebody's attacks, and how many of all that they could come with besides: whoever holds a prop mostly comes with it.</summary>
    private (Choice[] First, int Others) Tries(Node node, int a, Menu menu, int aimed)
    {
        if (aimed > 0 || thorough)
        {
            return ([], aimed > 0 ? aimed : openingTries);
        }

        if (menu.Armed.Length > 0 && (node.State.PropIn(a, Side.Left) >= 0 || node.State.PropIn(a, Side.Right) >= 0))
        {
            return (menu.Armed, Math.Max(1, openingTries / 2));
        }

        return (menu.Suiting, menu.Suiting.Length > 0 ? UnsuitingTries : openingTries);
    }

    /// <summary>Tries everything that fulfils one move of a hero moment.</summary>
    private void Aim(Node node, MomentStep step, List<Node> children)
    {
        for (var a = 0; a < scene.Cast; a++)
        {
            if (step.Menus[a] is { } menu && (!node.IsOpening || node.First == a))
            {
                OnAttacker(node, a, menu, int.MaxValue, children, step.Earliest(node.MomentsDone));
            }
        }

        NoTarget(node, step.NoTargets, children);
        foreach (var (row, reactions) in travelling?.Rows(node, longestGap, true, step.Travels) ?? [])
        {
            var start = Math.Max(row.Start, step.Earliest(node.MomentsDone));
            if (start <= node.State.Time + longestGap)
            {
                Grow(node, row with { Start = start }, reactions, children);
            }
        }
    }

    private void WithProps(Node node, int a, Choice[] choices, int least, int most, List<Node> children)
    {
        if (!thorough)
        {
            Some(node, a, choices, least, most, PropTries, false, children);
        }
    }

    /// <summary>Makes a child of a move as it stands; null when a rule or the brief forbids it.</summary>
    public Node? AsWritten(Node node, in Row row)
    {
        if (maker.Child(node, node.State, [], row, Opens(node.State, row)) is not { } child)
        {
            return null;
        }

        child.Track = guide?.After(node, row);
        return child;
    }

    /// <summary>Makes a child of a move, with whatever earlier lingers and entrances it needs; null when that does not help either.</summary>
    /// <param name="node">Where the search stands.</param>
    /// <param name="row">The move.</param>
    /// <param name="isHasty">Nobody is put off for the sake of patience.</param>
    public Node? Fitted(Node node, in Row row, bool isHasty = false)
    {
        var one = new List<Node>(1);
        return Grow(node, row, one, isHasty) ? one[0] : null;
    }

    /// <summary>A technique without an attack before it finds its target within its reach.</summary>
    public bool Reaches(FightState state, int technique, int a)
    {
        var (reach, distance) = (scene.TechniqueReach(technique, a), state.Attackers[a].Distance);
        return distance >= reach.Least && distance <= reach.Most + (a == state.LastTarget ? state.Followed : 0);
    }

    /// <summary>Whoever must go out does so when it is time; a hero moment finishes whom it wants.</summary>
    private bool MayFinish(Node node, int a, bool aimed)
    {
        if (!aims.MayOut[a])
        {
            return false;
        }

        var done = aims.OutsIn(node.State);
        return thorough || aimed || (aims.MustOut[a] && done < aims.Outs && aims.Progress(node.State) >= aims.OutTimes[done] - 24);
    }

    private void NoTarget(Node node, Choice[] choices, List<Node> children)
    {
        if (node.IsOpening && node.First >= 0)
        {
            return;
        }

        foreach (var choice in choices)
        {
            var start = fitting.StartOf(node.State, -1, choice, 0, 0, longestGap, out _);
            if (start >= 0)
            {
                Grow(node, new Row(start, -1, -1, Cue.None, -1, choice.Technique, -1, 0), children);
            }
        }
    }

    /// <summary>The same move with every reaction.</summary>
    private bool Grow(Node node, in Row row, int[] reactions, List<Node> children)
    {
        var grown = reactions.Length == 0 && Grow(node, row, children);
        foreach (var reaction in reactions)
        {
            grown |= Grow(node, row with { Reaction = reaction }, children);
        }

        return grown;
    }

    /// <summary>The move begins an exchange.</summary>
    public static bool Opens(FightState state, in Row row) => row.Attacker >= 0 && (row.Attack >= 0 || row.Attacker != state.LastTarget);

    /// <summary>Steps, lets the rules look, and keeps the child when nothing forbids it.</summary>
    private bool Grow(Node node, in Row row, List<Node> children, bool isHasty = false)
    {
        var state = node.State;
        LaterReturn[] returns = [];
        var opens = Opens(state, row);
        if (opens && node.Threats[row.Attacker] != int.MaxValue)
        {
            var contact = row.Start + scene.Settle.ContactAfter.Value;
            var bearing = row.From < 0 ? state.Attackers[row.Attacker].Bearing : row.From;
            var close = row.Attack < 0 ? 0 : bystanders.At(node, row.Attacker, row.Attack, bearing, row.Start);
            if (close is null || lingering.ForOpening(node, row.Attacker, contact, Bears(node, row, contact), close.Value, out returns, isHasty) is not { } ready)
            {
                return false;
            }

            state = ready;
        }

        if (maker.Child(node, state, returns, row, opens) is not { } child)
        {
            return false;
        }

        child.Track = guide?.After(node, row);
        children.Add(child);
        return true;
    }

    /// <summary>The latest threat time that the move itself bears: an attack must not land before it, a ready target must still be ready.</summary>
    private int Bears(Node node, in Row row, int contact)
    {
        if (row.Attack < 0)
        {
            var attacker = node.State.Attackers[row.Attacker];
            return attacker.PostureAt(row.Start) == Posture.Ready ? row.Start + scene.WalkTime(row.Attacker, attacker.Distance) : node.Threats[row.Attacker];
        }

        var round = row.From < 0 ? 0 : new Bearing(node.State.Attackers[row.Attacker].Bearing).Apart(new Bearing(row.From));
        return contact - (round * scene.Settle.WalkRoundPerHalfHour.Value);
    }
}
