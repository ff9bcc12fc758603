using Generator.Domain;
using Generator.Rules;

namespace Generator.Solver.Proving;

/// <summary>The moves of all hero moments of a brief in one list, so that a set of them is a few bits. Moments beyond 64 moves are left out.</summary>
internal sealed class WantedMoves
{
    /// <summary>More moves than this are left out.</summary>
    public const int Most = 64;

    // Of each technique, attack, reaction and attacker the moves that they suit; the first of each but the techniques is nobody and nothing.
    private readonly ulong[] techniques;
    private readonly ulong[] attacks;
    private readonly ulong[] reactions;
    private readonly ulong[] attackers;

    public WantedMoves(Scene scene)
    {
        var moves = new List<MomentMove>();
        First = [.. scene.Brief.Moments.Select(m => Add(moves, m))];
        techniques = [.. scene.Book.Techniques.Select(t => Bits(moves, m => t.GoesBy(m.Technique)))];
        attacks = [Bits(moves, m => m.Attack is null || m.WantsNoAttack), .. scene.Book.Attacks.Select(a => Bits(moves, m => m.Attack is null || a.GoesBy(m.Attack)))];
        reactions = [Bits(moves, m => m.Reaction is null), .. scene.Book.Reactions.Select(r => Bits(moves, m => m.Reaction is null || string.Equals(m.Reaction, r.Id, StringComparison.Ordinal)))];
        attackers = [Bits(moves, m => m.Attacker is null), .. scene.Brief.Attackers.Select(a => Bits(moves, m => m.Attacker is null || string.Equals(m.Attacker, a.Name, StringComparison.Ordinal)))];
    }

    /// <summary>Bit of the first move of each moment; −1 for one that is left out.</summary>
    public IReadOnlyList<int> First { get; }

    /// <summary>The bits of the moves that this can be if the reaction suits; −1 for no attack and for no attacker.</summary>
    public ulong Of(int technique, int attack, int attacker) => techniques[technique] & attacks[attack + 1] & attackers[attacker + 1];

    /// <summary>The bits of the moves that a reaction suits; −1 for none.</summary>
    public ulong OfReaction(int reaction) => reactions[reaction + 1];

    private static ulong Bits(List<MomentMove> moves, Func<MomentMove, bool> suits) =>
        moves.Select((move, i) => suits(move) ? 1UL << i : 0).Aggregate(0UL, (all, bit) => all | bit);

    private static int Add(List<MomentMove> moves, Moment moment)
    {
        if (moves.Count + moment.Moves.Count > Most)
        {
            return -1;
        }

        var first = moves.Count;
        moves.AddRange(moment.Moves);
        return first;
    }
}
