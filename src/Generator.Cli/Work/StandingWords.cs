using Generator.Solver;
using Generator.Solver.Questions;

namespace Generator.Cli.Work;

/// <summary>How the standing of a draft is said, in text and in JSON alike.</summary>
internal static class StandingWords
{
    public static string Of(Standing standing) => standing switch
    {
        Standing.Perfect => "perfect",
        Standing.ProvenBest => "proven best",
        _ => "best found",
    };
}
