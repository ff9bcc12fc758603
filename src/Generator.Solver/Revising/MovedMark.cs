using Generator.Domain;

namespace Generator.Solver.Revising;

/// <summary>A mark that is elsewhere on the floor than where the routine was taught.</summary>
/// <param name="Was">Where it was; its name is empty where the fight has one mark.</param>
/// <param name="Is">Where it is.</param>
/// <param name="Moves">Positions in the new routine of the moves that begin there, from 0.</param>
public sealed record MovedMark(HeroMark Was, HeroMark Is, IReadOnlyList<int> Moves);
