using Generator.Domain;

namespace Generator.Solver.Reworking;

/// <summary>
/// What is different between two routines, move by move: aligned so that the fewest moves are changed, added or dropped, and among
/// those the counts shift least.
/// </summary>
public sealed record RoutineChange
{
    /// <summary>In order; every move of both routines once.</summary>
    public required IReadOnlyList<MoveChange> Moves { get; init; }

    /// <summary>Half counts by which entrances changed, and one for each attacker who opens somewhere else.</summary>
    public int Opening { get; init; }

    /// <summary>Moves that are changed, added or dropped.</summary>
    public int Changed => Moves.Count(m => m.Kind >= ChangeKind.Changed);

    /// <summary>Half counts by which everything else shifts.</summary>
    public int Shift => Opening + Moves.Sum(m => m.Shift);

    /// <summary>Nothing is different.</summary>
    public bool IsNothing => Changed == 0 && Shift == 0;

    /// <summary>Compares two routines whose attackers are numbered alike.</summary>
    public static RoutineChange Between(Routine old, Routine now) => new()
    {
        Moves = Alignment.Of(old.Moves, now.Moves, ShiftOf),
        Opening = old.Placements.Zip(now.Placements, Moved).Sum(),
    };

    /// <summary>The same people do the same and go to the same mark; only counts, lingers, cues, bearings and what is hurt may differ.</summary>
    public static bool IsSame(Move old, Move now) =>
        old.Attacker == now.Attacker && Equal(old.Technique, now.Technique) && Equal(old.Attack, now.Attack) && Equal(old.Reaction, now.Reaction) && old.To == now.To;

    private static bool Equal(string? one, string? other) => string.Equals(one, other, StringComparison.Ordinal);

    private static int Moved(Placement old, Placement now) =>
        Math.Abs(old.Entrance.Value - now.Entrance.Value) + (old.Bearing == now.Bearing && old.Distance == now.Distance ? 0 : 1);

    /// <summary>Half counts by which a move that stays shifts, and one each for another cue, another bearing and another hurt.</summary>
    internal static int ShiftOf(Move old, Move now) =>
        Math.Abs(old.Start.Value - now.Start.Value) + Math.Abs(old.Linger.Value - now.Linger.Value) + (old.Cue == now.Cue ? 0 : 1) + (old.From == now.From ? 0 : 1) + (old.Hurts == now.Hurts ? 0 : 1);
}
