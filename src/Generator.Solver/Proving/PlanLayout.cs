using Generator.Domain;

namespace Generator.Solver.Proving;

/// <summary>Which moves of a routine a plan looks at one by one, and whom it follows.</summary>
/// <param name="Groups">So many places for moves in each run of moves that is looked at.</param>
/// <param name="WithStretches">Before, between and behind the runs lie any number of moves of which only the count and the time matter.</param>
/// <param name="Followed">Attackers whose postures and times are followed.</param>
/// <param name="Order">The hero moments in the only order in which they can come, each the last move of its run; null when the plan has to find out.</param>
internal sealed record PlanLayout(IReadOnlyList<int> Groups, bool WithStretches, IReadOnlyList<bool> Followed, List<int>? Order)
{
    /// <summary>Moves before each hero moment that are looked at: enough that what lies farther back seldom matters.</summary>
    public const int Depth = 6;

    /// <summary>Every move and everybody.</summary>
    public static PlanLayout Whole(int places, int cast) => new([places], false, [.. Enumerable.Repeat(true, cast)], null);

    /// <summary>
    /// A run for each hero moment, its last moves before it included. Followed are those whom a moment may concern, and whoever must go out and comes in late.
    /// Each routine fits: its runs end with the moments, in their order, and what stands in none is stretch.
    /// </summary>
    public static PlanLayout RoundMoments(Brief brief)
    {
        // Moments of several moves may overlap, and so share a run.
        var several = brief.Moments.Where(m => m.Moves.Count > 1).Sum(m => m.Moves.Count);
        var places = Depth + Math.Max(1, several + (brief.Moments.Any(m => m.Moves.Count == 1) ? 1 : 0));
        var moves = brief.Moments.SelectMany(m => m.Moves).ToList();
        bool Followed(AttackerPart a) => moves.Exists(m => m.Attacker is null || string.Equals(m.Attacker, a.Name, StringComparison.Ordinal))
            || (a.Entrance is { Value: > 0 } && brief.Ending?.Out.Contains(a.Name) == true);
        return new PlanLayout([.. brief.Moments.Select(_ => places)], true, [.. brief.Attackers.Select(Followed)], OrderOf(brief.Moments));
    }

    /// <summary>Moments of one move each that begin in counts that do not overlap are different moves, in the order of their counts.</summary>
    private static List<int>? OrderOf(IReadOnlyList<Moment> moments)
    {
        List<int> order = [.. Enumerable.Range(0, moments.Count).OrderBy(m => moments[m].Earliest?.Value ?? 0)];
        var certain = moments.Count <= WantedMoves.Most && moments.All(m => m.Moves.Count == 1)
            && order.Zip(order.Skip(1)).All(p => moments[p.First].Latest is { } latest && moments[p.Second].Earliest is { } earliest && latest < earliest);
        return certain ? order : null;
    }
}
