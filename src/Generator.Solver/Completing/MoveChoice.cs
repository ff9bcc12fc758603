namespace Generator.Solver.Completing;

/// <summary>Attack, technique and reaction of one move, as positions in the book; −1 where there is none.</summary>
internal readonly record struct MoveChoice(int Attack, int Technique, int Reaction);
