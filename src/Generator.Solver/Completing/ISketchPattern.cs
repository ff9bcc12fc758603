using Generator.Domain;

namespace Generator.Solver.Completing;

/// <summary>A routine that fills the sketch already, and to which other fillings are to lead back.</summary>
internal interface ISketchPattern
{
    /// <summary>How far a beginning is from where the routine was, in points.</summary>
    double Apart(Beginning begun);

    /// <summary>From where the attacker of a move of the sketch came; null for a move that is free, or without an attack.</summary>
    Bearing? From(int move);
}
