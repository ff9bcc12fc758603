using Generator.Domain;
using Generator.Rules;

namespace Generator.Solver.Staging;

/// <summary>What any exchange of this library and cast lies between; so wide that no real exchange is left out.</summary>
public sealed class StagingBounds
{
    private readonly int[] soonest;
    private readonly int[] latest;

    public StagingBounds(Scene scene)
    {
        var lengths = scene.Book.Techniques.Select(t => t.Length.Value).ToList();
        ShortestMove = lengths.Min();
        LongestMove = lengths.Max() + Pace.DeadAirBreaks.Value;
        var back = Enumerable.Range(0, scene.Book.Reactions.Count).Where(r => scene.Book.Reactions[r].ReadySeconds is not null).ToList();
        var farthest = scene.Book.Reactions.Max(r => r.Back.Value) + 400;
        soonest = [.. Enumerable.Range(0, scene.Cast).Select(a => back.Select(r => scene.ReadyAfter(r, a)).DefaultIfEmpty(0).Min())];
        latest = [.. Enumerable.Range(0, scene.Cast).Select(a => back.Select(r => scene.ReadyAfter(r, a)).DefaultIfEmpty(0).Max() + scene.Brief.Pace.Linger.Value + scene.WalkTime(a, farthest))];
    }

    /// <summary>Half counts of the shortest technique.</summary>
    public int ShortestMove { get; }

    /// <summary>Half counts of the longest technique after the longest gap.</summary>
    public int LongestMove { get; }

    /// <summary>Moves in one exchange.</summary>
    public int MostMoves { get; } = 8;

    /// <summary>Half counts from the end of an exchange until the attacker threatens again, at the least.</summary>
    public int SoonestBack(int attacker) => soonest[attacker];

    /// <summary>The same at the most, with the longest linger.</summary>
    public int LatestBack(int attacker) => latest[attacker];

    /// <summary>Latest moment of a routine: the longest that the brief allows, in half counts.</summary>
    public static int Horizon(Brief brief) => brief.Length switch
    {
        { Counts: { } counts } length => HalfCounts.PerCount * (counts + length.Tolerance),
        { Moves: { } moves } => 8 * (moves + 4),
        _ => 400,
    };
}
