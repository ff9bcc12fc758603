using Generator.Domain;

namespace Generator.Solver.Reworking;

/// <summary>Moves of a routine that are to stay as they are, told as a hero moment.</summary>
public static class Kept
{
    /// <summary>The moves from one to another, both from 0, starting within these moments.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The routine has no such moves, or one of them has no technique.</exception>
    public static Moment Run(Routine routine, int first, int last, HalfCounts? earliest, HalfCounts? latest)
    {
        if (first < 0 || last < first || last >= routine.Moves.Count)
        {
            throw new ArgumentOutOfRangeException(nameof(last), last, $"The routine has {routine.Moves.Count} moves.");
        }

        return new Moment([.. Enumerable.Range(first, last - first + 1).Select(i => Of(routine, routine.Moves[i]))], earliest, latest);
    }

    /// <summary>The moves from one to another, both from 0, at the count at which they are.</summary>
    public static Moment Run(Routine routine, int first, int last) => Run(routine, first, last, routine.Moves[first].Start, routine.Moves[first].Start);

    private static MomentMove Of(Routine routine, Move move) => new(
        move.Technique ?? throw new ArgumentOutOfRangeException(nameof(move), move.Attack, "An attack that nothing answers cannot be kept."),
        move.Attacker is { } a ? routine.Brief.Attackers[a].Name : null,
        move.Attack ?? MomentMove.NoAttack,
        move.Reaction);
}
