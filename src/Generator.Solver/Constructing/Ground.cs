using Generator.Domain;
using Generator.Rules;
using Generator.Rules.Judging;
using Generator.Rules.Replaying;
using Generator.Solver.Repertoires;

namespace Generator.Solver.Constructing;

/// <summary>What all runs of the constructive pass for one scene share.</summary>
internal sealed class Ground
{
    private static readonly int Arc = RuleBook.IndexOf("arc");

    /// <summary>Moments at which the first move may start: at once, or after a turn or a change of stance.</summary>
    private static readonly int[] FirstStarts = [0, 2, 4];

    /// <param name="scene">The brief.</param>
    /// <param name="mayOut">Who may go out without having to; null for nobody.</param>
    public Ground(Scene scene, bool[]? mayOut = null)
    {
        Scene = scene;
        Repertoire = new Repertoire(scene);
        Aims = new Aims(scene, Repertoire, mayOut);
        Least = BriefBound.Of(scene);
        var brief = scene.Brief;
        Mark = brief.Attackers.Aggregate(
            Mixed(Mixed(Mixed(17, brief.Hero.Height.Value), brief.Tempo.CountsPerMinute), (brief.Length?.Counts ?? brief.Length?.Moves ?? 0) + (1000 * (int)brief.Arc)),
            (mark, a) => Mixed(Mixed(mark, a.Height.Value), a.Speed));
    }

    public Scene Scene { get; }

    public Repertoire Repertoire { get; }

    public Aims Aims { get; }

    /// <summary>Tells this brief from others: runs of the same seed wish for other things in another fight.</summary>
    public ulong Mark { get; }

    /// <summary>Points below which no routine of the brief can come.</summary>
    public int Least { get; }

    /// <summary>How many of the points of a beginning of this routine every routine has: those of the arc, where there are no more than <see cref="Least"/>.</summary>
    public Func<Node, int> Needed(Finish finish) =>
        finish.Node.Score.PointsByRule[Arc] <= Least ? static node => node.Score.PointsByRule[Arc] : static _ => 0;

    /// <summary>The openings of one staging: who comes first, and when.</summary>
    public IEnumerable<Node> Openings(IReadOnlyList<Placement> placements)
    {
        yield return Opening(placements, -1, 0, 0);
        for (var a = 0; a < Scene.Cast; a++)
        {
            var walk = Scene.WalkTime(a, placements[a].Distance.Value);
            if (placements[a].Entrance > HalfCounts.Zero)
            {
                yield return Opening(placements, a, Math.Max(0, placements[a].Entrance.Value + walk - Scene.Settle.ContactAfter.Value), 0);
                continue;
            }

            var soonest = walk - Scene.Settle.LeadInMost.Value - Scene.Settle.ContactAfter.Value;
            foreach (var start in FirstStarts.Select(s => Math.Max(s, soonest)).Distinct())
            {
                yield return Opening(placements, a, start);
            }
        }
    }

    private static ulong Mixed(ulong mark, int value) => unchecked((mark ^ (uint)value) * 0x9E3779B97F4A7C15UL);

    /// <summary>The opening in which this attacker comes first, at this moment; they set off before count 1 where need be.</summary>
    public Node Opening(IReadOnlyList<Placement> placements, int first, int start) =>
        Opening(placements, first, start, Replay.LeadIn(Scene, placements, new Row(start, first, -1, Cue.None, -1, -1, -1, 0)));

    private Node Opening(IReadOnlyList<Placement> placements, int first, int start, int leadIn)
    {
        var state = Replay.Open(Scene, placements, leadIn);
        return new Node
        {
            State = state,
            Score = Score.Begin(Scene, state),
            Placements = placements,
            First = first,
            FirstStart = start,
            Anchors = [.. placements.Select(_ => Node.AtEntrance)],
            Lingers = new int[Scene.Cast],
            Exchanges = new int[Scene.Cast],
            Threats = Replay.ThreatTimes(Scene, state),
        };
    }
}
