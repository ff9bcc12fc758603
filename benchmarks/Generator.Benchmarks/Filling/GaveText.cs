using Generator.Library;
using Generator.Rules;
using Generator.Solver.Completing;

namespace Generator.Benchmarks.Filling;

/// <summary>What gave in a sketch that was completed, and why: one line each.</summary>
internal static class GaveText
{
    public static void Show(Completed completed, Book book)
    {
        var scene = new Scene(completed.Routine.Brief, book);
        foreach (var gave in completed.Gave)
        {
            var move = gave.Move < completed.Sketch.Moves.Count ? completed.Sketch.Moves[gave.Move] : null;
            var now = gave.Row < 0 ? null : completed.Routine.Moves[gave.Row];
            Console.WriteLine($"  line {move?.Line} {gave.Part}: {move?.Attack?.Text} > {move?.Technique?.Text} is {now?.Attack} > {now?.Technique}: {WhyGave.Of(completed, gave, scene)?.Message}");
        }
    }
}
