using Generator.Domain;
using Generator.Rules;
using Generator.Rules.Bodies;
using Generator.Rules.Replaying;

namespace Generator.Solver.Constructing;

/// <summary>
/// Decides afterwards how long somebody stayed down or when they came in: the later, the less they stand waiting. Putting a return off
/// later never harms what was checked before, for nearest-first only looks for the least threat time.
/// </summary>
internal sealed class Lingering(Scene scene)
{
    private const int Unlimited = 100_000;

    private readonly int patience = scene.Brief.Pace.Patience.Value;
    private readonly int tolerance = HalfCounts.PerCount;

    /// <summary>What is known of entrances at the node asked about last: many moves are tried at each.</summary>
    private readonly Dictionary<(int Attacker, int Entrance), AttackerState?> answers = [];

    private Node? asked;

    /// <summary>Half counts by which an attacker's return can still be put off.</summary>
    public int Room(Node node, int attacker) => node.Anchors[attacker] switch
    {
        Node.Fixed => 0,
        Node.AtEntrance => scene.Brief.Attackers[attacker].Entrance is null ? Unlimited : 0,
        _ => node.Lingers[attacker],
    };

    /// <summary>The latest threat time at which nearest-first still lets this attacker come, everybody else lingering as they may.</summary>
    public int Latest(Node node, int attacker)
    {
        var latest = int.MaxValue;
        for (var a = 0; a < scene.Cast; a++)
        {
            if (a != attacker && node.Threats[a] != int.MaxValue)
            {
                latest = Math.Min(latest, node.Threats[a] + Room(node, a) + tolerance);
            }
        }

        return latest;
    }

    /// <summary>
    /// The state in which the attacker may open with a contact at <paramref name="contact"/>, others put off where need be and the attacker as far
    /// as patience wants; null when nearest-first forbids it.
    /// </summary>
    /// <param name="node">Where the search stands.</param>
    /// <param name="attacker">Who opens; must be active.</param>
    /// <param name="contact">When the attack lands.</param>
    /// <param name="bears">The latest threat time that the opening bears.</param>
    /// <param name="bystanders">Who must not stand ready yet when it lands, one bit each.</param>
    /// <param name="returns">What was decided.</param>
    /// <param name="isHasty">Nobody is put off for the sake of patience: somebody may be wanted soon.</param>
    public FightState? ForOpening(Node node, int attacker, int contact, int bears, int bystanders, out LaterReturn[] returns, bool isHasty = false)
    {
        returns = [];
        var threat = node.Threats[attacker];
        var latest = Latest(node, attacker);
        if (threat > latest)
        {
            return null;
        }

        var wanted = isHasty ? threat : Math.Min(Math.Min(contact - patience, bears), Math.Min(latest, threat + Room(node, attacker)));
        var aim = Math.Max(threat, wanted);
        var decided = 0;
        AttackerState[]? attackers = null;
        if (aim > threat)
        {
            aim = PutOff(node, attacker, aim, Math.Min(bears, latest), ref attackers, ref returns, ref decided);
        }

        for (var a = 0; a < scene.Cast; a++)
        {
            if (a == attacker)
            {
                continue;
            }

            var least = aim - tolerance;
            if ((bystanders & (1 << a)) != 0)
            {
                least = Math.Max(least, contact + 1 + scene.WalkTime(a, node.State.Attackers[a].Distance));
            }

            if (node.Threats[a] < least)
            {
                PutOff(node, a, least, int.MaxValue, ref attackers, ref returns, ref decided);
            }
        }

        return Done(node, attackers, decided, ref returns);
    }

    /// <summary>The state at the end, those still in put off as far as patience wants.</summary>
    public FightState ForEnd(Node node, out LaterReturn[] returns)
    {
        returns = [];
        var decided = 0;
        AttackerState[]? attackers = null;
        for (var a = 0; a < scene.Cast; a++)
        {
            var wanted = node.State.Time - patience;
            if (node.Threats[a] < wanted)
            {
                PutOff(node, a, Math.Min(wanted, node.Threats[a] + Room(node, a)), int.MaxValue, ref attackers, ref returns, ref decided);
            }
        }

        return Done(node, attackers, decided, ref returns);
    }

    /// <summary>A state with what was decided afterwards about earlier moves.</summary>
    public static FightState With(Scene scene, FightState state, LaterReturn[] returns)
    {
        if (returns.Length == 0)
        {
            return state;
        }

        var attackers = state.Attackers.ToArray();
        foreach (var later in returns)
        {
            var was = attackers[later.Attacker];
            attackers[later.Attacker] = later.Row == Node.AtEntrance ? was.Entering(scene, later.Attacker, later.Value) : was with { ReadyAt = was.ReadyAt + later.Value };
        }

        return state with { Attackers = new FixedList<AttackerState>(attackers) };
    }

    private static FightState Done(Node node, AttackerState[]? attackers, int decided, ref LaterReturn[] returns)
    {
        if (attackers is null)
        {
            return node.State;
        }

        Array.Resize(ref returns, decided);
        return node.State with { Attackers = new FixedList<AttackerState>(attackers) };
    }

    /// <summary>Puts a return off to a threat time, or leaves it alone where that is impossible; returns the threat time then.</summary>
    private int PutOff(Node node, int attacker, int threat, int highest, ref AttackerState[]? attackers, ref LaterReturn[] returns, ref int decided)
    {
        var before = node.Threats[attacker];
        var anchor = node.Anchors[attacker];
        if (threat <= before || anchor == Node.Fixed)
        {
            return before;
        }

        if (attackers is null)
        {
            attackers = node.State.Attackers.ToArray();
            returns = new LaterReturn[attackers.Length];
        }

        var was = attackers[attacker];
        if (anchor == Node.AtEntrance)
        {
            var walk = scene.WalkTime(attacker, was.Distance);
            var entrance = Math.Max(1, threat - walk);
            if (entrance + walk > highest || ComingIn(node, attacker, entrance, attackers) is not { } enters)
            {
                return before;
            }

            attackers[attacker] = enters;
            returns[decided++] = new LaterReturn(attacker, anchor, entrance);
            return entrance + walk;
        }

        var by = threat - before;
        attackers[attacker] = was with { ReadyAt = was.ReadyAt + by };
        returns[decided++] = new LaterReturn(attacker, anchor, by);
        return threat;
    }

    /// <summary>Somebody who has not acted, coming in at that moment; null where they cannot, or would have met somebody by now.</summary>
    private AttackerState? ComingIn(Node node, int attacker, int entrance, AttackerState[] now)
    {
        if (node != asked)
        {
            answers.Clear();
            asked = node;
        }

        if (!answers.TryGetValue((attacker, entrance), out var comes))
        {
            var enters = now[attacker].Entering(scene, attacker, entrance);
            var closed = scene.Entries.To(enters.Opening.Bearing, enters.Opening.Distance).Closed is not null;
            comes = closed || (node.State.HeroWay is { } hero && WithTheHero.MeetsOnTheWay(scene, hero, enters.Way)) || Entering.MeetsOnTheFloor(scene, attacker, enters.Way, States(node)) ? null : enters;
            answers[(attacker, entrance)] = comes;
        }

        for (var b = 0; b < now.Length && comes is { } on; b++)
        {
            if (b != attacker && now[b].HasNotActed && Entering.MeetsAtTheEdge(scene, (attacker, b), on.Way, now[b], node.State.Time))
            {
                comes = null;
            }
        }

        return comes;
    }

    private static IEnumerable<FightState> States(Node? node)
    {
        for (; node is not null; node = node.Parent)
        {
            yield return node.State;
        }
    }
}
