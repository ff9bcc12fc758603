namespace Generator.Solver.Reworking;

/// <summary>What became of one move.</summary>
/// <param name="Kind">What happened.</param>
/// <param name="Old">Position in the old routine, from 0; −1 for one that was added.</param>
/// <param name="Now">Position in the new routine, from 0; −1 for one that was dropped.</param>
/// <param name="Shift">Half counts by which start and linger changed, and one each for another cue and another bearing; 0 unless shifted.</param>
public readonly record struct MoveChange(ChangeKind Kind, int Old, int Now, int Shift);
