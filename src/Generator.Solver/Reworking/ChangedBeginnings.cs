using Generator.Domain;
using Generator.Rules.Replaying;
using Generator.Solver.Constructing;

namespace Generator.Solver.Reworking;

/// <summary>
/// The beginnings of one number of changes, of which so many go on for each number of changed moves. What cannot be among them is let go while others are still being
/// made: each holds all its moves, and there may be some hundred thousand of them.
/// </summary>
/// <param name="ground">What the search shares.</param>
/// <param name="guide">The old routine.</param>
/// <param name="mostMoves">Beginnings with more changed moves are not wanted.</param>
/// <param name="width">How many of one number of changed moves are asked for at most.</param>
internal sealed class ChangedBeginnings(Ground ground, Guide guide, Func<int> mostMoves, int width)
{
    /// <summary>Beginnings held before it is looked which of them to let go.</summary>
    private const int Few = 4096;

    private List<ChangedBeginning> held = [];
    private int mostHeld = Few;

    public void Add(ChangedBeginning begun)
    {
        held.Add(begun);
        if (held.Count >= mostHeld)
        {
            held = Best(width);
            mostHeld = Math.Max(Few, 2 * held.Count);
        }
    }

    /// <summary>
    /// So many for each number of changed moves and of what they still owe, since one that owes nothing mostly does not come as far as one that changes next to nothing; those that come
    /// farthest first. Once something was found, only those that can still end with fewer.
    /// </summary>
    public List<ChangedBeginning> Best(int number) =>
    [
        .. held.Where(s => s.Moves <= mostMoves())
            .OrderByDescending(s => s.Next).ThenBy(Owed).ThenBy(s => s.Trail[^1].Track!.Min())
            .DistinctBy(s => (s.Next, s.Moves, Owed(s), Key(s.Trail[^1].State)))
            .GroupBy(s => (s.Moves, Owed: Owed(s))).OrderBy(g => g.Key)
            .SelectMany(g => g.Take(number)),
    ];

    /// <summary>Setbacks and pauses that there will be too few or too many of when the rest stays as it was, and marks to which the hero will not come.</summary>
    public int Owed(ChangedBeginning begun)
    {
        var (brief, node) = (ground.Scene.Brief, begun.Trail[^1]);
        var (setbacks, beats) = (node.Setbacks, node.Beats);
        for (var move = begun.Next; move < guide.Old.Count; move++)
        {
            if (guide.Old[move].Row.Technique is >= 0 and var t && ground.Scene.Book.Techniques[t] is var technique)
            {
                setbacks += technique.Family == Family.Setback ? 1 : 0;
                beats += technique.IsStoryPause ? 1 : 0;
            }
        }

        return Math.Abs((brief.Setbacks ?? setbacks) - setbacks) + Math.Abs((brief.Pauses ?? beats) - beats) + guide.MarksLeft(node, begun.Next);
    }

    private static int Key(FightState state) =>
        HashCode.Combine(state.Stance, state.Facing, state.Left, state.Right, state.Time, state.Attackers.Aggregate(0, (hash, a) => HashCode.Combine(hash, a.Posture, a.ReadyAt, a.Bearing)));
}
