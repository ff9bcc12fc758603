using System.Diagnostics;
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

    private static readonly TimeSpan Look = TimeSpan.FromMilliseconds(25);

    /// <summary>Processor time that the two lanes of the pass use in a second on a machine with nothing else to do (medians of the stored briefs).</summary>
    private const double Lanes = 1.6;

    /// <summary>So many times as long by the clock is long enough, however little the machine leaves us.</summary>
    private const int Longest = 4;

    /// <summary>Waits; true when there is nothing in hand even then and the search still goes on.</summary>
    /// <param name="scene">The brief.</param>
    /// <param name="least">For the shortest fights.</param>
    /// <param name="ends">Cancelled when the search ends or somebody has a routine.</param>
    public static bool Wait(Scene scene, TimeSpan least, CancellationToken ends)
    {
        var moves = Moves(scene.Brief);
        return Wait(least + (moves * moves * ForEachMove), ends);
    }

    /// <summary>
    /// Waits for as much work as the pass does in that time where the machine is its own: on a busy one, where the clock says little, a part that begins too soon takes from it what it needs to find
    /// something. True when there is nothing in hand even then.
    /// </summary>
    public static bool Wait(TimeSpan patience, CancellationToken ends) => Wait(TimeSpan.Zero, patience, ends);

    /// <summary>The same, but not less by the clock, however many processors there are.</summary>
    public static bool WaitAtLeast(TimeSpan patience, CancellationToken ends) => Wait(patience, patience, ends);

    private static bool Wait(TimeSpan least, TimeSpan patience, CancellationToken ends)
    {
        var (used, clock) = (Environment.CpuUsage.TotalTime, Stopwatch.StartNew());
        while (clock.Elapsed < least || (Environment.CpuUsage.TotalTime - used < patience * Lanes && clock.Elapsed < patience * Longest))
        {
            if (ends.WaitHandle.WaitOne(Look))
            {
                return false;
            }
        }

        return !ends.IsCancellationRequested;
    }

    /// <summary>Moves that the brief asks for, or one for each two counts.</summary>
    public static int Moves(Brief brief) => brief.Length?.Moves ?? (brief.Length?.Counts ?? 0) / 2;
}
