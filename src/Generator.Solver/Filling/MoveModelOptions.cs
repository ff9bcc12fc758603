using Generator.Rules.Judging;
using Generator.Rules.Replaying;

namespace Generator.Solver.Filling;

/// <summary>From where to where a move model reaches.</summary>
public sealed record MoveModelOptions
{
    /// <summary>State before the first row; null to choose the opening (placements and entrances) as well.</summary>
    public FightState? From { get; init; }

    /// <summary>The states before <see cref="From"/>, the last first: whoever comes in later than was known then must not have met anybody.</summary>
    public IReadOnlyList<FightState> Past { get; init; } = [];

    /// <summary>What the rules remember at <see cref="From"/>; null when the opening is chosen.</summary>
    public Score? Memory { get; init; }

    /// <summary>Number of rows.</summary>
    public required int Rows { get; init; }

    /// <summary>Fewest rows that must be used; the others may stay idle at the end.</summary>
    public required int FewestRows { get; init; }

    /// <summary>The routine ends with the last row: rules about the whole routine are posted.</summary>
    public bool Ends { get; init; }

    /// <summary>Attacker of each row where it is known beforehand (−1 for a row without target, −2 for unknown).</summary>
    public IReadOnlyList<int>? Targets { get; init; }

    /// <summary>Attacker whom a plan suggests for each row (−1 for none): tried first, not bound.</summary>
    public IReadOnlyList<int>? Plan { get; init; }

    /// <summary>What each row may be of the vocabulary, where more is known of it than of all; null for anything in all of them.</summary>
    public IReadOnlyList<RowWords>? Words { get; init; }

    /// <summary>What each row hurts where that is known beforehand; null where it is as the acts of the brief ask.</summary>
    public IReadOnlyList<RowHurt?>? Hurts { get; init; }

    /// <summary>Nobody is hurt and nothing asks for it: less is posted, which only allows more.</summary>
    public bool LeavesHurtsOut { get; init; }

    /// <summary>Farthest walk round the mark before an attack, in half hours.</summary>
    public int MostWalkRound { get; init; } = 3;

    /// <summary>Latest moment of all, in half counts.</summary>
    public required int Horizon { get; init; }

    /// <summary>Half counts that may still be added to each attacker's return (or entrance) before the first row; null for none.</summary>
    public IReadOnlyList<int>? Delays { get; init; }

    /// <summary>Tables keep rows that rules forbid, so that each rule forbids by itself (tests). Slower.</summary>
    public bool Total { get; init; }

    /// <summary>One table a row over all uses of techniques, the plain way, instead of constraints for each class of them (benchmarks). Slower.</summary>
    public bool InOneTable { get; init; }

    /// <summary>The rules that the rows keep to.</summary>
    public required IReadOnlyList<RuleModule> Rules { get; init; }
}
