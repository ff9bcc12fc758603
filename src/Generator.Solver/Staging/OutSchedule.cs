using Generator.Domain;

namespace Generator.Solver.Staging;

/// <summary>When attackers should go out so that the fight neither dies early nor ends in a heap. Common practice, no source.</summary>
public static class OutSchedule
{
    /// <summary>Typical half counts of a move with the gap before it.</summary>
    public const double PerMove = 4;

    /// <summary>How many should be out: none in the first third, then one after another, all but the last shortly before the end.</summary>
    /// <param name="brief">What is asked for.</param>
    /// <param name="time">Moment in half counts.</param>
    /// <param name="moves">Moves done by then.</param>
    public static int Wanted(Brief brief, int time, int moves)
    {
        var mustGo = brief.Ending?.Out.Count ?? 0;
        if (mustGo <= 1)
        {
            return 0;
        }

        var share = Math.Clamp((Progress(brief, time, moves) - 0.35) / 0.4, 0, 1);
        return (int)Math.Floor((share * (mustGo - 1)) + 1e-9);
    }

    /// <summary>How much of the routine is done, from 0 on; 0 when no length is asked for.</summary>
    public static double Progress(Brief brief, int time, int moves) => brief.Length switch
    {
        { Counts: { } counts } => time / (double)(HalfCounts.PerCount * counts),
        { Moves: { } number } => moves / (double)number,
        _ => 0,
    };
}
