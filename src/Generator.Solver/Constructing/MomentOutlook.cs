namespace Generator.Solver.Constructing;

/// <summary>What hero moments that do not stand yet will cost, in points: those that are due, and how far people, things and props are from what they need.</summary>
/// <param name="aims">What the brief asks for.</param>
/// <param name="fetching">How attackers are brought into sight for a hero moment; null for not at all.</param>
internal sealed class MomentOutlook(Aims aims, Fetching? fetching)
{
    /// <summary>Half counts before the end of a hero moment's window at which the search begins to look for its attacker.</summary>
    private const int Foresight = 44;

    /// <summary>Half hours out of sight from which farther is no worse.</summary>
    private const double FarOut = 3;

    private readonly int cast = aims.Scene.Cast;

    public double Of(Node node)
    {
        var owed = 0.0;
        for (var m = 0; m < aims.Moments.Length; m++)
        {
            if (!node.HasDone(m) && !aims.IsWaiting(node, m))
            {
                owed = And(owed, node, m);
            }
        }

        return owed;
    }

    /// <summary>What others are owed, and this one.</summary>
    private double And(double owed, Node node, int m)
    {
        var (aim, begun) = (aims.Moments[m], node.Moment == m);
        var share = begun ? 1 - ((node.MomentMoves + 1.0) / (aim.Steps.Length + 1)) : 1;
        var late = node.State.Time - aim.DueFrom(begun ? 0 : aim.MovesBefore(node.State, aims.SetbacksLeft(node)));
        owed += share * (late < 0 ? 0 : Math.Min(12, 2 + (0.25 * late)));
        if (!begun)
        {
            owed += late > -Foresight && aim.Pairing is { } pairing ? pairing.Owed(node.State) : 0;
            owed += aim.Place?.Owed(node.State, aim.Due) ?? 0;
            owed += aim.Prop?.Owed(node.State, aim.Due) ?? 0;
        }

        var a = aim.Steps[0].Attacker;
        if (a < 0)
        {
            return owed;
        }

        if (fetching is not null && aim.OutOfSightFor(a, node.State.Time) is { } away)
        {
            owed += fetching.Unseen * Math.Min(1, away[node.State.Attackers[a].Bearing] / FarOut);
        }

        return owed + (!begun && aim.Latest - node.State.Time < Foresight ? OutOfHand(node, a, aim.Latest) : 0);
    }

    /// <summary>How far the attacker of a hero moment is from being there in time.</summary>
    private double OutOfHand(Node node, int a, int latest)
    {
        var (state, attacker) = (node.State, node.State.Attackers[a]);
        var spent = attacker.Falls >= aims.FallCaps[a] ? 3.0 : 0;
        if (!attacker.IsActive || attacker.OpenUntil >= state.Time)
        {
            return spent;
        }

        var ahead = 0;
        for (var other = 0; other < cast; other++)
        {
            ahead += other != a && node.Threats[other] < node.Threats[a] ? 1 : 0;
        }

        var there = Math.Max(node.Threats[a], state.Time + (0.5 * Outlook.ServiceTime * ahead));
        return spent + (0.4 * Math.Max(0, there + 4 - latest));
    }
}
