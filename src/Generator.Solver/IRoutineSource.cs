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
    /// <param name="plan">The best routine that anybody has so far, as a hint; null while there is none.</param>
    /// <param name="found">To be told of every better routine, with its audit; may be called from any thread.</param>
    /// <param name="stop">Ends the search.</param>
    SourceEnd Run(Scene scene, DraftOptions options, Func<Routine?> plan, Action<Routine, Verdict> found, CancellationToken stop);
}
