using Generator.Domain;
using Generator.Solver.Proving;

namespace Generator.Solver.Refuting;

/// <summary>A hero moment and the moves that can be its moves.</summary>
internal sealed class WantedMoment
{
    private readonly IReadOnlyList<MoveClass>[] matching;

    public WantedMoment(Moment moment, int firstBit, IReadOnlyList<MoveClass> moves)
    {
        (Moment, Name) = (moment, NameOf(moment));
        matching = [.. moment.Moves.Select((_, i) => (IReadOnlyList<MoveClass>)[.. moves.Where(m => (m.Traits.Wanted & (1UL << (firstBit + i))) != 0)])];
        Bits = Enumerable.Range(firstBit, moment.Moves.Count).Aggregate(0UL, (bits, i) => bits | (1UL << i));
    }

    public Moment Moment { get; }

    /// <summary>As the brief says it.</summary>
    public string Name { get; }

    /// <summary>Its moves among those of all moments.</summary>
    public ulong Bits { get; }

    /// <summary>What its i-th move can be.</summary>
    public IReadOnlyList<MoveClass> this[int i] => matching[i];

    /// <summary>The moves of a hero moment as the brief says them.</summary>
    public static string NameOf(Moment moment) => string.Join(", then ", moment.Moves.Select(m => m.Technique + (m.Attacker is { } who ? $" on {who}" : string.Empty) + (m.WantsNoAttack ? " without an attack" : m.Attack is { } attack ? $" against {attack}" : string.Empty) + (m.Reaction is { } reaction ? $" with {reaction}" : string.Empty)));

    /// <summary>Some version of each of its moves is possible.</summary>
    public bool IsPossible => matching.All(m => m.Count > 0);

    /// <summary>Moves that may be setbacks, or pauses.</summary>
    public int ThatMayBe(Func<MoveTraits, bool> may) => matching.Count(m => m.Any(c => may(c.Traits)));

    /// <summary>The least that its moves cost together.</summary>
    public int Least(Func<MoveClass, int> cost) => matching.Sum(m => m.Min(cost));
}
