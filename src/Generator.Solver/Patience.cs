using Generator.Domain;
using Generator.Rules;

namespace Generator.Solver;

/// <summary>
/// How the slower parts of the engine wait for the constructive pass: they begin only where it has found nothing after a while, longer for longer
/// fights; both at once would only take the machine from one another.
/// </summary>
internal static class Patience
{
    /// <summary>More for each move that the brief asks for (or each two counts), times the moves: a model of twice as many is some four times as large, in memory too.</summary>
    private static readonly TimeSpan ForEachMove = TimeSpan.FromMilliseconds(0.5);

    /// <summary>Waits; true when there is nothing in hand even then and the search still goes on.</summary>
    /// <param name="scene">The brief.</param>
    /// <param name="least">For the shortest fights.</param>
    /// <param name="ends">Cancelled when the search ends or somebody has a routine.</param>
    public static bool Wait(Scene scene, TimeSpan least, CancellationToken ends)
    {
        var moves = Moves(scene.Brief);
        return !ends.WaitHandle.WaitOne(least + (moves * moves * ForEachMove));
    }

    /// <summary>Moves that the brief asks for, or one for each two counts.</summary>
    public static int Moves(Brief brief) => brief.Length?.Moves ?? (brief.Length?.Counts ?? 0) / 2;
}
