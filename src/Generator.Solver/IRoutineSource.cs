using Generator.Domain;
using Generator.Rules;
using Generator.Rules.Judging;

namespace Generator.Solver;

/// <summary>A part of the engine that finds routines for a brief.</summary>
public interface IRoutineSource
{
    /// <summary>What it is called in progress and results.</summary>
    string Name { get; }

    /// <summary>Searches until it can say no more, or is stopped.</summary>
    /// <param name="scene">The brief as drafted, worked out.</param>
    /// <param name="options">Seed and time.</param>
    /// <param name="found">To be told of every better routine, with its audit; may be called from any thread.</param>
    /// <param name="inHand">Cancelled once the constructive pass has a routine: it betters it quicker than the slower parts would find another.</param>
    /// <param name="stop">Ends the search.</param>
    SourceEnd Run(Scene scene, DraftOptions options, Action<Routine, Verdict> found, CancellationToken inHand, CancellationToken stop);
}
