using Generator.Domain;

namespace Generator.Solver.Proving;

/// <summary>The moves of all hero moments of a brief in one list, so that a set of them is a few bits. Moments beyond 64 moves are left out.</summary>
internal sealed class WantedMoves
{
    /// <summary>More moves than this are left out.</summary>
    public const int Most = 64;

    private readonly Brief brief;
    private readonly List<MomentMove> moves = [];

    public WantedMoves(Brief brief)
    {
        this.brief = brief;
        First = [.. brief.Moments.Select(Add)];
    }

    /// <summary>Bit of the first move of each moment; −1 for one that is left out.</summary>
    public IReadOnlyList<int> First { get; }

    /// <summary>The bits of the moves that this one is.</summary>
    public ulong Of(Technique technique, Attack? attack, Reaction? reaction, int attacker)
    {
        var bits = 0UL;
        for (var i = 0; i < moves.Count; i++)
        {
            var wanted = moves[i];
            if (technique.GoesBy(wanted.Technique)
                && (wanted.Attacker is null || (attacker >= 0 && Equal(wanted.Attacker, brief.Attackers[attacker].Name)))
                && (wanted.Attack is null || (attack is null ? wanted.WantsNoAttack : attack.GoesBy(wanted.Attack)))
                && (wanted.Reaction is null || (reaction is not null && Equal(wanted.Reaction, reaction.Id))))
            {
                bits |= 1UL << i;
            }
        }

        return bits;
    }

    private static bool Equal(string one, string other) => string.Equals(one, other, StringComparison.Ordinal);

    private int Add(Moment moment)
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
